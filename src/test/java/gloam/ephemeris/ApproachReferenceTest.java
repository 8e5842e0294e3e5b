package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ApproachReferenceTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();

    /**
     * Geocentric values as widely printed: the conjunction of Jupiter and Saturn of 2020 (6.1′) and the
     * transits of Venus of 2004 and 2012 (626.9″ at 08:20, 554.4″ at 01:30); from memory. A site sees Venus
     * before the Sun shifted by up to 22″, and the time with it by up to some minutes.
     */
    @ParameterizedTest
    @CsvSource({
        "JUPITER, SATURN, 2020-12-21T18:20:00Z, 366, 3, 20",
        "VENUS, SUN, 2004-06-08T08:20:00Z, 626.9, 25, 10",
        "VENUS, SUN, 2012-06-06T01:30:00Z, 554.4, 25, 10"})
    void agreesWithWhatWasPrinted(Body one, Body other, Instant printed, double arcsec,
    double toleranceArcsec,
                                  int toleranceMin) {
        Interval week = new Interval(printed.minus(Duration.ofDays(3)), printed.plus(Duration.ofDays(3)));
        List<Approach> approaches = Approach.of(EPHEMERIS, Places.EQUATOR, one, other, week);
        assertEquals(1, approaches.size());
        assertEquals(arcsec, approaches.get(0).separation().arcsec(), toleranceArcsec);
        assertEquals(0, Duration.between(printed, approaches.get(0).at()).toSeconds() / 60.0, toleranceMin);
    }
}
