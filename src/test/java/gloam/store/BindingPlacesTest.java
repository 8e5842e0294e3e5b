package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.exc.ValueInstantiationException;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Why files written by hand are read into a tree with places: what data binding says of the same file. Should
 * a later Jackson do better, this fails and the decision may be thought over.
 */
class BindingPlacesTest {

    private static final String FILM = """
            name: Slow pan
            izo: 25
            iso: -25
            kind: postive
            reciprocity: {model: none}
            """;

    private static final YAMLMapper MAPPER =
            YAMLMapper.builder().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                    .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS).build();

    private static final int NO_PLACE = -1;

    @TempDir
    Path folder;

    private enum Kind { POSITIVE, NEGATIVE }

    private record Law(String model) {
    }

    private record Film(String name, double iso, Kind kind, Law reciprocity) {

        private Film {
            if (iso <= 0) {
                throw new BadInput("film speed");
            }
        }
    }

    @Test
    void theTreeTellsEveryProblemWhereItStands() {
        assertEquals(List.of("f.yaml:2:1 izo: ", "f.yaml:3:6 iso: ", "f.yaml:4:7 kind: "),
                Refusals.of(folder, () -> FilmFile.film(Refusals.file(folder, "f.yaml", FILM).toString()))
                .stream()
                        .map(line -> line.replaceFirst("(: ).*", "$1")).toList());
    }

    @Test
    void bindingTellsTheFirstAlone() {
        assertThrows(InvalidFormatException.class, () -> MAPPER.readValue(FILM, Film.class));
    }

    @Test
    void bindingTellsNoPlaceOfAnUnknownKeyAndOfARefusedNumberTheSectionsEnd() {
        String kind = FILM.replace("postive", "positive");
        assertPlace(NO_PLACE, assertThrows(UnrecognizedPropertyException.class,
                () -> MAPPER.readValue(kind.replace("iso: -", "iso: "), Film.class)).getLocation());
        assertPlace(5, assertThrows(ValueInstantiationException.class,
                () -> MAPPER.readValue(kind.replace("izo: 25\n", ""), Film.class)).getLocation());
    }

    private static void assertPlace(int line, TokenStreamLocation place) {
        assertEquals(line, place.getLineNr());
    }
}
