package gloam.cli;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.store.FilmFile;
import gloam.store.Input;
import gloam.units.BadInput;
import java.util.List;
import java.util.Optional;

/** The film: a named one or the trip's, with speed and reciprocity law changed if they are given. */
final class FilmOptions extends OptionGroup {

    private final Option<Input> name = input("--film", "NAME|FILE",
            "A built-in film or a film's file (default: the trip's).").completedBy(new Candidates.Films());

    private final Option<Double> iso = option("--iso", "N", Double.class, "ISO speed (default: the film's).");

    private final Option<Input> reciprocity = input("--reciprocity", "LAW",
            "Reciprocity law: none, power:P[,FROM_S] or table:FILE (default: the film's, else none).");

    /** Whether a film is named. */
    boolean named() {
        return name.given();
    }

    /** The film, if enough is said. */
    Optional<FilmStock> film(Optional<FilmStock> trips) {
        Optional<FilmStock> base = name.value()
                .map(film -> FromOption.of("--film", () -> FilmFile.film(film))).or(() -> trips)
                .or(() -> iso.value().map(FilmOptions::plain));
        return base.map(this::changed);
    }

    /** The film. */
    FilmStock required(Optional<FilmStock> trips) {
        return film(trips).orElseThrow(() ->
                new BadInput("no film given; use --film NAME|FILE, --iso N or --trip FILE"));
    }

    private static FilmStock plain(double iso) {
        return new FilmStock("film of ISO " + Math.round(iso),
                FromOption.checked("--iso", FilmStock.ISO, iso), FilmStock.Kind.POSITIVE,
                List.of(new FilmStock.Layer("mono", Reciprocity.none())), ToneCurve.PRINT, 0, "options");
    }

    private FilmStock changed(FilmStock film) {
        List<FilmStock.Layer> layers = reciprocity.value()
                .map(text -> FromOption.of("--reciprocity", () -> FilmFile.reciprocity(text)))
                .map(law -> film.layers().stream().map(layer -> new FilmStock.Layer(layer.name(), law))
                .toList())
                .orElse(film.layers());
        return new FilmStock(film.name(),
                iso.value().map(speed -> FromOption.checked("--iso", FilmStock.ISO, speed))
                .orElse(film.iso()), film.kind(),
                layers, film.tone(), film.speedOffsetStops(), film.source());
    }
}
