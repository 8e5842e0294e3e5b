package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Site;
import gloam.light.SkyBrightness;
import gloam.planner.Preview;
import gloam.planner.Trip;
import gloam.answer.KnownSky;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How the brightness of the sky is known: metered by a preview frame, measured, computed, or several of them.
 */
final class KnownSkyOptions extends OptionGroup {

    private final Option<FNumber> previewFNumber = option("--preview-f-number", "N", FNumber.class,
            "F-number of a digital frame that looked right (default: the trip's).").readBy(FNumber::of);

    private final Option<Quantity> previewIso = option("--preview-iso", "N", Quantity.class,
            "Its ISO setting.");

    private final Option<Duration> previewExposure = option("--preview-exposure", "DURATION", Duration.class,
            "Its exposure, such as 30s.");

    private final Option<Quantity> skyMagArcsec2 = option("--sky-mag-arcsec2", "MAG", Quantity.class,
            "Measured brightness of the sky at the frame's centre, V mag/arcsec².");

    private final Option<Moment> at = option("--at", "INSTANT", Moment.class,
            "Compute the sky at this instant; it is taken as constant.");

    private final Option<Moment> from = option("--from", "INSTANT", Moment.class,
            "When the shutter opens; the sky is computed as it changes.");

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where the camera points, from north through east (default: 0).");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high the camera points (default: 90, the zenith).");

    /**
     * The readings of the sky, the one to expose for first: the computed one if it changes, else the preview
     * frame, the measured and the computed one; the trip's preview where nothing is said. The site is asked
     * for only when the sky is to be computed.
     */
    List<KnownSky> known(Optional<Trip> trip, Supplier<Site> site) {
        if (at.given() && from.given()) {
            throw new BadInput("give --at for a sky that stays or --from for one that changes, not both");
        }
        List<KnownSky> skies = new ArrayList<>();
        if (from.given()) {
            skies.add(computed(site.get()));
        }
        if (previewFNumber.given() || previewIso.given() || previewExposure.given()) {
            skies.add(new KnownSky.Metered(preview()));
        }
        skyMagArcsec2.value().ifPresent(mag -> skies.add(new KnownSky.Measured(SkyBrightness.ofMagArcsec2(
                FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, mag)))));
        if (at.given()) {
            skies.add(computed(site.get()));
        }
        if (skies.isEmpty()) {
            skies.add(trip.flatMap(asked -> asked.preview().at(asked.sites().get(0)))
                    .map(KnownSky.Metered::new).orElseThrow(() -> new BadInput(
                    "no sky given; use --preview-f-number, --preview-iso and --preview-exposure, or "
                            + "--sky-mag-arcsec2, or a site and --at or --from")));
        }
        return skies;
    }

    private Preview preview() {
        if (!previewFNumber.given() || !previewIso.given() || !previewExposure.given()) {
            throw new BadInput("a preview frame needs --preview-f-number, --preview-iso and "
                    + "--preview-exposure; give all three");
        }
        double iso = FromOption.checked("--preview-iso", Preview.ISO, previewIso.get());
        return FromOption.of("--preview-exposure", () ->
                new Preview(previewFNumber.get(), iso, previewExposure.get()));
    }

    private KnownSky computed(Site site) {
        String option = at.given() ? "--at" : "--from";
        Moment moment = at.value().or(() -> from.value()).orElseThrow();
        double azimuth = azimuthDeg.value()
                .map(given -> FromOption.checked("--azimuth", Direction.AZIMUTH, given)).orElse(0.0);
        double altitude = altitudeDeg.value()
                .map(given -> FromOption.checked("--altitude", Direction.ALTITUDE, given))
                .orElse(90.0);
        return new KnownSky.Computed(site, Direction.ofDegrees(azimuth, altitude),
                FromOption.of(option, () -> moment.in(site.zone())), at.given());
    }
}
