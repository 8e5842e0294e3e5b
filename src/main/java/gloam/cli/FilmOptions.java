package gloam.cli;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.store.FilmFile;
import gloam.store.Input;
import gloam.units.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** The film: a named one or the trip's, with speed and reciprocity law changed if they are given. */
final class FilmOptions extends OptionGroup {

    private static final String NAME = "A built-in film or a film's file (default: the trip's).";

    private final Supplier<List<Input>> names;

    private final Option<Double> iso;

    private final Option<Input> reciprocity;

    /** One film. */
    FilmOptions() {
        this(group -> {
            Option<Input> one = group.input("--film", "NAME|FILE", NAME).completedBy(new Candidates.Films());
            return () -> one.value().stream().toList();
        });
    }

    /** One film or several. */
    static FilmOptions repeatable() {
        return new FilmOptions(group -> group.repeated("--film", "NAME|FILE", Input.class,
                NAME + " Repeat it to compare films.").completedBy(new Candidates.Films())::get);
    }

    private FilmOptions(Function<FilmOptions, Supplier<List<Input>>> named) {
        names = named.apply(this);
        iso = option("--iso", "N", Double.class, "ISO speed (default: the film's).");
        reciprocity = input("--reciprocity", "LAW",
                "Reciprocity law: none, power:P[,FROM_S] or table:FILE (default: the film's, else none).");
    }

    /** Whether a film is named. */
    boolean named() {
        return !names.get().isEmpty();
    }

    /** The film, if enough is said. */
    Optional<FilmStock> film(Optional<FilmStock> trips) {
        return films(trips).stream().findFirst();
    }

    /** The film. */
    FilmStock required(Optional<FilmStock> trips) {
        return allRequired(trips).get(0);
    }

    /** The films, at least one and each once. */
    List<FilmStock> allRequired(Optional<FilmStock> trips) {
        List<FilmStock> films = films(trips);
        if (films.isEmpty()) {
            throw new BadInput("no film given; use --film NAME|FILE, --iso N or --trip FILE");
        }
        if (films.size() > 1 && anyGiven("--iso", "--reciprocity")) {
            throw new BadInput("--iso and --reciprocity change one film, and " + films.size()
                    + " are named; leave them out, or name one film");
        }
        films.stream().map(FilmStock::name).filter(name ->
                films.stream().filter(film -> film.name().equals(name)).count() > 1).findFirst()
                .ifPresent(name -> {
                    throw new BadInput("--film: film \"" + name + "\" is named twice; name each film once");
                });
        return films;
    }

    private List<FilmStock> films(Optional<FilmStock> trips) {
        return names.get().isEmpty()
                ? trips.or(() -> iso.value().map(FilmOptions::plain)).map(this::changed).stream().toList()
                : names.get().stream().map(film -> FromOption.of("--film", () -> FilmFile.film(film)))
                .map(this::changed).toList();
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
