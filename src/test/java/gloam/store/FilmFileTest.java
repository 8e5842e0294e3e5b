package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.film.ToneCurve;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilmFileTest {

    @TempDir
    Path folder;

    @Test
    void builtInFilmsStateWhatTheyAreAndAreFoundByName() {
        List<FilmStock> films = FilmFile.builtIns();
        assertEquals(films.size(), new HashSet<>(films.stream().map(FilmStock::name).toList()).size());
        for (FilmStock film : films) {
            assertEquals(film, FilmFile.film(film.name().toUpperCase(Locale.ROOT)));
            assertTrue(film.source().startsWith("Invented: "), film.source());
        }
    }

    @Test
    void builtInFilmsCoverTheKinds() {
        List<FilmStock> films = FilmFile.builtIns();
        assertTrue(films.stream().anyMatch(film -> film.colour() && film.kind() == FilmStock.Kind.POSITIVE
                && film.layers().stream().map(FilmStock.Layer::reciprocity).distinct().count() == 3));
        assertEquals(Set.of(Reciprocity.PowerLaw.class, ReciprocityTable.class, Reciprocity.None.class),
                new HashSet<>(films.stream().map(film -> film.reciprocity().getClass()).toList()));
        assertEquals(Set.of(FilmStock.Kind.values()),
                new HashSet<>(films.stream().map(FilmStock::kind).toList()));
    }

    @Test
    void filmIsReadFromEitherFormat() {
        FilmStock expected = new FilmStock("Slow", 25, FilmStock.Kind.NEGATIVE,
                List.of(new FilmStock.Layer("mono", new Reciprocity.PowerLaw(1.3, 2))), ToneCurve.NEGATIVE,
                0.5, "own");
        assertEquals(expected, read("f.yaml", """
                {name: Slow, iso: 25, kind: negative, speed-offset-stops: 0.5, source: own,
                 reciprocity: {model: power, exponent: 1.3, from-s: 2}}
                """));
        assertEquals(expected, read("f.json", """
                {"name": "Slow", "iso": 25, "kind": "negative", "speed-offset-stops": 0.5, "source": "own",
                 "reciprocity": {"model": "power", "exponent": 1.3, "from-s": 2}}
                """));
    }

    @Test
    void everyReciprocityModelIsRead() {
        assertEquals(Reciprocity.none(), law("{model: none}"));
        assertEquals(new Reciprocity.PowerLaw(1.31, 1), law("{model: power, exponent: 1.31}"));
        assertEquals(new Reciprocity.PowerLaw(1 / 0.8, 1),
                law("{model: schwarzschild, schwarzschild-p: 0.8}"));
        assertEquals(new Reciprocity.AddedPower(0.1, 1.62),
                law("{model: added-power, added-at-one-second-s: 0.1, exponent: 1.62}"));
        assertEquals(new Reciprocity.Catenary(0.2, 100, 1),
                law("{model: catenary, bend: 0.2, best-s: 100, reference-s: 1}"));
        assertEquals(new Reciprocity.Catenary(0.2, 100, 100),
                law("{model: catenary, bend: 0.2, best-s: 100}"));
        assertEquals(Reciprocity.table(List.of(new ReciprocityTable.Point(1, 1.5),
                new ReciprocityTable.Point(10, 20))),
                law("{model: table, points: [{metered-s: 1, corrected-s: 1.5}, {metered-s: 10, corrected-s: "
                + "20}]}"));
    }

    @Test
    void layersMayShareALawOrHaveTheirOwn() {
        List<FilmStock.Layer> own = read("f.yaml", film("three", "{red: {model: none}, "
                + "green: {model: power, exponent: 1.1}, blue: {model: power, exponent: 1.2}}")).layers();
        assertEquals(List.of(new FilmStock.Layer("red", Reciprocity.none()),
                new FilmStock.Layer("green", Reciprocity.power(1.1, 1)),
                new FilmStock.Layer("blue", Reciprocity.power(1.2, 1))), own);
        List<FilmStock.Layer> shared = read("g.yaml", film("three", "{model: none}")).layers();
        assertEquals(List.of("red", "green", "blue"), shared.stream().map(FilmStock.Layer::name).toList());
    }

    @Test
    void toneOfAPositiveFallsWithLight() {
        FilmStock film = read("f.yaml", film("mono", "{model: none}")
                + "tone: {density-min: 0.1, density-max: 2, density-mid: 0.7, gamma: 1.5}\n");
        assertEquals(new ToneCurve(0.1, 2, 0.7, -1.5), film.tone());
    }

    @Test
    void allErrorsOfAFilmComeAtOnce() {
        assertEquals(List.of(
                "f.yaml:2:6 iso: film speed 0 ISO is out of range; give 0.1 … 100000 ISO",
                "f.yaml:3:7 kind: expected positive or negative, found \"postive\". Did you mean positive?",
                "f.yaml:5:39 reciprocity.exponent: reciprocity exponent 0.8 is out of range; give 1 … 2",
                "f.yaml:5:44 reciprocity.from: unknown key. Did you mean from-s?"),
                refusal("name: x\niso: 0\nkind: postive\nlayers: mono\n"
                        + "reciprocity: {model: power, exponent: 0.8, from: 1}\n"));
    }

    @Test
    void shorteningTableIsRefusedAtItsPlace() {
        assertEquals(List.of("f.yaml:5:14 reciprocity: reciprocity point 10.0 s -> 5.0 s shortens the "
                + "metered time; "
                        + "a corrected time is never below it"),
                refusal(film("mono", "{model: table, points: [{metered-s: 1, corrected-s: 2}, "
                        + "{metered-s: 10, corrected-s: 5}]}")));
    }

    @Test
    void modelIsNeeded() {
        assertEquals(List.of("f.yaml:5:14 reciprocity.model: is missing. Add the key model."),
                refusal(film("mono", "{exponent: 1.2}")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            instant-mono-64  | no built-in film is named "instant-mono-64", and a film's file ends in .yaml or .json. \
            Did you mean instant-mono-640?
            no.yaml          | no file no.yaml. Check the name and the folder you are in.
            """)
    void unknownFilmsSayWhatToDo(String name, String problem) {
        assertEquals(List.of(problem), Refusals.of(folder, () -> FilmFile.film(name)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            power:1.3      | 1.3  | 1
            power:1.25,2.5 | 1.25 | 2.5
            """)
    void powerLawIsReadFromText(String text, double exponent, double fromS) {
        assertEquals(new Reciprocity.PowerLaw(exponent, fromS), FilmFile.reciprocity(text));
    }

    @Test
    void noneAndTableAreReadFromText() {
        assertEquals(Reciprocity.none(), FilmFile.reciprocity("none"));
        Path table = Refusals.file(folder, "t.csv", "metered_s,corrected_s\n1,2\n10,45\n");
        assertEquals(Reciprocity.table(List.of(new ReciprocityTable.Point(1, 2),
                new ReciprocityTable.Point(10, 45))), FilmFile.reciprocity("table:" + table));
    }

    @Test
    void errorsOfATableComeWithTheirPlaces() {
        Path table = Refusals.file(folder, "t.csv", "metered_s,corrected_s\n1,x\n0,45\n");
        assertEquals(List.of(
                "t.csv:2:3 corrected_s: expected seconds, found \"x\". Write a plain number, 0.000001 … "
                + "10000000 s.",
                "t.csv:3:1 metered_s: reciprocity time 0 s is out of range; give 0.000001 … 10000000 s"),
                Refusals.of(folder, () -> FilmFile.reciprocity("table:" + table)));
    }

    @Test
    void shorteningTableIsRefusedByItsName() {
        Path table = Refusals.file(folder, "t.csv", "metered_s,corrected_s\n1,2\n10,5\n");
        assertEquals(List.of("reciprocity point 10.0 s -> 5.0 s shortens the metered time; "
                + "a corrected time is never below it (t.csv)"),
                Refusals.of(folder, () -> FilmFile.reciprocity("table:" + table)));
    }

    @Test
    void whatTheFilmItselfRefusesComesWithItsPlace() {
        assertEquals(List.of("f.yaml:6:7 tone: mid-tone density 3.0 is not between the least density 0.1 "
                + "and the greatest 2.0; give one between"), refusal(film("mono", "{model: none}")
                + "tone: {density-min: 0.1, density-max: 2, density-mid: 3, gamma: 1}\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "non", "none:1", "power", "power:", "power:x", "power:1.3,1,2", "powers:1.3",
            "table"})
    void otherTextsAreRefused(String text) {
        List<String> problems = Refusals.of(folder, () -> FilmFile.reciprocity(text));
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).endsWith("Write none, power:P, power:P,FROM_S or table:FILE."),
                problems.get(0));
    }

    @Test
    void exponentOutOfRangeIsRefused() {
        assertEquals(List.of("reciprocity exponent 3 is out of range; give 1 … 2"),
                Refusals.of(folder, () -> FilmFile.reciprocity("power:3")));
    }

    private FilmStock read(String name, String text) {
        return FilmFile.film(Refusals.file(folder, name, text).toString());
    }

    private Reciprocity law(String law) {
        return read("f.yaml", film("mono", law)).reciprocity();
    }

    private static String film(String layers, String law) {
        return "name: x\niso: 100\nkind: positive\nlayers: " + layers + "\nreciprocity: " + law + "\n";
    }

    private List<String> refusal(String text) {
        return Refusals.of(folder, () -> read("f.yaml", text));
    }
}
