package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Night;
import gloam.field.Forecast;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NoteTest {

    private static final Night NIGHT = Night.of(new AnalyticEphemeris(), Places.MID_NORTH,
            LocalDate.of(2027, 2, 8));
    private static final Instant SUNSET = NIGHT.sunDown().get(0).start();
    private static final Instant SUNRISE = NIGHT.sunDown().get(0).endExclusive();

    private static Trip trip(Site site, Optional<Forecast> forecast) {
        Trip trip = Trips.trip(List.of(site), NIGHT.date(), 1, 1, List.of());
        return Trips.under(trip, Weather.of(forecast), Optional.empty());
    }

    private static Forecast.Row row(Instant at, double temperatureC, double dewPointC) {
        return new Forecast.Row(at, 0, OptionalDouble.of(temperatureC), OptionalDouble.of(dewPointC),
                OptionalDouble.of(20));
    }

    /** Before sunset and after sunrise it is colder and wetter, which is nobody's business. */
    @Test
    void theWeatherIsThatOfTheTimeOutside() {
        List<Forecast.Row> rows = new ArrayList<>();
        for (Instant at = NIGHT.span().start(); at.isBefore(NIGHT.span().endExclusive()); at =
                at.plus(Duration.ofMinutes(30))) {
            boolean outside = !at.isBefore(SUNSET) && at.isBefore(SUNRISE);
            boolean late = at.isAfter(SUNSET.plus(Duration.ofHours(6)));
            rows.add(row(at, outside ? late ? -5 : 2 : -20, outside && !late ? -8 : late && outside ? -6
                    : -20));
        }
        List<Note> notes = Note.of(trip(Places.MID_NORTH, Optional.of(new Forecast(rows))), NIGHT);
        assertEquals(2, notes.size());
        Note.Dew dew = (Note.Dew) notes.get(0);
        assertTrue(dew.from().isAfter(SUNSET.plus(Duration.ofHours(5))) && dew.from().isBefore(SUNRISE),
                dew::toString);
        assertEquals(1, dew.spareC(), 1e-9);
        Note.Cold cold = (Note.Cold) notes.get(1);
        assertTrue(cold.at().isAfter(SUNSET) && cold.at().isBefore(SUNRISE), cold::toString);
        assertEquals(-5, cold.temperatureC());
        assertEquals(20, cold.windKmH());
        // wind chill of -5 °C at 20 km/h: -12 (table of Environment Canada), no frostbite above -27
        assertEquals(-11.6, cold.feltC(), 0.5);
        assertTrue(!cold.freezesSkin());
    }

    @Test
    void withoutAForecastTheWeatherIsUnknown() {
        assertEquals(List.of(), Note.of(trip(Places.MID_NORTH, Optional.empty()), NIGHT));
    }

    @Test
    void clocksThatChangeAreTold() {
        Night forward = Night.of(new AnalyticEphemeris(), Places.CLOCK_CHANGE, Places.CLOCKS_FORWARD);
        List<Note> notes = Note.of(trip(Places.CLOCK_CHANGE, Optional.empty()), forward);
        assertEquals(Instant.parse("2027-03-28T01:00:00Z"), ((Note.ClocksChange) notes.get(0)).change()
                .getInstant());
        assertEquals(1, notes.size());
    }

    /** In polar day the Sun is never down, and nobody waits for the dark. */
    @Test
    void aNightWithoutDarknessHasNoWeather() {
        Night day = Night.of(new AnalyticEphemeris(), Places.POLAR, LocalDate.of(2027, 6, 21));
        Forecast forecast = new Forecast(List.of(row(day.span().middle(), -20, -20),
                row(day.span().middle().plusSeconds(3600), -20, -20)));
        assertEquals(List.of(), Note.of(trip(Places.POLAR, Optional.of(forecast)), day));
    }
}
