package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.gear.LightDome;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.Site;
import gloam.light.SkyBrightness;
import gloam.gear.SkyReading;
import gloam.planner.Trip;
import gloam.units.Angle;
import gloam.units.Finite;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * A site.
 *
 * @param skylinePoints      number of points in its skyline; 1 for a level horizon
 * @param lightDomes         the towns around it
 * @param zenithSpreadStops  standard deviation of its zenith's figure
 * @param sky                the measurements that it is fitted to
 * @param preview            a digital frame made there that looked right
 * @param frameSkyMagArcsec2 the sky that its frame shows, or that of the trip
 * @param skyByFrame         whether its dark sky is the frame's, since none is stated
 */
public record TripSiteRow(@JsonUnwrapped Site site, int skylinePoints, List<DomeRow> lightDomes,
                          double zenithSpreadStops, List<ReadingRow> sky,
                          Optional<CheckReport.PreviewRow> preview,
                          OptionalDouble frameSkyMagArcsec2, boolean skyByFrame) {

    static TripSiteRow of(Site site, Trip trip) {
        Optional<SkyBrightness> shown = trip.preview().sky(site, trip.camera().lens());
        SiteClock clock = new SiteClock(site.zone());
        return new TripSiteRow(site, site.skyline().points().size(),
                site.lightDomes().stream().map(DomeRow::of).toList(), site.zenithSpreadStops(),
                site.skyReadings().stream().map(reading -> ReadingRow.of(reading, clock)).toList(),
                Optional.ofNullable(trip.preview().bySite().get(site.name())).map(CheckReport.PreviewRow::of),
                shown.map(sky -> OptionalDouble.of(sky.magArcsec2())).orElse(OptionalDouble.empty()),
                trip.preview().sets(site));
    }

    String words() {
        return SiteText.of(site) + "; moonless zenith " + Wording.plain(site.darkSkyMagArcsec2())
                + " mag/arcsec²" + shownByFrame() + ", extinction "
                + Wording.plain(site.extinctionMag()) + " mag, "
                + (skylinePoints() > 1 ? "skyline of " + skylinePoints() + " points"
                : "level horizon") + lightDomes().stream().map(dome -> "; " + words(dome))
                .collect(Collectors.joining()) + (sky().isEmpty() ? "" : "; as measured, zenith ± "
                + Wording.number(zenithSpreadStops(), 2) + " stops: " + sky().stream()
                .map(TripSiteRow::words).collect(Collectors.joining(", ")));
    }

    private static String words(DomeRow dome) {
        return "town at " + Wording.plain(dome.azimuth().degrees()) + "°: " + (dome.people().isPresent()
                ? dome.people().getAsInt() + " people, " + Wording.plain(dome.distanceKm().orElseThrow())
                + " km"
                : Wording.plain(dome.magArcsec2().orElseThrow()) + " mag/arcsec² at altitude "
                + Wording.plain(dome.altitudeDeg().orElseThrow()) + "°");
    }

    private static String words(ReadingRow reading) {
        return Wording.plain(reading.magArcsec2()) + " (fit "
                + Wording.signed(reading.leftMag().orElseThrow(), 2)
                + (reading.twilightSpreadStops().isEmpty()
                ? "" : "; that twilight ± " + Wording.number(reading.twilightSpreadStops().getAsDouble(), 1)
                + " stops") + ")";
    }

    private String shownByFrame() {
        return frameSkyMagArcsec2().isEmpty() ? "" : (skyByFrame() ? " by the preview frame"
                : " as stated, " + Wording.number(frameSkyMagArcsec2().getAsDouble(), 1)
                + " by the preview frame")
                + preview().map(frame -> " (" + CheckReport.words(frame) + ")").orElse("");
    }

    /**
     * A measurement of the sky, by how many magnitudes the sky as fitted to all of them is darker, and how
     * well that evening's twilight is known where it was measured.
     */
    public record ReadingRow(OffsetDateTime at, Angle azimuth, Angle altitude, double magArcsec2,
                             double errorMag, OptionalDouble leftMag, OptionalDouble twilightSpreadStops) {

        static ReadingRow of(SkyReading reading, SiteClock clock) {
            return new ReadingRow(clock.at(reading.at()), reading.azimuth(), reading.altitude(),
                    reading.magArcsec2(), reading.spreadMag(), reading.leftMag(),
                    Finite.of(reading.twilight().map(SkyReading.Twilight::spreadStops)));
        }
    }

    /** The glow of a town: by its people and distance, or as measured at an altitude. */
    public record DomeRow(Angle azimuth, OptionalInt people, OptionalDouble distanceKm,
                          OptionalDouble altitudeDeg, OptionalDouble magArcsec2, double colourK) {

        static DomeRow of(LightDome dome) {
            Optional<Town> town = Optional.of(dome.known()).filter(Town.class::isInstance)
                    .map(Town.class::cast);
            Optional<Measured> seen = Optional.of(dome.known()).filter(Measured.class::isInstance)
                    .map(Measured.class::cast);
            return new DomeRow(dome.azimuth(),
                    town.stream().mapToInt(known -> (int) Math.round(known.people())).findFirst(),
                    town.stream().mapToDouble(Town::distanceKm).findFirst(),
                    seen.stream().mapToDouble(known -> known.altitude().degrees()).findFirst(),
                    seen.stream().mapToDouble(Measured::magArcsec2).findFirst(), dome.colourK());
        }
    }
}
