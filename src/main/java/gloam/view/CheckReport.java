package gloam.view;

import gloam.answer.TripCheck;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.planner.CarriedCamera;
import gloam.planner.Evenings;
import gloam.planner.Travel;
import gloam.planner.Preview;
import gloam.planner.Trip;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What Gloam understood of a trip file.
 *
 * @param generatedAt  when the report was made
 * @param title        the trip's title
 * @param sites        its sites
 * @param firstNight   date of the first evening
 * @param lastNight    date of the last evening
 * @param evenings     the evenings that are free, in words
 * @param awake        the hours in which people are up, if not all
 * @param travelMin    minutes from one site to another, where nothing else is said
 * @param travel       the ways of which something else is said
 * @param cameras      the cameras
 * @param film         the film
 * @param sheets       sheets carried
 * @param sheetsPerNight most sheets on one night
 * @param journal      the file of its journal, if it names one
 * @param batch        the pack that its film is from, if it names one
 * @param preview      the digital test frame that looked right: one element, or none if there was no frame
 * @param weather      what is known of the weather
 * @param wishes       the pictures wanted
 * @param defaultsUsed each default used, one for every value that the file omits
 */
public record CheckReport(OffsetDateTime generatedAt, String title, List<TripSiteRow> sites,
        LocalDate firstNight,
                          LocalDate lastNight, String evenings, Optional<AwakeRow> awake,
                          double travelMin, List<TravelRow> travel, List<CameraRow> cameras, FilmRow film,
                          int sheets, int sheetsPerNight, Optional<String> journal,
                          Optional<String> batch,
                          List<PreviewRow> preview, WeatherRow weather, List<WishRow> wishes,
                          List<String> defaultsUsed) implements Report {

    private static final int TERMS = 10;

    /** Reports a trip and the defaults with which it was read. */
    public static CheckReport of(TripCheck check, Instant now) {
        Trip trip = check.trip();
        return new CheckReport(new SiteClock(trip.sites().get(0).zone()).at(now), trip.title(),
                trip.sites().stream().map(site -> TripSiteRow.of(site, trip)).toList(),
                trip.firstNight(), trip.lastNight(), trip.outings().evenings().toString(),
                trip.outings().awake().map(hours -> new AwakeRow(hours.from().toString(),
                        hours.to().toString())), minutes(trip.outings().travel().usual()),
                trip.outings().travel().legs().stream().map(TravelRow::of).toList(),
                trip.cameras().stream().map(CameraRow::of).toList(), FilmRow.of(check),
                trip.sheets(), trip.outings().sheetsPerNight(), check.journal(), check.batch(),
                trip.preview().everywhere().stream().map(PreviewRow::of).toList(),
                WeatherRow.of(trip), trip.wishes().stream().map(WishRow::of).toList(), check.defaultsUsed());
    }

    @Override
    public Document document() {
        Document document = Document.headed(title());
        add(document, "nights", Wording.date(firstNight()) + " … " + Wording.date(lastNight())
                + (Evenings.ALL.toString().equals(evenings()) ? "" : ", evenings " + evenings()));
        awake().ifPresent(hours -> add(document, "awake", hours.from() + " … " + hours.until()));
        sites().forEach(site -> add(document, "site", site.words()));
        if (travelMin() > 0 || !travel().isEmpty()) {
            add(document, "travel", Stream.concat(travel().stream().map(TravelRow::words),
                    Stream.of(Wording.plain(travelMin()) + " min between others"))
                    .collect(Collectors.joining("; ")));
        }
        cameras().forEach(camera -> add(document, "camera", words(camera)));
        add(document, "film", words(film()));
        add(document, "sheets", sheets() + (sheetsPerNight() < sheets() ? ", at most " + sheetsPerNight()
                + " a night" : ""));
        journal().ifPresent(file -> add(document, "journal", file));
        batch().ifPresent(name -> add(document, "batch", name));
        preview().forEach(frame -> add(document, "preview", words(frame)));
        add(document, "weather", weather().words());
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

    static String words(PreviewRow frame) {
        return Wording.fNumber(frame.fNumber()) + ", ISO " + Wording.plain(frame.iso()) + ", "
                + Wording.plain(frame.exposureS()) + " s";
    }

    private static String words(CameraRow camera) {
        return camera.name() + ", " + Wording.plain(camera.focalLengthMm()) + " mm on "
                + Wording.size(camera.frameWidthMm(), camera.frameHeightMm()) + "; f/"
                + camera.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", "))
                + "; focus " + Wording.focus(camera.focusM())
                + "; transmittance " + Wording.plain(camera.transmittance()) + "; spot "
                + Wording.plain(camera.spotUm()) + " µm; filter " + Wording.plain(camera.filterStops())
                + " stops; mount takes " + Wording.plain(camera.mountCornerStops())
                + " stops in the corner; changeover " + Wording.plain(camera.changeoverMin()) + " min"
                + camera.film().map(film -> "; film " + film).orElse("");
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
        parts.add(wish.limits());
        parts.add("exposure " + Wording.plain(wish.shortestMin()) + " … " + Wording.plain(wish.longestMin())
                + " min");
        parts.add(wish.fNumbers().isEmpty() ? "any f-number"
                : "f/" + wish.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", ")));
        wish.laterOpenings().forEach(later -> parts.add("then " + later));
        if (!wish.cameras().isEmpty()) {
            parts.add("with " + String.join(" or ", wish.cameras()));
        }
        wish.film().ifPresent(film -> parts.add("film " + film));
        parts.add("worth " + Wording.plain(wish.worth()) + ", " + (wish.repeat() == 1 ? "once"
                : "up to " + wish.repeat() + " sheets"));
        return String.join("; ", parts);
    }

    /**
     * The camera, with the units and meanings of {@link Camera}, {@link Lens}, {@link gloam.gear.Vignetting}
     * and {@link gloam.gear.Frame}.
     *
     * @param film the film in it, if not the trip's
     */
    public record CameraRow(String name, double focalLengthMm, double frameWidthMm, double frameHeightMm,
                            List<Double> fNumbers, OptionalDouble focusM, double transmittance, double spotUm,
                            double filterStops, double mountCornerStops, double changeoverMin,
                            Optional<String> film) {

        static CameraRow of(CarriedCamera carried) {
            Camera camera = carried.camera();
            Lens lens = camera.lens();
            return new CameraRow(camera.name(), lens.focalLengthMm(), camera.frame().widthMm(),
                    camera.frame().heightMm(), lens.fNumbers().stream().map(FNumber::marked).toList(),
                    Finite.of(lens.focusM()),
                    lens.transmittance(), lens.spotUm(), lens.filterStops(),
                    lens.vignetting().cornerStops(), camera.changeover().toSeconds() / 60.0,
                    carried.film().map(FilmStock::name));
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

    /** The hours in which people are up, by the site's clocks. */
    public record AwakeRow(String from, String until) {
    }

    private static double minutes(Duration lasts) {
        return lasts.toSeconds() / 60.0;
    }

    /** The way between two sites, in minutes. */
    public record TravelRow(String from, String to, double travelMin) {

        static TravelRow of(Travel.Leg leg) {
            return new TravelRow(leg.from(), leg.to(), minutes(leg.lasts()));
        }

        String words() {
            return from + " – " + to + " " + Wording.plain(travelMin) + " min";
        }
    }

    /** A digital test frame that looked right: its f-number, ISO and exposure time in seconds. */
    public record PreviewRow(double fNumber, double iso, double exposureS) {

        static PreviewRow of(Preview frame) {
            return new PreviewRow(frame.fNumber().marked(), frame.iso(), frame.exposure().toNanos() * 1e-9);
        }
    }
}
