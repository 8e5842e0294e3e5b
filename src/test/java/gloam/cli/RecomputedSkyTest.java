package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.light.LightSource;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Skies at random against another program's, source by source: {@code src/data/sky.py}. */
class RecomputedSkyTest {

    private static final List<Row> ROWS = ReferenceTable.read("recomputed/sky.csv").rows();

    @TempDir
    Path folder;

    static Stream<Row> skies() {
        return ROWS.stream();
    }

    @ParameterizedTest
    @MethodSource("skies")
    void everySourceIsAsBrightAsRecomputed(Row row) throws IOException {
        JsonNode shares = towards(row).get("sources");
        close(row, "zodiacal", shares, LightSource.ZODIACAL, 0.08);
        close(row, "stars", shares, LightSource.STARS, 0.08);
        close(row, "townLight", shares, LightSource.TOWNS, 0.02);
        close(row, "airglow", shares, LightSource.AIRGLOW, 0.04);
        close(row, "moon", shares, LightSource.MOON, 0.04);
        double twilight = row.number("twilight");
        double seen = cdM2(shares, LightSource.TWILIGHT);
        if (twilight == 0) {
            assertTrue(seen < 1e-7, () -> "twilight " + seen + " by night");
        } else {
            assertEquals(0, 2.5 * Math.log10(seen / twilight), 0.25, () -> "mag of twilight: " + row);
        }
    }

    private static void close(Row row, String column, JsonNode shares, LightSource source, double within) {
        double expected = row.number(column);
        // four digits; a Moon below the horizon has an afterglow that the papers do not speak of
        assertEquals(expected, cdM2(shares, source), within * expected + 2e-7, () -> column + ": " + row);
    }

    private static double cdM2(JsonNode shares, LightSource source) {
        return shares.get(source.ordinal()).get("cdM2").doubleValue();
    }

    private JsonNode towards(Row row) throws IOException {
        String towns = Stream.of(row.text("towns").split(";")).filter(town -> !town.isEmpty())
                .map(town -> town.split(" ")).map(town -> String.format(Locale.ROOT,
                "{azimuth-deg: %s, people: %s, distance-km: %s}", (Object[]) town))
                .collect(Collectors.joining(", ", "[", "]"));
        Path trip = Files.writeString(folder.resolve("trip.yaml"), String.format(Locale.ROOT, """
                sites:
                  - {name: Here, latitude-deg: %s, longitude-deg: %s, height-m: %s, zone: UTC,
                     extinction-mag: %s, dark-sky-mag-arcsec2: %s, light-domes: %s}
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11]}
                film: instant-mono-640
                sheets: 1
                """, row.text("latitude"), row.text("longitude"), row.text("height"), row.text("extinction"),
                row.text("dark"), towns));
        Run run = Run.real(List.of("sky", "--trip", trip.toString(), "--at", row.text("at"), "--azimuth",
                row.text("azimuth"), "--altitude", row.text("altitude"), "--format", "json"));
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out()).get("towards");
    }

    /** The skies are of every kind: dark, twilit, moonlit, over towns and far from them. */
    @Test
    void skiesAreOfEveryKind() {
        assertEquals(40, ROWS.size());
        for (String light : List.of("twilight", "moon", "townLight")) {
            long lit = ROWS.stream().filter(row -> row.number(light) > 1e-5).count();
            assertTrue(lit >= 10 && lit <= 30, light + " in " + lit);
        }
    }
}
