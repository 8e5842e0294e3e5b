package gloam.store;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.units.BadInput;
import gloam.units.Nearest;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The built-in films, each in a resource of its name, and films described by the user in YAML or JSON. */
public final class FilmFile {

    private static final List<String> BUILT_IN = List.of("instant-mono-640", "instant-colour-125",
            "negative-slow-25", "negative-classic-100", "digital-640");
    private static final List<String> ENDINGS = List.of(".json", ".yaml", ".yml");

    private FilmFile() {
    }

    /**
     * A film by its built-in name (in any case) or by its file.
     *
     * @throws BadInput with all errors of the file, or the most similar built-in name
     */
    public static FilmStock film(String nameOrFile) {
        return film(Input.of(nameOrFile));
    }

    /** The same for an option. */
    public static FilmStock film(Input named) {
        return builtIn(named.name()).orElseGet(() -> read(named));
    }

    /** The names of the built-in films. */
    public static List<String> names() {
        return BUILT_IN;
    }

    /** The built-in films. */
    public static List<FilmStock> builtIns() {
        return BUILT_IN.stream().map(FilmFile::resource).toList();
    }

    /**
     * The reciprocity law of a text: {@code none}, {@code power:P[,FROM_S]} or {@code table:FILE}, a CSV file
     * of {@code metered_s,corrected_s}.
     */
    public static Reciprocity reciprocity(String text) {
        return reciprocity(Input.of(text));
    }

    /** The same for an option, whose file then counts as read. */
    public static Reciprocity reciprocity(Input text) {
        return ReciprocityText.law(text.name(), text);
    }

    /** The film at an item of a file: a built-in name, a file, or its keys. */
    static FilmStock film(Item item) {
        if (item.node() instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.TEXT) {
            Optional<FilmStock> builtIn = builtIn(scalar.text().strip());
            if (builtIn.isEmpty() && !looksLikeFile(scalar.text())) {
                throw item.fault(unknown(scalar.text()));
            }
            FilmStock film = builtIn.orElseGet(() -> FilmSection.film(item));
            item.readAs("name of a film, or section");
            return film;
        }
        return FilmSection.film(item);
    }

    private static FilmStock read(Input file) {
        if (!file.piped() && !looksLikeFile(file.name()) && !there(file.name())) {
            throw new BadInput(unknown(file.name()));
        }
        Findings findings = new Findings();
        return findings.result(() -> Source.of(file, findings).root().value(FilmSection::film).get());
    }

    private static boolean there(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException strange) {
            return false;
        }
    }

    private static boolean looksLikeFile(String name) {
        return ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
    }

    private static String unknown(String name) {
        return "no built-in film is named " + Shown.quoted(name)
                + ", and a film's file ends in .yaml or .json. " + Nearest.hint(name, BUILT_IN);
    }

    private static Optional<FilmStock> builtIn(String name) {
        return BUILT_IN.stream().filter(known -> known.equalsIgnoreCase(name)).findFirst()
                .map(FilmFile::resource);
    }

    private static FilmStock resource(String name) {
        Findings findings = new Findings();
        return findings.result(() ->
                FilmSection.film(Source.of(Input.inside("/gloam/films/" + name + ".json"), findings).root()));
    }
}
