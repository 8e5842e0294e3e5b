package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.light.SkyBrightness;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What sky a window stands in: Sun down 17:00 to 07:00, dark 19:00 to 05:00, the Moon up until 22:00. */
class WindowSkyTest {

    private static final LocalDate DATE = LocalDate.of(2027, 2, 8);
    private static final SkyBrightness LIGHT = SkyBrightness.ofMagArcsec2(21);

    private static Instant at(String time) {
        LocalTime clock = LocalTime.parse(time);
        return (clock.getHour() < 12 ? DATE.plusDays(1) : DATE).atTime(clock).toInstant(ZoneOffset.UTC);
    }

    private static Interval span(String from, String to) {
        return new Interval(at(from), at(to));
    }

    private static Night night() {
        return new Night(Places.MID_NORTH, DATE, span("16:00", "08:00"), List.of(),
                List.of(span("17:00", "07:00")), List.of(span("17:30", "06:30")),
                List.of(span("18:00", "06:00")), List.of(span("19:00", "05:00")),
                List.of(span("16:00", "22:00")));
    }

    @ParameterizedTest
    @CsvSource({
        // wanted, opens, closes; found, moonless, from, to
        "ANY,     23:00, 00:30, DARK,    true,  22:00, 05:00",
        "ANY,     20:00, 21:00, DARK,    false, 19:00, 05:00",
        "ANY,     21:00, 23:00, DARK,    false, 19:00, 05:00",
        "ANY,     18:00, 20:00, ANY,     false, 17:00, 07:00",
        "DARK,    22:00, 05:00, DARK,    true,  22:00, 05:00",
        "DARK,    21:59, 23:00, DARK,    false, 19:00, 05:00",
        "MOONLIT, 20:00, 21:00, MOONLIT, false, 19:00, 05:00",
        "DUSK,    17:30, 18:30, DUSK,    false, 17:00, 07:00",
        "DAWN,    05:30, 06:30, DAWN,    false, 17:00, 07:00"})
    void theSkyIsNamedWithItsSpan(SkyKind wanted, String opens, String closes, SkyKind found,
            boolean moonless, String from, String to) {
        Wish wish = Trips.pointed("wish", Direction.ofDegrees(180, 40), wanted, new Wish.Tone.Free());
        assertEquals(new WindowSky(found, moonless, Optional.of(span(from, to)), LIGHT),
                WindowSky.of(wish, span(opens, closes), LIGHT, night()));
    }
}
