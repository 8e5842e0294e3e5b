package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Event.Kind;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class NightTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();

    @Test
    void anOrdinaryNightHasEveryTwilightInOrder() {
        Night night = Night.of(EPHEMERIS, Places.MID_NORTH, LocalDate.of(2027, 3, 10));
        List<Kind> sun = night.events().stream().map(Event::what)
                .filter(kind -> kind.ordinal() <= Kind.SUNRISE.ordinal())
                .toList();
        assertEquals(List.of(Kind.SUNSET, Kind.CIVIL_DUSK, Kind.NAUTICAL_DUSK, Kind.ASTRONOMICAL_DUSK,
                Kind.ASTRONOMICAL_DAWN, Kind.NAUTICAL_DAWN, Kind.CIVIL_DAWN, Kind.SUNRISE), sun);
        assertEquals(at(night, Kind.ASTRONOMICAL_DUSK), night.darkness().get(0).start());
        assertEquals(at(night, Kind.ASTRONOMICAL_DAWN), night.darkness().get(0).endExclusive());
        assertEquals(at(night, Kind.SUNSET), night.sunDown().get(0).start());
    }

    @Test
    void polarDayAndNightAreAnswers() {
        Night summer = Night.of(EPHEMERIS, Places.POLAR, LocalDate.of(2027, 6, 21));
        assertTrue(summer.sunDown().isEmpty() && summer.darkness().isEmpty());
        Night winter = Night.of(EPHEMERIS, Places.POLAR, LocalDate.of(2027, 12, 21));
        assertEquals(List.of(winter.span()), winter.civilNight());
        assertTrue(winter.events().stream().noneMatch(event -> event.what() == Kind.SUNRISE));
    }

    @Test
    void nightsLastFromNoonToNoonByTheClocks() {
        assertEquals(Duration.ofHours(23), Night.spanOf(Places.CLOCK_CHANGE, Places.CLOCKS_FORWARD).lasts());
        assertEquals(Duration.ofHours(25), Night.spanOf(Places.CLOCK_CHANGE, Places.CLOCKS_BACK).lasts());
        assertEquals(Instant.parse("2027-02-01T06:30:00Z"),
                Night.spanOf(Places.HALF_HOUR_ZONE, LocalDate.of(2027, 2, 1)).start());
        assertEquals(Instant.parse("2027-02-01T00:00:00Z"),
                Night.spanOf(Places.DATE_LINE, LocalDate.of(2027, 2, 1)).start());
    }

    @Test
    void noEventIsLostOrDoubledBetweenNights() {
        List<Night> nights = Night.range(EPHEMERIS, Places.CLOCK_CHANGE, LocalDate.of(2027, 3, 20),
                LocalDate.of(2027, 4, 5));
        List<Instant> moonrises = nights.stream().flatMap(night -> night.events().stream())
                .filter(event -> event.what() == Kind.MOONRISE).map(Event::at).toList();
        for (int i = 1; i < moonrises.size(); i++) {
            Duration gap = Duration.between(moonrises.get(i - 1), moonrises.get(i));
            // A lunar day lasts 24 h 50 min in the mean; at 55 degrees rises come 24 to 26 h apart.
            assertTrue(gap.compareTo(Duration.ofHours(24)) > 0 && gap.compareTo(Duration.ofHours(26)) < 0,
                    gap::toString);
        }
    }

    @Test
    void theMoonTransitsHighestAndOnTheMeridian() {
        Site site = Places.MID_SOUTH;
        Night night = Night.of(EPHEMERIS, site, LocalDate.of(2027, 2, 18));
        SkyPosition transit = EPHEMERIS.position(Body.MOON, site, at(night, Kind.MOON_TRANSIT));
        assertEquals(0, transit.azimuth().sin(), 1e-6, "0.2 arcsec of azimuth, the curve's error");
        assertTrue(transit.airlessAltitude().degrees() > 0);
    }

    @Test
    void moonlessDarknessIsDarkAndMoonless() {
        for (Night night : Night.range(EPHEMERIS, Places.MID_NORTH, LocalDate.of(2027, 1, 1),
                LocalDate.of(2027, 1, 31))) {
            List<Interval> both = Interval.intersect(night.moonlessDarkness(), night.moonUp());
            assertTrue(both.isEmpty());
            assertEquals(Interval.total(night.darkness()), Interval.total(night.moonlessDarkness())
                    .plus(Interval.total(Interval.intersect(night.darkness(), night.moonUp()))));
        }
    }

    @Test
    void datesOutsideTheDataAreRefusedByName() {
        OutsideCoverage refusal = assertThrows(OutsideCoverage.class,
                () -> Night.of(EPHEMERIS, Places.EQUATOR, LocalDate.of(2071, 3, 1)));
        assertTrue(refusal.getMessage().contains("the whole night of 2071-03-01") && refusal.getMessage()
                .contains("2000-01-01 … 2059-12-31"),
                refusal.getMessage());
    }

    private static Instant at(Night night, Kind kind) {
        return night.events().stream().filter(event -> event.what() == kind).findFirst().orElseThrow().at();
    }
}
