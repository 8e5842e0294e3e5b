package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.TripCheck;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.LightDome;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.planner.Trip;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What Gloam understood of a trip file.
 *
 * @param generatedAt  when the report was made
 * @param title        the trip's title
 * @param sites        its sites
 * @param firstNight   date of the first evening
 * @param lastNight    date of the last evening
 * @param camera       the camera
 * @param film         the film
 * @param sheets       sheets carried
 * @param preview      the digital test frame that looked right: one element, or none if there was no frame
 * @param wishes       the pictures wanted
 * @param defaultsUsed each default used, one for every value that the file omits
 */
public record CheckReport(OffsetDateTime generatedAt, String title, List<TripSiteRow> sites,
        LocalDate firstNight,
                          LocalDate lastNight, CameraRow camera, FilmRow film, int sheets,
                          List<PreviewRow> preview,
                          List<WishRow> wishes, List<String> defaultsUsed) implements Report {

    private static final int TERMS = 10;

    /** Reports a trip and the defaults with which it was read. */
    public static CheckReport of(TripCheck check, Instant now) {
        Trip trip = check.trip();
        return new CheckReport(new SiteClock(trip.sites().get(0).zone()).at(now), trip.title(),
                trip.sites().stream().map(site -> new TripSiteRow(site, site.skyline().points().size(),
                        site.lightDomes().stream().map(DomeRow::of).toList(),
                        site.zenithSpreadStops(), site.skyReadings().stream().map(reading ->
                        ReadingRow.of(reading, new SiteClock(site.zone()))).toList())).toList(),
                trip.firstNight(), trip.lastNight(), CameraRow.of(trip.camera()), FilmRow.of(check),
                trip.sheets(),
                trip.preview().stream().map(frame -> new PreviewRow(frame.fNumber().marked(), frame.iso(),
                        frame.exposure().toNanos() * 1e-9)).toList(),
                trip.wishes().stream().map(WishRow::of).toList(), check.defaultsUsed());
    }

    @Override
    public Document document() {
        Document document = Document.headed(title());
        add(document, "nights", Wording.date(firstNight()) + " … " + Wording.date(lastNight()));
        sites().forEach(site -> add(document, "site", words(site)));
        add(document, "camera", words(camera()));
        add(document, "film", words(film()));
        add(document, "sheets", String.valueOf(sheets()));
        preview().forEach(frame -> add(document, "preview", Wording.fNumber(frame.fNumber()) + ", ISO "
                + Wording.plain(frame.iso()) + ", " + Wording.plain(frame.exposureS()) + " s"));
        document.gap();
        document.heading(2, "Wishes");
        wishes().forEach(wish -> add(document, wish.name(), words(wish)));
        document.gap();
        if (defaultsUsed().isEmpty()) {
            return document.text("No default was needed.");
        }
        document.heading(2, "Defaults used");
        defaultsUsed().forEach(document::under);
        return document;
    }

    private static void add(Document document, String name, String text) {
        document.add(new Block.Term(name, text, TERMS, true));
    }

    private static String words(TripSiteRow site) {
        Site place = site.site();
        return SiteText.of(place) + "; moonless zenith " + Wording.plain(place.darkSkyMagArcsec2())
                + " mag/arcsec², extinction " + Wording.plain(place.extinctionMag()) + " mag, "
                + (site.skylinePoints() > 1 ? "skyline of " + site.skylinePoints() + " points"
                : "level horizon") + site.lightDomes().stream().map(dome -> "; " + words(dome))
                .collect(Collectors.joining()) + (site.sky().isEmpty() ? "" : "; as measured, zenith ± "
                + Wording.number(site.zenithSpreadStops(), 2) + " stops: " + site.sky().stream()
                .map(CheckReport::words).collect(Collectors.joining(", ")));
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
                + Wording.signed(reading.leftMag().orElseThrow(), 2) + ")";
    }

    private static String words(CameraRow camera) {
        return camera.name() + ", " + Wording.plain(camera.focalLengthMm()) + " mm on "
                + Wording.size(camera.frameWidthMm(), camera.frameHeightMm()) + "; f/ "
                + camera.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", "))
                + "; focus " + Wording.focus(camera.focusM())
                + "; transmittance " + Wording.plain(camera.transmittance()) + "; spot "
                + Wording.plain(camera.spotUm()) + " µm; filter " + Wording.plain(camera.filterStops())
                + " stops; mount takes " + Wording.plain(camera.mountCornerStops())
                + " stops in the corner; changeover " + Wording.plain(camera.changeoverMin()) + " min";
    }

    private static String words(FilmRow film) {
        return film.name() + ", ISO " + Wording.plain(film.iso()) + ", " + film.kind() + ", "
                + (film.layers() == 1 ? "one layer" : film.layers() + " layers")
                + "; reciprocity failure costs " + film.failureStops().stream()
                        .map(stops -> Wording.number(stops, 1)).collect(Collectors.joining(", "))
                + " stops at metered 1 min, 10 min, 1 h; " + film.source();
    }

    private static String words(WishRow wish) {
        List<String> parts = new ArrayList<>(List.of(wish.aim(), "sky " + wish.sky(), "tone " + wish.tone(),
                "records " + wish.records()));
        wish.trailLeastMm().ifPresent(mm -> parts.add("trail from " + Wording.plain(mm) + " mm"));
        wish.trailMostMm().ifPresent(mm -> parts.add("trail up to " + Wording.plain(mm) + " mm"));
        wish.limits().ifPresent(parts::add);
        parts.add("exposure " + Wording.plain(wish.shortestMin()) + " … " + Wording.plain(wish.longestMin())
                + " min");
        parts.add(wish.fNumbers().isEmpty() ? "any f-number"
                : "f/ " + wish.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", ")));
        wish.film().ifPresent(film -> parts.add("film " + film));
        parts.add("worth " + Wording.plain(wish.worth()) + ", " + (wish.repeat() == 1 ? "once"
                : "up to " + wish.repeat() + " sheets"));
        return String.join("; ", parts);
    }

    /**
     * A site, the number of points in its skyline, 1 for a level horizon, the towns around it, the standard
     * deviation of its zenith's figure, and the measurements that it is fitted to.
     */
    public record TripSiteRow(@JsonUnwrapped Site site, int skylinePoints, List<DomeRow> lightDomes,
                              double zenithSpreadStops, List<ReadingRow> sky) {
    }

    /** A measurement of the sky, and by how many magnitudes the sky as fitted to all of them is darker. */
    public record ReadingRow(OffsetDateTime at, Angle azimuth, Angle altitude, double magArcsec2,
                             double errorMag, OptionalDouble leftMag) {

        static ReadingRow of(SkyReading reading, SiteClock clock) {
            return new ReadingRow(clock.at(reading.at()), reading.azimuth(), reading.altitude(),
                    reading.magArcsec2(), reading.spreadMag(), reading.leftMag());
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

    /**
     * The camera, with the units and meanings of {@link Camera}, {@link Lens}, {@link gloam.gear.Vignetting}
     * and {@link gloam.gear.Frame}.
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
     * @param iso          its rated speed
     * @param layers       number of its layers
     * @param failureStops loss to reciprocity failure at metered times of 1 min, 10 min and 1 h, in stops
     * @param source       where its figures come from
     */
    public record FilmRow(String name, double iso, String kind, int layers, List<Double> failureStops,
                          String source) {

        static FilmRow of(TripCheck check) {
            FilmStock film = check.trip().film();
            return new FilmRow(film.name(), film.iso(), Label.of(film.kind()), film.layers().size(),
                    check.failureStops(), film.source());
        }
    }

    /** A digital test frame that looked right: its f-number, ISO and exposure time in seconds. */
    public record PreviewRow(double fNumber, double iso, double exposureS) {
    }
}
