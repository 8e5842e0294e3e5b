package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Trails on the real sky against places and a projection computed by other libraries. */
class TrailReferenceTest {

    /** The accuracy promised; see the table's header. */
    private static final double WITHIN_MM = 0.005;

    static Stream<List<ReferenceTable.Row>> trails() {
        Function<ReferenceTable.Row, String> trail = row -> row.text("star") + row.text("focal_length_mm");
        return ReferenceTable.read("erfa/trails.csv").stream().collect(Collectors.groupingBy(trail)).values()
                .stream();
    }

    @ParameterizedTest
    @MethodSource("trails")
    void pointsFallWhereTheReferencePutsThem(List<ReferenceTable.Row> rows) {
        ReferenceTable.Row first = rows.get(0);
        Instant open = first.instant("utc");
        Interval span = new Interval(open, rows.get(rows.size() - 1).instant("utc"));
        Site site = Places.at(first.number("latitude_deg"), first.number("longitude_deg"),
                first.number("height_m"));
        TrailEstimator estimator = new TrailEstimator(OrekitEphemeris.builtIn(), site).airless();
        Framing framing = Framing.level(
                Direction.ofDegrees(first.number("camera_azimuth_deg"), first.number("camera_altitude_deg")),
                Cameras.rectilinear(first.number("focal_length_mm"), 1000, 1000));
        Star star = Star.at(first.text("star"), first.number("ra_icrs_deg"), first.number("dec_icrs_deg"));
        List<Trail.Point> points = estimator.trail(framing, star, span, Duration.ofMinutes(30)).orElseThrow()
                .points();
        assertEquals(rows.size(), points.size());
        assertTrue(rows.size() > 1);
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(rows.get(i).instant("utc"), points.get(i).at());
            assertEquals(rows.get(i).number("x_mm"), points.get(i).xMm(), WITHIN_MM);
            assertEquals(rows.get(i).number("y_mm"), points.get(i).yMm(), WITHIN_MM);
        }
    }
}
