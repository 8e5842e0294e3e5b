package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A star given by numbers stands where SOFA has it. */
class StarOptionTest {

    private static final double TOLERANCE_DEG = 0.3 / 3600; // the table's own
    private static final double ROUNDED_DEG = 0.5e-5;

    /** Parallaxes in mas: Hipparcos catalogue (ESA 1997), from memory. */
    private static final Map<String, String> PARALLAXES = Map.of("Sirius", "379.21", "Vega", "128.93",
            "Arcturus", "88.85", "Polaris", "7.56", "Achernar", "22.68", "Betelgeuse", "7.63");

    static Stream<Row> stars() {
        return ReferenceTable.read("erfa/stars.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("stars")
    void motionAndParallaxCountTogether(Row row) throws Exception {
        Run run = Run.real(List.of("sky", "--place",
                String.join(",", row.text("latitude_deg"), row.text("longitude_deg"),
                row.text("height_m")), "--zone", "UTC", "--at", row.text("utc"), "--format", "json", "--star",
                String.join(",",
                row.text("ra_icrs_deg"), row.text("dec_icrs_deg"), row.text("pm_ra_cosdec_mas_yr"),
                row.text("pm_dec_mas_yr"), PARALLAXES.get(row.text("star")))));
        assertEquals(0, run.exit(), run.err());
        JsonNode star = new ObjectMapper().readTree(run.out()).at("/stars/0");
        double altitudeDeg = row.number("altitude_airless_deg");
        assertEquals(altitudeDeg, star.get("airlessAltitudeDeg").asDouble(), TOLERANCE_DEG + ROUNDED_DEG);
        double offDeg = Math.IEEEremainder(star.get("azimuthDeg").asDouble() - row.number("azimuth_deg"),
                360);
        assertEquals(0, offDeg * Math.cos(Math.toRadians(altitudeDeg)), TOLERANCE_DEG + ROUNDED_DEG);
    }
}
