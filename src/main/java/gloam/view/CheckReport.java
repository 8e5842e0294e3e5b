package gloam.view;

import gloam.gear.Site;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.TripCheck;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.planner.Trip;
import gloam.units.Finite;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a trip file was understood.
 *
 * @param generatedAt  when the report was made
 * @param title        the trip's title
 * @param sites        its sites
 * @param firstNight   date of the first evening
 * @param lastNight    date of the last evening
 * @param camera       the camera
 * @param film         the film
 * @param sheets       sheets carried
 * @param preview      the digital frame that looked right; empty where none was made, else one element
 * @param wishes       the pictures wanted
 * @param defaultsUsed what the file left out and what was taken for it
 */
public record CheckReport(OffsetDateTime generatedAt, String title, List<TripSiteRow> sites, LocalDate firstNight,
                          LocalDate lastNight, CameraRow camera, FilmRow film, int sheets, List<PreviewRow> preview,
                          List<WishRow> wishes, List<String> defaultsUsed) implements Report {

    /** The report of a trip and the defaults it was read with. */
    public static CheckReport of(TripCheck check, Instant now) {
        Trip trip = check.trip();
        return new CheckReport(new SiteClock(trip.sites().get(0).zone()).at(now), trip.title(),
                trip.sites().stream().map(site -> new TripSiteRow(site, site.skyline().points().size()))
                        .toList(),
                trip.firstNight(), trip.lastNight(), CameraRow.of(trip.camera()), FilmRow.of(check),
                trip.sheets(),
                trip.preview().stream().map(frame -> new PreviewRow(frame.fNumber().marked(), frame.iso(),
                        frame.exposure().toNanos() * 1e-9)).toList(),
                trip.wishes().stream().map(WishRow::of).toList(), check.defaultsUsed());
    }

    /** A site and how many points its skyline has. */
    public record TripSiteRow(@JsonUnwrapped Site site, int skylinePoints) {
    }

    /**
     * The camera; the meanings of {@link Camera}, {@link Lens}, {@link gloam.gear.Vignetting} and
     * {@link gloam.gear.Frame}.
     */
    public record CameraRow(String name, double focalLengthMm, double frameWidthMm, double frameHeightMm,
                            List<Double> fNumbers, OptionalDouble focusM, double transmittance, double spotUm,
                            double filterStops, double mountCornerStops, double changeoverMin) {

        static CameraRow of(Camera camera) {
            Lens lens = camera.lens();
            return new CameraRow(camera.name(), lens.focalLengthMm(), camera.frame().widthMm(),
                    camera.frame().heightMm(), lens.fNumbers().stream().map(FNumber::marked).toList(),
                    Finite.of(lens.focusM()),
                    lens.transmittance(), lens.spotUm(), lens.filterStops(),
                    lens.vignetting().cornerStops(), camera.changeover().toSeconds() / 60.0);
        }
    }

    /**
     * The film.
     *
     * @param failureStops what reciprocity failure costs at metered times of 1 min, 10 min and 1 h
     */
    public record FilmRow(String name, double iso, String kind, int layers, List<Double> failureStops,
                          String source) {

        static FilmRow of(TripCheck check) {
            FilmStock film = check.trip().film();
            return new FilmRow(film.name(), film.iso(), WishRow.words(film.kind()), film.layers().size(),
                    check.failureStops(), film.source());
        }
    }

    /** A digital frame that looked right. */
    public record PreviewRow(double fNumber, double iso, double exposureS) {
    }
}
