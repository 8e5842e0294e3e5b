package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GroundLightReferenceTest {

    static Stream<Row> sun() {
        return ReferenceTable.read("explanatory-supplement/sun-illuminance.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("sun")
    void sunlightFollowsTheSupplement(Row row) {
        double expectedLx = row.number("lux");
        assertEquals(expectedLx, GroundLight.sunLx(row.number("altitudeDeg")), 0.0025 * expectedLx);
    }

    static Stream<Row> moon() {
        return ReferenceTable.read("explanatory-supplement/moon-illuminance.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("moon")
    void moonlightFollowsTheSupplement(Row row) {
        double expectedLx = row.number("lux");
        double givenLx = GroundLight.moonLx(row.number("altitudeDeg"), row.number("phaseDeg"),
                row.number("parallaxArcmin") / 60);
        assertEquals(expectedLx, givenLx, 0.005 * expectedLx);
    }

    @Test
    void fullMoonGivesWhatIsMeasuredAndNoMore() {
        // Kyba, Mohar and Posch 2017, Astronomy and Geophysics 58, 1.31: 0.05 to 0.1 lx is usual in middle
        // latitudes, 0.32 lx the most there is (perigee, tropics); 0.25 to 0.27 lx are handbook values for a
        // high full Moon. Usual: mid-latitude full Moons 20° to 30° high
        assertTrue(GroundLight.moonLx(90, 0, 61.4 / 60) <= 0.32);
        assertEquals(0.26, GroundLight.moonLx(90, 0, 0.951), 0.01);
        assertTrue(GroundLight.moonLx(20, 0, 0.951) > 0.05 && GroundLight.moonLx(30, 0, 0.951) < 0.1);
    }

    @Test
    void quarterMoonGivesAHundredthOfALux() {
        // handbook value for "quarter Moon", an order of magnitude: within a factor 3
        assertEquals(0, Math.log10(GroundLight.moonLx(45, 90, 0.951) / 0.01), Math.log10(3));
    }

    @Test
    void fullMoonGivesAnEighthAsMuchAtTheQuarter() {
        // independently computed from the supplement's phase terms to three digits
        assertEquals(8.42, GroundLight.moonLx(60, 0, 0.951) / GroundLight.moonLx(60, 90, 0.951), 0.005);
    }

    @Test
    void landscapeUnderAFullMoonIsExposedAsIsUsual() {
        // Common practice, no source: under a full Moon at exposure values -3 to -2 for ISO 100, a grey of 18
        // %; half a stop either way. L = 0.125 cd/m² · 2^EV by the meter equation with K = 12.5
        double luminanceCdM2 = 0.18 * GroundLight.moonLx(60, 0, 0.951) / Math.PI;
        double exposureValue = Math.log(luminanceCdM2 / 0.125) / Math.log(2);
        assertTrue(exposureValue > -3.5 && exposureValue < -1.5, exposureValue + " EV");
    }

    @Test
    void moonlessGroundHasStarlight() {
        // π times the dark sky's luminance, 5.4e-4 lx at 22.0 mag/arcsec², independently computed; handbooks
        // give 2e-4 without airglow to 2e-3 with it. Sun and Moon are down: 1 % for what is left of them
        Instant newMoon = Instant.parse("2027-02-06T22:00:00Z");
        Site site = Places.MID_NORTH;
        Site dark = new Site(site.name(), site.latitude(), site.longitude(), site.heightM(), site.zone(),
                22.0, site.extinctionMag(), site.skyline());
        assertEquals(5.4e-4, new GroundLight(new AnalyticEphemeris(), dark).lux(newMoon), 0.01 * 5.4e-4);
    }
}
