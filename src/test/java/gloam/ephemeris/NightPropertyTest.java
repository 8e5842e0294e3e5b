package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Event.Kind;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The events of whole nights are those that a look at every second shows. */
class NightPropertyTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    /**
     * Near enough to the Arctic Circle for the Moon's inclination to bring its rises forward from day to day.
     */
    private static final Site NEAR_ARCTIC_CIRCLE = Places.at(66.2, 25.7, 100);
    private static final double SECOND_S = 1.01;

    static Stream<Arguments> nights() {
        return Stream.of(
                Arguments.of(Places.CLOCK_CHANGE, Places.CLOCKS_FORWARD),
                Arguments.of(Places.CLOCK_CHANGE, Places.CLOCKS_BACK),
                Arguments.of(Places.DATE_LINE, LocalDate.of(2027, 12, 31)),
                Arguments.of(Places.HALF_HOUR_ZONE, LocalDate.of(2028, 2, 29)),
                Arguments.of(Places.POLAR, LocalDate.of(2027, 2, 16)),
                Arguments.of(Places.POLAR, LocalDate.of(2027, 10, 26)));
    }

    @ParameterizedTest
    @MethodSource("nights")
    void eventsAreThoseSeenBySecond(Site site, LocalDate date) {
        assertSeenBySecond(Night.of(EPHEMERIS, site, date));
    }

    @Test
    void nightsOfTwoMoonrisesAndOfNoneAreRight() {
        List<Night> year = Night.range(EPHEMERIS, NEAR_ARCTIC_CIRCLE, LocalDate.of(2025, 1, 1),
                LocalDate.of(2025, 12, 31));
        for (int moonrises : new int[] {0, 2}) {
            List<Night> such = year.stream().filter(night -> count(night, Kind.MOONRISE) == moonrises)
                    .toList();
            assertTrue(!such.isEmpty(), () -> "no night of " + moonrises + " moonrises in a year");
            assertSeenBySecond(such.get(0));
        }
    }

    private static long count(Night night, Kind kind) {
        return night.events().stream().filter(event -> event.what() == kind).count();
    }

    private static void assertSeenBySecond(Night night) {
        List<Event> expected = new ArrayList<>();
        expected.addAll(seen(night, at -> sunDeg(night, at) + 50 / 60.0, Kind.SUNRISE, Kind.SUNSET));
        expected.addAll(seen(night, at -> sunDeg(night, at) + 6, Kind.CIVIL_DAWN, Kind.CIVIL_DUSK));
        expected.addAll(seen(night, at -> sunDeg(night, at) + 12, Kind.NAUTICAL_DAWN, Kind.NAUTICAL_DUSK));
        expected.addAll(seen(night, at -> sunDeg(night, at) + 18, Kind.ASTRONOMICAL_DAWN,
                Kind.ASTRONOMICAL_DUSK));
        expected.addAll(seen(night, at -> moonsLimbDeg(night, at) + 34 / 60.0, Kind.MOONRISE, Kind.MOONSET));
        expected.sort(Event.IN_TIME);
        List<Event> found = night.events().stream().filter(event -> event.what() != Kind.MOON_TRANSIT)
                .toList();
        assertEquals(expected.stream().map(Event::what).toList(), found.stream().map(Event::what).toList());
        for (int i = 0; i < found.size(); i++) {
            assertEquals(0, Duration.between(expected.get(i).at(), found.get(i).at()).toMillis() / 1000.0,
                    SECOND_S);
        }
    }

    private static List<Event> seen(Night night, ToDoubleFunction<Instant> over, Kind rising, Kind falling) {
        List<Event> events = new ArrayList<>();
        boolean before = over.applyAsDouble(night.span().start()) >= 0;
        for (Instant at = night.span().start(); at.isBefore(night.span().endExclusive());
                at = at.plusSeconds(1)) {
            boolean now = over.applyAsDouble(at) >= 0;
            if (now != before) {
                events.add(new Event(at, now ? rising : falling));
            }
            before = now;
        }
        return events;
    }

    private static double sunDeg(Night night, Instant at) {
        return Math.toDegrees(Math.asin(EPHEMERIS.sightline(Body.SUN, night.site(), at).up()));
    }

    private static double moonsLimbDeg(Night night, Instant at) {
        Sightline moon = EPHEMERIS.sightline(Body.MOON, night.site(), at);
        return Math.toDegrees(Math.asin(moon.up()) + Math.asin(1737.4 / moon.distanceKm()));
    }
}
