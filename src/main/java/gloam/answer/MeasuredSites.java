package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.light.SkyFit;
import gloam.planner.Trip;
import java.util.function.Supplier;

/** Sets the sky over sites by what was measured there. */
public final class MeasuredSites {

    private MeasuredSites() {
    }

    /** The trip with its sites so; the ephemeris is asked for only where something was measured. */
    public static Trip of(Supplier<Ephemeris> ephemeris, Trip trip) {
        return trip.sites().stream().allMatch(site -> site.skyReadings().isEmpty()) ? trip
                : trip.to(trip.sites().stream().map(site -> of(ephemeris, site)).toList());
    }

    /** A site so. */
    public static Site of(Supplier<Ephemeris> ephemeris, Site site) {
        return SkyFit.of(ephemeris.get(), site);
    }
}
