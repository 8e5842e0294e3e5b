package gloam.cli;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.store.FilmFile;
import gloam.units.BadInput;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The film: a named one or the trip's, with speed and reciprocity law changed if they are given. */
final class FilmOptions {

    @Option(names = "--film", paramLabel = "NAME|FILE", completionCandidates = Candidates.Films.class,
            description = "A built-in film or a film's file (default: the trip's).")
    private Optional<String> name;

    @Option(names = "--iso", paramLabel = "N", description = "ISO speed (default: the film's).")
    private Optional<Double> iso;

    @Option(names = "--reciprocity", paramLabel = "LAW",
            description = "Reciprocity law: none, power:P[,FROM_S] or table:FILE (default: the film's, else none).")
    private Optional<String> reciprocity;

    /** Whether a film is named. */
    boolean named() {
        return name.isPresent();
    }

    /** The film, if enough is said. */
    Optional<FilmStock> film(Optional<FilmStock> trips) {
        Optional<FilmStock> base = name.map(film -> FromOption.of("--film", () -> FilmFile.film(film))).or(() -> trips)
                .or(() -> iso.map(FilmOptions::plain));
        return base.map(this::changed);
    }

    /** The film. */
    FilmStock required(Optional<FilmStock> trips) {
        return film(trips).orElseThrow(() ->
                new BadInput("the film is not said; give --film NAME|FILE, --iso N or --trip FILE"));
    }

    private static FilmStock plain(double iso) {
        return new FilmStock("film of ISO " + Math.round(iso),
                FromOption.checked("--iso", FilmStock.ISO, iso), FilmStock.Kind.POSITIVE,
                List.of(new FilmStock.Layer("mono", Reciprocity.none())), ToneCurve.PRINT, 0, "options");
    }

    private FilmStock changed(FilmStock film) {
        List<FilmStock.Layer> layers = reciprocity
                .map(text -> FromOption.of("--reciprocity", () -> FilmFile.reciprocity(text)))
                .map(law -> film.layers().stream().map(layer -> new FilmStock.Layer(layer.name(), law)).toList())
                .orElse(film.layers());
        return new FilmStock(film.name(),
                iso.map(speed -> FromOption.checked("--iso", FilmStock.ISO, speed)).orElse(film.iso()), film.kind(),
                layers, film.tone(), film.speedOffsetStops(), film.source());
    }
}
