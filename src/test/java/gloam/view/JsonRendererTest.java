package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class JsonRendererTest {

    private static final OffsetDateTime NOON = OffsetDateTime.parse("2027-02-08T12:00+01:00");

    @Test
    void componentsBecomeFieldsInOrderAfterTheSchema() throws IOException {
        JsonNode json = json(report("measured", 21.5));
        assertEquals(List.of("schema", "generatedAt", "situation", "exposures", "course", "trade", "remarks"),
                json.properties().stream().map(field -> field.getKey()).toList());
        assertEquals("gloam/2", json.get("schema").asString());
    }

    @Test
    void timesKeepSecondsAndOffset() throws IOException {
        assertEquals("2027-02-08T12:00:00.0+01:00", json(report("measured", 21.5)).get("generatedAt")
                .asString());
    }

    @Test
    void whatIsAbsentIsNull() throws IOException {
        JsonNode situation = json(report("measured", 21.5)).get("situation");
        assertTrue(situation.get("lastsS").isNull());
        assertTrue(situation.get("site").isNull());
        assertFalse(situation.get("toneStops").isNull());
    }

    @Test
    void textIsEscaped() throws IOException {
        String hostile = "a \"quoted\" \\ back\nslash \u0001 星";
        assertEquals(hostile, json(report(hostile, 21.5)).at("/situation/source").asString());
    }

    @Test
    void numbersThatAreNoneAreABug() {
        ExposureReport report = report("measured", Double.NaN);
        assertThrows(IllegalStateException.class, () -> new JsonRenderer()
                .render(report, new StringBuilder()));
    }

    private static JsonNode json(Report report) throws IOException {
        StringBuilder text = new StringBuilder();
        new JsonRenderer().render(report, text);
        assertTrue(text.toString().endsWith("}\n"));
        return new ObjectMapper().readTree(text.toString());
    }

    private static ExposureReport report(String source, double skyMagArcsec2) {
        OptionalDouble none = OptionalDouble.empty();
        Situation situation = new Situation(source, skyMagArcsec2, 0.0002, false, List.of(), Optional.empty(),
                Optional.empty(), "film", 0, 640, "no law", 120, none, 0.9, none, none, OptionalDouble.of(-2),
                1,
                none, Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of(), none, none,
                0, 0, 0.4, 0.1);
        return new ExposureReport(NOON, situation, List.of(), Optional.empty(), Optional.empty(), List.of());
    }
}
