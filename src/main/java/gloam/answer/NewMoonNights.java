package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.MoonPhase;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * Nights around the next new Moon, none of them past.
 *
 * @param evenings their dates, in order
 */
public record NewMoonNights(List<LocalDate> evenings) {

    /** Longer than any time from new moon to new moon. */
    private static final Duration MONTH = Duration.ofDays(30);

    /** Copies the list. */
    public NewMoonNights {
        evenings = List.copyOf(evenings);
    }

    /**
     * The nights from some days before the date of the next new Moon to as many after it.
     *
     * @param zone the time zone of the dates
     */
    public static NewMoonNights after(Ephemeris ephemeris, Instant now, ZoneId zone, int daysAround) {
        LocalDate today = now.atZone(zone).toLocalDate();
        LocalDate dark = MoonPhase.quarters(ephemeris, Interval.lasting(now, MONTH)).stream()
                .filter(quarter -> quarter.name() == MoonPhase.Name.NEW_MOON).findFirst()
                .map(quarter -> quarter.at().atZone(zone).toLocalDate()).orElse(today);
        LocalDate first = dark.minusDays(daysAround);
        return new NewMoonNights((first.isBefore(today) ? today : first)
                .datesUntil(dark.plusDays(daysAround + 1)).toList());
    }
}
