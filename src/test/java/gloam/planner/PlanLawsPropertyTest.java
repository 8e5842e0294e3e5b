package gloam.planner;

import static gloam.planner.PlannedSamples.ROUNDING;
import static gloam.planner.PlannedSamples.TRIPS;
import static gloam.planner.PlannedSamples.each;
import static gloam.planner.PlannedSamples.plan;
import static gloam.planner.PlannedSamples.samples;
import static gloam.planner.PlannedSamples.with;
import static gloam.planner.PlannedSamples.worth;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.FNumber;
import gloam.gear.Site;
import gloam.planner.PlannedSamples.Sample;
import gloam.support.Places;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws that hold of every plan, on random small trips. */
@Tag("laws")
class PlanLawsPropertyTest {

    /** Timetables add light up by the minute, figures by the second. */
    private static final double MINUTES_STOPS = 0.03;
    private static final double POLYLINES = 0.005;
    /** An aim is missed by so much at most: the guide, "planning a trip". */
    private static final double MOST_MISS_STOPS = 1.5;

    @Test
    void moreFreedomNeverHurts() {
        each(PlanLawsPropertyTest::freedomDoesNotHurt);
    }

    private static void freedomDoesNotHurt(Sample sample) {
        Trip freer = freer(sample.trip(), new Random(sample.seed()));
        double worth = worth(freer);
        assertTrue(worth >= worth(sample.plan()) - ROUNDING,
                () -> worth(sample.plan()) + " of " + sample.trip() + " and " + worth + " of " + freer);
    }

    private static Trip freer(Trip trip, RandomGenerator random) {
        int number = random.nextInt(trip.wishes().size());
        Wish wish = trip.wishes().get(number);
        return switch (random.nextInt(13)) {
            case 0 -> with(trip, trip.sites(), trip.firstNight().minusDays(1), trip.lastNight(),
                    trip.sheets(), trip.wishes());
            case 1 -> with(trip, trip.sites(), trip.firstNight(), trip.lastNight().plusDays(1), trip.sheets(),
                    trip.wishes());
            case 2 -> with(trip, Stream.concat(Stream.of(Places.MID_SOUTH, Places.MID_NORTH),
                    trip.sites().stream()).distinct().toList(), trip.firstNight(),
                    trip.lastNight(), trip.sheets(), trip.wishes());
            case 3 -> with(trip, trip.sites(), trip.firstNight(), trip.lastNight(), trip.sheets() + 1,
                    trip.wishes());
            case 4 -> wishing(trip, number, wish.through(List.of()));
            case 5 -> wishing(trip, number,
                    lasting(wish, wish.shortest(), wish.longest().plusMinutes(5 + random.nextInt(90))));
            case 6 -> wishing(trip, number, lasting(wish, wish.shortest().dividedBy(2), wish.longest()));
            case 7 -> wishing(trip, number, wish.tone() instanceof Wish.Tone.AtMost most
                    ? wish.toned(new Wish.Tone.AtMost(most.stops() + random.nextInt(3) / 2.0))
                    : wish.tone() instanceof Wish.Tone.Near near
                    ? wish.toned(new Wish.Tone.Near(near.stops())) : wish);
            case 8 -> wishing(trip, number, limited(wish, wish.limits().moonFrame().map(Limits.NONE::with)
                    .orElse(Limits.NONE)));
            case 10 -> wishing(trip, number, wish.aim() instanceof Aim.Follow follow ? RandomTrips.aimed(wish,
                    new Aim.Follow(follow.target(), follow.levelWithin(), Between.ANY, Optional.empty(),
                            follow.roll())) : wish);
            case 9 -> new Trip(trip.title(), trip.sites(), trip.firstNight(), trip.lastNight(),
                    trip.cameras(), trip.film(), trip.sheets(), trip.preview(), trip.wishes(),
                    trip.forecast(), trip.begun(), Outings.ANY);
            case 11 -> trip.cameras().size() > 1 ? trip : new Trip(trip.title(), trip.sites(),
                    trip.firstNight(), trip.lastNight(), List.of(trip.cameras().get(0),
                    new CarriedCamera(RandomTrips.SECOND, Optional.empty())), trip.film(), trip.sheets(),
                    trip.preview(), trip.wishes(), trip.forecast(), trip.begun(), trip.outings());
            default -> wishing(trip, number, wish.records() instanceof Wish.Records.AtLeast least
                    && least.trails() > 1 ? wish.recording(new Wish.Records.AtLeast(least.trails() - 1))
                    : wish.mustRecord().size() > 1
                    ? wish.recording(new Wish.Records.These(wish.mustRecord().subList(0, 1)))
                    : wish.drawing(new TrailLength(OptionalDouble.empty(), OptionalDouble.empty())));
        };
    }

    private static Trip wishing(Trip trip, int number, Wish wish) {
        List<Wish> wishes = new ArrayList<>(trip.wishes());
        wishes.set(number, wish);
        return with(trip, trip.sites(), trip.firstNight(), trip.lastNight(), trip.sheets(), wishes);
    }

    private static Wish lasting(Wish wish, Duration shortest, Duration longest) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                shortest, longest, wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), wish.limits());
    }

    private static Wish limited(Wish wish, Limits limits) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(),
                wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), limits);
    }

    @Test
    void narrowingToThePlansOwnChoiceChangesNothing() {
        each(PlanLawsPropertyTest::narrowingChangesNothing);
    }

    private static void narrowingChangesNothing(Sample sample) {
        for (Plan.NightPlan night : sample.plan().nights()) {
            for (Plan.Window window : night.windows()) {
                Trip narrow = with(sample.trip(), List.of(night.night().site()), night.night().date(),
                        night.night().date(), 1, List.of(narrowed(window, night.night().site())));
                assertEquals(window.score(), worth(narrow), ROUNDING, () -> window + " of " + sample.trip());
            }
        }
    }

    private static Wish narrowed(Plan.Window window, Site site) {
        Limits was = window.wish().limits();
        LocalTime from = window.open().start().atZone(site.zone()).toLocalTime();
        LocalTime to = window.open().endExclusive().atZone(site.zone()).toLocalTime();
        Limits limits = new Limits(was.moonAltitudeDeg(), was.moonLitPercent(), was.moonSide(),
                was.sunDepthDeg(),
                Optional.of(new Limits.TimeOfNight(from, to)), was.twilightMin(), was.twilightPercent(),
                was.arcDeg(), was.sites(), List.of(window.camera().name()), was.moonFrame());
        return lasting(limited(window.wish().through(List.of(window.fNumber())), limits),
                window.open().lasts(), window.open().lasts());
    }

    @Test
    void orderNeverMatters() {
        each(PlanLawsPropertyTest::orderDoesNotMatter);
    }

    private static void orderDoesNotMatter(Sample sample) {
        Random random = new Random(sample.seed());
        List<Site> sites = new ArrayList<>(sample.trip().sites());
        Collections.shuffle(sites, random);
        List<Wish> wishes = new ArrayList<>(sample.trip().wishes().stream().map(wish -> {
            List<FNumber> fNumbers = new ArrayList<>(wish.fNumbers());
            Collections.shuffle(fNumbers, random);
            return wish.through(fNumbers);
        }).toList());
        Collections.shuffle(wishes, random);
        List<CarriedCamera> cameras = new ArrayList<>(sample.trip().cameras());
        Collections.shuffle(cameras, random);
        Trip was = sample.trip();
        Trip shuffled = new Trip(was.title(), sites, was.firstNight(), was.lastNight(), cameras, was.film(),
                was.sheets(), was.preview(), wishes, was.forecast(), was.begun(), was.outings());
        assertEquals(worth(sample.plan()), worth(shuffled), ROUNDING, sample.trip()::toString);
    }

    /** By how many stops a tone is over its limit, or further from its aim than the guide lets it be. */
    private static double overStops(Wish.Tone wanted, double stops) {
        if (wanted instanceof Wish.Tone.Near near) {
            return Math.abs(stops - near.stops()) - Math.min(MOST_MISS_STOPS, near.withinStops());
        }
        return wanted instanceof Wish.Tone.AtMost most ? stops - most.stops() : 0;
    }

    @Test
    void noWindowBreaksALimit() {
        each(PlanLawsPropertyTest::limitsAreKept);
    }

    private static void limitsAreKept(Sample sample) {
        sample.plan().nights().stream().flatMap(night -> night.windows().stream()).forEach(window -> {
            Wish wish = window.wish();
            assertTrue(overStops(wish.tone(), window.skyToneStops()) <= MINUTES_STOPS, () -> window + "");
            assertTrue(!(wish.records() instanceof Wish.Records.AtLeast least)
                    || window.stars().recorded() >= least.trails(), () -> window + "");
            assertTrue(window.trailLengthMm() >= wish.trail().leastMm().orElse(0) * (1 - POLYLINES),
                    () -> window + "");
            assertTrue(window.trailLengthMm() <= wish.trail().mostMm().orElse(1e9) * (1 + POLYLINES),
                    () -> window + "");
            assertTrue(window.open().lasts().compareTo(wish.shortest()) >= 0
                    && window.open().lasts().compareTo(wish.longest()) <= 0, () -> window + "");
            assertTrue(window.score() > 0 && window.score() <= wish.worth() + ROUNDING, () -> window + "");
            assertTrue(window.misses().stream().noneMatch(miss -> miss instanceof Miss.TooFaint),
                    () -> window + "");
        });
    }

    /** A camera exposes one sheet at a time, with its changeover between. */
    @Test
    void noCameraOverlapsItself() {
        each(PlanLawsPropertyTest::noCameraOverlaps);
    }

    private static void noCameraOverlaps(Sample sample) {
        for (Plan.NightPlan night : sample.plan().nights()) {
            for (CarriedCamera carried : sample.trip().cameras()) {
                List<Plan.Window> own = night.windows().stream()
                        .filter(window -> window.camera().equals(carried.camera())).toList();
                for (int number = 1; number < own.size(); number++) {
                    assertFalse(own.get(number - 1).whole().endExclusive()
                            .plus(carried.camera().changeover()).isAfter(own.get(number).open().start()),
                            night::toString);
                }
            }
        }
    }

    @Test
    void someTripsExposeWithTwoCamerasAtOnce() {
        long count = samples().stream().flatMap(sample -> sample.plan().nights().stream())
                .filter(night -> IntStream.range(1, night.windows().size()).anyMatch(number ->
                night.windows().get(number).open().start().isBefore(night.windows().get(number - 1).open()
                .endExclusive()))).count();
        assertTrue(count > TRIPS / 250, () -> count + " nights");
    }

    @Test
    void theseTripsAreNotEmpty() {
        assertTrue(samples().stream().filter(sample -> sample.plan().sheetsUsed() > 0).count() > TRIPS / 2);
        assertTrue(samples().stream().filter(sample -> sample.plan().sheetsUsed() > 1).count() > TRIPS / 5);
    }
}
