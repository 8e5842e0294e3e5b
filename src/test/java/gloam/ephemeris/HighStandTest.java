package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.units.Angle;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HighStandTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    private static final Star CENTRE = Star.GALACTIC_CENTRE;

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 25, 60, 86})
    void spansAreThoseSeenByTheMinute(double leastDeg) {
        Angle least = Angle.ofDegrees(leastDeg);
        for (Site site : List.of(Places.MID_SOUTH, Places.EQUATOR, Places.CLOCK_CHANGE)) {
            Night night = Night.of(EPHEMERIS, site, LocalDate.of(2027, 4, 20));
            List<Instant> expected = new ArrayList<>();
            boolean before = false;
            for (Instant at = night.span().start(); at.isBefore(night.span().endExclusive());
                    at = at.plusSeconds(60)) {
                boolean now = dark(night, at) && apparent(site, at).compareTo(least) >= 0;
                if (now != before) {
                    expected.add(at);
                }
                before = now;
            }
            List<Instant> found = HighStand.of(EPHEMERIS, night, CENTRE, least).stream()
                    .flatMap(stand -> List.of(stand.span().start(), stand.span().endExclusive()).stream())
                    .toList();
            assertEquals(expected.size(), found.size(), site.name());
            for (int i = 0; i < found.size(); i++) {
                assertEquals(0, Duration.between(expected.get(i), found.get(i)).toSeconds(), 61, site.name());
            }
        }
    }

    /** It culminates at 90° less the difference of latitude and declination, due north here. */
    @Test
    void theHighestPointIsTheCulmination() {
        Night night = Night.of(EPHEMERIS, Places.MID_SOUTH, LocalDate.of(2027, 5, 20));
        HighStand stand = HighStand.of(EPHEMERIS, night, CENTRE, Angle.ofDegrees(30)).get(0);
        SkyPosition highest = EPHEMERIS.position(CENTRE, Places.MID_SOUTH, stand.highestAt());
        assertEquals(90 - (31.4 - 29.0), highest.airlessAltitude().degrees(), 0.1,
                "precession moves it by 0.02 deg");
        assertEquals(0, Math.abs(highest.azimuth().sin()), 0.02,
                "the meridian; near the zenith a second is much");
    }

    @Test
    void inPolarDayThereIsNone() {
        Night night = Night.of(EPHEMERIS, Places.POLAR, LocalDate.of(2027, 6, 21));
        assertTrue(HighStand.of(EPHEMERIS, night, Body.MOON, Angle.ofDegrees(-90)).isEmpty());
    }

    /**
     * Sagittarius A*, which lies within 0.1° of the centre of the galactic coordinates: 17h45m40.04s,
     * −29°00′28.1″.
     */
    @Test
    void theGalacticCentreIsBesideSagittariusA() {
        double offDeg = Direction.ofDegrees(CENTRE.rightAscensionDeg(), CENTRE.declinationDeg())
                .to(Direction.ofDegrees(266.41683, -29.00781)).degrees();
        assertEquals(0.0724, offDeg, 0.001, "galactic l = 359.9442, b = -0.0462 (Reid and Brunthaler 2004)");
    }

    private static boolean dark(Night night, Instant at) {
        return night.darkness().stream().anyMatch(dark -> dark.contains(at));
    }

    private static Angle apparent(Site site, Instant at) {
        return EPHEMERIS.position(CENTRE, site, at).apparentAltitude();
    }
}
