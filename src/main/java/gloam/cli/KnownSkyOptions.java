package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.light.SkyBrightness;
import gloam.planner.Preview;
import gloam.planner.Trip;
import gloam.report.KnownSky;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** How the brightness of the sky is known: metered by a preview frame, measured, computed, or several of them. */
final class KnownSkyOptions {

    @Option(names = "--preview-f-number", paramLabel = "N", converter = Converters.FNumber.class,
            description = "F-number of a digital frame that looked right (default: the trip's).")
    private Optional<Double> previewFNumber;

    @Option(names = "--preview-iso", paramLabel = "N", description = "Its ISO setting.")
    private Optional<Quantity> previewIso;

    @Option(names = "--preview-exposure", paramLabel = "DURATION", description = "Its exposure, such as 30s.")
    private Optional<Duration> previewExposure;

    @Option(names = "--sky-mag-arcsec2", paramLabel = "MAG",
            description = "Measured brightness of the sky at the frame's centre, V mag/arcsec².")
    private Optional<Quantity> skyMagArcsec2;

    @Option(names = "--at", paramLabel = "INSTANT",
            description = "Compute the sky for an instant and take it as steady.")
    private Optional<Moment> at;

    @Option(names = "--from", paramLabel = "INSTANT",
            description = "Compute the sky from when the shutter opens, as it changes.")
    private Optional<Moment> from;

    @Option(names = "--azimuth", paramLabel = "DEG",
            description = "Where the camera points, from north through east (default: 0).")
    private Optional<Quantity> azimuthDeg;

    @Option(names = "--altitude", paramLabel = "DEG",
            description = "How high the camera points (default: 90, the zenith).")
    private Optional<Quantity> altitudeDeg;

    /**
     * What tells the sky, the one to expose for first: the computed one if it changes, else the preview frame, the
     * measured and the computed one; the trip's preview where nothing is said. The site is asked for only when the sky
     * is to be computed.
     */
    List<KnownSky> known(Optional<Trip> trip, Supplier<Site> site) {
        if (at.isPresent() && from.isPresent()) {
            throw new BadInput("give --at for a sky that stays or --from for one that changes, not both");
        }
        List<KnownSky> skies = new ArrayList<>();
        if (from.isPresent()) {
            skies.add(computed(site.get()));
        }
        if (previewFNumber.isPresent() || previewIso.isPresent() || previewExposure.isPresent()) {
            skies.add(new KnownSky.Metered(preview()));
        }
        skyMagArcsec2.ifPresent(mag -> skies.add(new KnownSky.Measured(SkyBrightness.ofMagArcsec2(
                FromOption.checked("--sky-mag-arcsec2", SkyBrightness.MAG_ARCSEC2, mag)))));
        if (at.isPresent()) {
            skies.add(computed(site.get()));
        }
        if (skies.isEmpty()) {
            skies.add(trip.flatMap(Trip::preview).map(KnownSky.Metered::new).orElseThrow(() -> new BadInput(
                    "the sky is not said; give --preview-f-number, --preview-iso and --preview-exposure, or "
                            + "--sky-mag-arcsec2, or a site and --at or --from")));
        }
        return skies;
    }

    private Preview preview() {
        if (previewFNumber.isEmpty() || previewIso.isEmpty() || previewExposure.isEmpty()) {
            throw new BadInput("a preview frame needs --preview-f-number, --preview-iso and --preview-exposure; give all three");
        }
        double iso = FromOption.checked("--preview-iso", Preview.ISO, previewIso.get());
        return FromOption.of("--preview-exposure", () ->
                new Preview(previewFNumber.get(), iso, previewExposure.get()));
    }

    private KnownSky computed(Site site) {
        String option = at.isPresent() ? "--at" : "--from";
        Moment moment = at.or(() -> from).orElseThrow();
        double azimuth = azimuthDeg.map(given -> FromOption.checked("--azimuth", Direction.AZIMUTH, given)).orElse(0.0);
        double altitude = altitudeDeg.map(given -> FromOption.checked("--altitude", Direction.ALTITUDE, given))
                .orElse(90.0);
        return new KnownSky.Computed(site, Direction.ofDegrees(azimuth, altitude),
                FromOption.of(option, () -> moment.in(site.zone())), at.isPresent());
    }
}
