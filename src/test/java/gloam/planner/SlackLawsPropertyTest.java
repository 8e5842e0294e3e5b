package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.support.SharedEphemeris;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of the slack of every window: on the random trips of the laws of planning. */
@Tag("laws")
class SlackLawsPropertyTest {

    private static final Ephemeris EPHEMERIS = new SharedEphemeris();
    /** Tones are told to a tenth of a stop. */
    private static final double TOLD_STOPS = 0.05;

    /** Each is planned again some ten times. */
    private static final int PLANS = 100;

    private static Stream<Arguments> nights() {
        return PlannedSamples.plans().limit(PLANS).flatMap(plan -> plan.nights().stream()
                .filter(night -> !night.windows().isEmpty())
                .map(night -> Arguments.of(plan.trip(), night)));
    }

    /** The window of a wish narrowed to one exposure, or none where the wish does not allow it. */
    private static Optional<Plan.Window> alone(Trip trip, Site site, Plan.Window window, Instant openAt,
            Instant closeAt) {
        Interval open = new Interval(openAt, closeAt);
        LocalTime from = openAt.atZone(site.zone()).toLocalTime();
        LocalTime to = closeAt.atZone(site.zone()).toLocalTime();
        Limits was = window.wish().limits();
        Wish wish = window.wish();
        Wish narrow = new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                open.lasts(), open.lasts(), List.of(window.fNumber()), wish.worth(), 1, wish.film(),
                new Limits(was.moonAltitudeDeg(), was.moonLitPercent(), was.moonSide(), was.sunDepthDeg(),
                Optional.of(new Limits.TimeOfNight(from, to)), was.twilightMin(), was.twilightPercent(),
                was.arcDeg()));
        Trip one = new Trip(trip.title(), List.of(site), trip.firstNight(), trip.lastNight(),
                List.of(new CarriedCamera(window.camera(), Optional.empty())), window.film(), 1,
                trip.preview(), List.of(narrow), trip.forecast(), trip.begun(), Outings.ANY);
        return new Planner(EPHEMERIS, Trips.stars()).plan(one).nights().stream()
                .flatMap(night -> night.windows().stream()).findFirst()
                .filter(planned -> planned.open().equals(open));
    }

    private static boolean even(Plan.Window window, Instant openAt, Instant closeAt) {
        return window.wish().aim() instanceof Aim.Point
                || Duration.between(openAt, closeAt).toMinutes() % 2 == 0;
    }

    private static void holds(Trip trip, Plan.NightPlan night, Plan.Window window, Instant openAt,
            Instant closeAt) {
        if (even(window, openAt, closeAt)) {
            Plan.Window there = alone(with(trip, night), night.night().site(), window, openAt, closeAt)
                    .orElseThrow(() -> new AssertionError(openAt + " to " + closeAt + " of " + window));
            assertEquals(window.skyToneStops(), there.skyToneStops(),
                    Slack.SAME_TONE_STOPS + TOLD_STOPS, window::toString);
        }
    }

    private static Trip with(Trip trip, Plan.NightPlan night) {
        return new Trip(trip.title(), trip.sites(), night.night().date(), night.night().date(),
                trip.cameras(), trip.film(), trip.sheets(), trip.preview(), trip.wishes(), trip.forecast(),
                trip.begun(), Outings.ANY);
    }

    @ParameterizedTest
    @MethodSource("nights")
    void withinItTheToneStaysAndEveryLimitHolds(Trip trip, Plan.NightPlan night) {
        for (Plan.Window window : night.windows()) {
            Slack slack = window.slack();
            Instant openAt = window.open().start();
            Instant closeAt = window.open().endExclusive();
            assertFalse(slack.openEarliest().isAfter(openAt) || slack.openLatest().isBefore(openAt));
            assertFalse(slack.closeEarliest().isAfter(closeAt) || slack.closeLatest().isBefore(closeAt));
            holds(trip, night, window, slack.openEarliest(), closeAt);
            holds(trip, night, window, slack.openLatest(), closeAt);
            holds(trip, night, window, openAt, slack.closeEarliest());
            holds(trip, night, window, openAt, slack.closeLatest());
        }
    }

    @ParameterizedTest
    @MethodSource("nights")
    void theSheetsBesideItAreLeftTheirTime(Trip trip, Plan.NightPlan night) {
        for (int camera = 0; camera < trip.cameras().size(); camera++) {
            String name = trip.cameras().get(camera).camera().name();
            leftTheirTime(night.windows().stream().filter(window -> window.camera().name().equals(name))
                    .toList(), Duration.ofMinutes(trip.changeoverMin(camera)));
        }
    }

    /** Those of one camera. */
    private static void leftTheirTime(List<Plan.Window> windows, Duration changeover) {
        for (int number = 1; number < windows.size(); number++) {
            Plan.Window before = windows.get(number - 1);
            Plan.Window after = windows.get(number);
            assertFalse(before.slack().closeLatest().plus(changeover).isAfter(after.open().start()),
                    () -> before + " and " + after);
            Instant latest = after.open().start().plus(Duration.ofMinutes(after.slack().late().stream()
                    .filter(late -> late.close().isPresent()).mapToInt(Slack.LateOpening::lateMin).max()
                    .orElse(0)));
            before.slack().late().stream().flatMap(late -> late.close().stream()).forEach(close ->
                    assertFalse(close.at().plus(changeover).isAfter(latest), () -> before + " and " + after));
            assertFalse(before.open().endExclusive().plus(changeover).isAfter(after.slack().openEarliest()));
        }
    }

    @ParameterizedTest
    @MethodSource("nights")
    void openedLateItIsClosedSoThatEveryLimitHolds(Trip trip, Plan.NightPlan night) {
        for (Plan.Window window : night.windows()) {
            assertEquals(Slack.LATE_MIN,
                    window.slack().late().stream().map(Slack.LateOpening::lateMin).toList());
            for (Slack.LateOpening late : window.slack().late()) {
                Instant openAt = window.open().start().plus(Duration.ofMinutes(late.lateMin()));
                late.close().filter(close -> even(window, openAt, close.at())).ifPresent(close -> {
                    Plan.Window there = alone(with(trip, night), night.night().site(), window, openAt,
                            close.at()).orElseThrow(() -> new AssertionError(late + " of " + window));
                    assertEquals(there.skyToneStops(), close.skyToneStops(), TOLD_STOPS);
                });
            }
        }
    }

    /** An opening with ten minutes of slack is easily kept, unless that would cost some of the chance. */
    @Test
    void mostTimesWithSlackAreOfFiveMinutes() {
        List<Boolean> ofFive = new ArrayList<>();
        PlannedSamples.plans().flatMap(plan -> plan.nights().stream())
                .flatMap(night -> night.windows().stream()).forEach(window -> {
                    Slack slack = window.slack();
                    if (Duration.between(slack.openEarliest(), slack.openLatest()).toMinutes()
                            >= Slack.EASY_MIN) {
                        ofFive.add(window.open().start().getEpochSecond() % 300 == 0);
                    }
                });
        long rounded = ofFive.stream().filter(five -> five).count();
        assertTrue(rounded > ofFive.size() / 2, () -> rounded + " of " + ofFive.size());
    }
}
