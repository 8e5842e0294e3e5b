package gloam.journal;

import gloam.exposure.SkyDoubt;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/**
 * A night at a site, whose light is off in one way.
 *
 * @param site     the site's name, empty if not noted
 * @param evening  the day on which it began
 * @param measured whether its light was measured rather than computed
 */
public record NightAtSite(String site, LocalDate evening, boolean measured) {

    private static final Duration NOON = Duration.ofHours(12);

    /** The night at a place in which an instant lies. */
    public static NightAtSite of(Place place, Instant at, boolean measured) {
        return new NightAtSite(place.name(), evening(at, place.zone()), measured);
    }

    /** The night in which a sheet was exposed. */
    static NightAtSite of(Exposed sheet) {
        Instant at = sheet.whole().start();
        return sheet.place().map(place -> of(place, at, sheet.measured()))
                .orElseGet(() -> new NightAtSite("", evening(at, ZoneOffset.UTC), sheet.measured()));
    }

    private static LocalDate evening(Instant at, ZoneId zone) {
        return at.atZone(zone).minus(NOON).toLocalDate();
    }

    /** Standard deviation of its light in stops. */
    double spreadStops() {
        return (measured ? SkyDoubt.MEASURED : SkyDoubt.USUAL).stops(List.of());
    }
}
