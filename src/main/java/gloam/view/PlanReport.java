package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.SheetPictures;
import gloam.answer.Timetable;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.ephemeris.StarCatalogue;
import gloam.film.FilmStock;
import gloam.gear.Site;
import gloam.planner.CloudCover;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.units.Finite;
import gloam.units.Interval;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The timetable of a trip.
 *
 * @param generatedAt when the report was made
 * @param identity    identity of the trip, the same in all its timetables
 * @param title       the trip's title
 * @param cameras     names of the cameras carried
 * @param nights      the nights in order
 * @param sheets      sheets carried
 * @param sheetsUsed  sheets that the timetable exposes
 * @param sheetsLeft  sheets that are left over
 * @param unserved    wishes that are not served as often as wanted, each once
 * @param cancelled   windows of an earlier timetable that this one cancels
 * @param cloudedOut  for wishes served, the best window that is left on another night
 * @param ifClears    of a single evening, what is left if the sky clears only later
 * @param cautions    what to mind in the field
 * @param fittedFilms the films that are fitted to a journal
 * @param pictures    computed pictures of the sheets, if asked for
 */
public record PlanReport(OffsetDateTime generatedAt, String identity, String title, List<String> cameras,
                         List<PlannedNightRow> nights, int sheets, int sheetsUsed, int sheetsLeft,
                         List<Unserved> unserved, List<CancelledRow> cancelled,
                         List<SecondChoiceRow> cloudedOut, List<IfClearsRow> ifClears, List<String> cautions,
                         List<Timetable.Fitted> fittedFilms,
                         @JsonIgnore Optional<SheetPictures> pictures) implements Report {

    /** Reports a timetable. */
    public static PlanReport of(Timetable timetable, Instant now) {
        Plan plan = timetable.plan();
        SiteClock clock = new SiteClock(plan.trip().sites().get(0).zone());
        return new PlanReport(clock.at(now), timetable.identity().toString(), plan.trip().title(),
                plan.trip().cameras().stream().map(one -> one.camera().name()).toList(),
                timetable.nights().stream().map(PlannedNightRow::of).toList(), plan.trip().sheets(),
                plan.sheetsUsed(), plan.sheetsLeft(), Unserved.of(plan),
                timetable.cancelled().stream().map(window -> CancelledRow.of(window, clock)).toList(),
                plan.otherwise().cloudedOut().stream().map(SecondChoiceRow::of).toList(),
                plan.otherwise().ifClears().stream().map(IfClearsRow::of).toList(),
                Stream.concat(plan.cautions().stream().map(NightWords::of), Cautions.ALL.stream()).toList(),
                timetable.fitted(), Optional.empty());
    }

    /** The same report with pictures of its sheets. */
    public PlanReport with(SheetPictures drawn) {
        return new PlanReport(generatedAt, identity, title, cameras, nights, sheets, sheetsUsed, sheetsLeft,
                unserved, cancelled, cloudedOut, ifClears, cautions, fittedFilms, Optional.of(drawn));
    }

    /** What a page needs to follow the clock, as JSON: the nights with exposures alone, without their sky. */
    String asData() {
        StringBuilder json = new StringBuilder();
        try {
            new JsonRenderer().render(new PlanReport(generatedAt, identity, title, cameras, nights.stream()
                    .filter(night -> !night.windows.isEmpty()).map(PlannedNightRow::exposures).toList(),
                    sheets, sheetsUsed, sheetsLeft, List.of(), List.of(), List.of(), List.of(), List.of(),
                    List.of(), Optional.empty()), json);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return json.toString();
    }

    @Override
    public Document document() {
        return PlanText.document(this);
    }

    @Override
    public boolean empty() {
        return sheetsUsed == 0;
    }

    /** A name of a camera, said where there are several. */
    Optional<String> camera(String name) {
        return Optional.of(name).filter(said -> cameras.size() > 1);
    }

    /** Where else a wish can be served, where it can. */
    Optional<SecondChoiceRow> secondChoice(String wish) {
        return cloudedOut.stream().filter(second -> second.wish().equals(wish)).findFirst();
    }

    /**
     * One night.
     *
     * @param night    date of the evening
     * @param site     name of the site
     * @param latitudeDeg  latitude of the site, north positive
     * @param longitudeDeg longitude of the site, east positive
     * @param zone     time zone of its times
     * @param darkness spans with the Sun below -18°
     * @param moonUp   spans with the Moon above the horizon while the Sun is below
     * @param windows  exposures in order of time
     * @param refused  wishes not served
     * @param nothing  why the night has no exposure, where it has none
     * @param notes    changes of the clocks, and warnings about the weather
     * @param course   the sky from before sunset to after sunrise
     * @param forecast the cloud forecast over that time, as far as it reaches
     */
    public record PlannedNightRow(LocalDate night, String site, double latitudeDeg, double longitudeDeg,
            String zone, List<Span> darkness, List<Span> moonUp, List<WindowRow> windows,
            List<RefusalRow> refused, Optional<String> nothing, List<String> notes,
            List<SkyRow> course, List<CloudRow> forecast) {

        static PlannedNightRow of(Timetable.Night announced) {
            Plan.NightPlan plan = announced.plan();
            Night night = plan.night();
            Site site = night.site();
            SiteClock clock = new SiteClock(site.zone());
            ReasonWords reasons = new ReasonWords(night);
            return new PlannedNightRow(night.date(), site.name(), site.latitude().degrees(),
                    site.longitude().degrees(), site.zone().getId(), spans(night.darkness(), clock),
                    spans(Interval.intersect(night.sunDown(), night.moonUp()), clock),
                    announced.windows().stream().map(window -> WindowRow.of(window, night, clock))
                    .toList(),
                    plan.refused().stream().map(refusal -> new RefusalRow(refusal.wish().name(),
                    reasons.of(refusal))).toList(), NothingWords.of(plan), plan.notes().stream()
                            .map(note -> NightWords.of(note, NightTimes.of(night))).toList(),
                    plan.course().stream().map(sky -> SkyRow.of(sky, clock)).toList(),
                    CloudRow.of(plan.course(), clock));
        }

        private PlannedNightRow exposures() {
            return new PlannedNightRow(night, site, latitudeDeg, longitudeDeg, zone, List.of(), List.of(),
                    windows, List.of(), nothing, List.of(), List.of(), List.of());
        }

        /** The times of the night in words. */
        NightTimes times() {
            return new NightTimes(night, ZoneId.of(zone));
        }

        private static List<Span> spans(List<Interval> intervals, SiteClock clock) {
            return intervals.stream()
                    .map(span -> new Span(clock.at(span.start()), clock.at(span.endExclusive()))).toList();
        }
    }

    /** The sky at an instant, with the meanings of {@link Plan.SkySample}. */
    public record SkyRow(OffsetDateTime at, double sunAirlessAltitudeDeg, double moonAltitudeDeg,
                         double zenithMagArcsec2) {

        static SkyRow of(Plan.SkySample sky, SiteClock clock) {
            return new SkyRow(clock.at(sky.at()), sky.sunAltitude().degrees(),
                    sky.moonAltitude().degrees(), sky.zenith().magArcsec2());
        }
    }

    /** A span of time. */
    public record Span(OffsetDateTime from, OffsetDateTime to) {
    }

    /**
     * One exposure on one sheet, with the meanings of {@link Plan.Window}.
     *
     * @param identity the same in every timetable of the trip
     * @param sequence number that grows with each change to the window
     * @param prepareAt  when to begin to set up, never before its camera is free
     * @param openAt   when the shutter first opens
     * @param closeAt  when it closes for the last time
     * @param openings each time that it is open; the figures are those of the first, the tone that of all
     * @param arcDeg   how far the sky turns while the shutter is open
     * @param mustRecord bodies and named stars that the wish wants recorded
     * @param sky      the part of the reason that says under which sky it stands
     * @param slack    how exactly its times are to be kept
     */
    public record WindowRow(int sheet, String identity, int sequence, String wish, String camera,
                            String film, int fittedToSheets, OffsetDateTime prepareAt,
                            OffsetDateTime openAt, OffsetDateTime closeAt,
                            double azimuthDeg, double altitudeDeg, double rollDeg, double fNumber,
                            List<SheetOpeningRow> openings, double meteredS, double correctedS,
                            double skyToneStops, double skyToneSpreadStops, OptionalDouble trailLimitMag,
                            int framedStars, double catalogueToMag, int recordedStars,
                            int recordedStarsSpread, int fainterStars, double trailLengthMm,
                            double trailDirectionDeg, double arcDeg, List<String> mustRecord,
                            MoonRow moon, Optional<CloudCover> cloud, double score, List<String> misses,
                            String reason, @JsonIgnore String sky, SlackRow slack) {

        static WindowRow of(Timetable.Announced announced, Night night, SiteClock clock) {
            Plan.Window window = announced.window();
            FormerPlan.Event event = announced.event();
            Direction aim = window.aim();
            FilmStock film = window.film();
            return new WindowRow(window.sheet(), event.identity().toString(), event.sequence(),
                    window.wish().name(), window.camera().name(), film.name(), film.fittedToSheets(),
                    clock.at(announced.prepareAt()),
                    clock.at(window.whole().start()), clock.at(window.whole().endExclusive()),
                    aim.azimuth().degrees(), aim.altitude().degrees(), window.wish().aim().roll().degrees(),
                    window.fNumber().marked(), SheetOpeningRow.of(window, clock), window.meteredS(),
                    window.correctedS(), window.skyToneStops(), window.skyToneSpreadStops(),
                    Finite.of(window.trailLimitMag()), window.stars().crossing(), StarCatalogue.FAINTEST_MAG,
                    window.stars().recorded(), window.stars().spread(), window.stars().fainter(),
                    window.trailLengthMm(), window.trailDirection().degrees(),
                    window.turnDeg(), window.wish().mustRecord().stream().map(WishRow::name).toList(),
                    MoonRow.of(window.open().middle(), window.moon(), clock), window.cloud(),
                    window.score(), WindowWords.misses(window.misses()), WindowWords.reason(window, night),
                    WindowWords.sky(window, night), SlackRow.of(window, clock));
        }
    }

    /** A cancelled window, with the meanings of {@link WindowRow}. */
    public record CancelledRow(String identity, int sequence, String wish, String site, OffsetDateTime openAt,
                               OffsetDateTime closeAt) {

        static CancelledRow of(FormerPlan.Cancelled window, SiteClock clock) {
            return new CancelledRow(window.event().identity().toString(), window.event().sequence(),
                    window.wish(),
                    window.site(), clock.at(window.open().start()), clock.at(window.open().endExclusive()));
        }
    }

    /** A wish not served on a night. */
    public record RefusalRow(String wish, String reason) {
    }
}
