package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The timetable against brute force over all schedules, and its limits on random cases. */
class TimetablePropertyTest {

    private static final int CASES = 300;
    /** Of sums of floating point numbers. */
    private static final double ROUNDING = 1e-9;

    static IntStream seeds() {
        return IntStream.range(0, CASES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isAsGoodAsTheBestOfAllSchedules(int seed) {
        SmallTimetable trip = SmallTimetable.of(seed);
        Timetable.Choice choice = trip.choice();
        TimetableValue best = trip.bruteForce();
        assertEquals(best.worth(), choice.worth(), ROUNDING);
        assertEquals(choice.worth(), choice.bound(), ROUNDING);
        TimetableValue found = TimetableValue.of(choice);
        assertEquals(0, best.compareTo(found), () -> best + " and " + found);
    }

    /** What a night is worth comes out without looking at what is preferred, as far as it is asked for. */
    @ParameterizedTest
    @MethodSource("seeds")
    void saysWhatANightIsWorth(int seed) {
        SmallTimetable trip = SmallTimetable.of(seed);
        Timetable limits = new Timetable(trip.repeats(), trip.sheets(), trip.perNight(),
                trip.changeoverMin());
        for (List<Offer> offers : trip.offers().get(0)) {
            long gained = Gain.ofWorth(limits.choose(List.of(List.of(offers))).nights().get(0).gained());
            assertEquals(gained, limits.mostWorth(offers, 0));
            assertEquals(gained, limits.mostWorth(offers, gained));
            assertTrue(limits.mostWorth(offers, gained + 1) <= gained);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheLimits(int seed) {
        SmallTimetable trip = SmallTimetable.of(seed);
        Timetable.Choice choice = trip.choice();
        int[] served = new int[trip.repeats().length];
        int before = -1;
        for (int number = 0; number < choice.nights().size(); number++) {
            Timetable.Night night = choice.nights().get(number);
            List<Timetable.Exposed> exposed = night.exposed();
            assertTrue(trip.offers().get(number).get(night.site()).containsAll(exposed.stream().map(one ->
                    Offer.at(one.wish(), one.camera(), one.openMin(), one.closeMin(), one.gain())).toList()));
            assertTrue(exposed.size() <= trip.perNight());
            if (!exposed.isEmpty()) {
                assertTrue(before < 0 || trip.fit(before, choice.nights().get(before).site(), number,
                        night.site()));
                before = number;
            }
            int[] freeMin = new int[trip.changeoverMin().length];
            for (Timetable.Exposed one : exposed) {
                served[one.wish()]++;
                assertTrue(freeMin[one.camera()] <= one.openMin());
                freeMin[one.camera()] = one.closeMin() + trip.changeoverMin()[one.camera()];
            }
            assertEquals(exposed.stream().map(Timetable.Exposed::wish).distinct().count(), exposed.size());
        }
        assertTrue(Arrays.stream(served).sum() <= trip.sheets());
        assertTrue(IntStream.range(0, served.length).allMatch(wish -> served[wish] <= trip.repeats()[wish]));
    }

    @Test
    void someExposeWithTwoCamerasAtOnce() {
        assertTrue(seeds().mapToObj(SmallTimetable::of).flatMap(trip -> trip.choice().nights().stream())
                .filter(night -> IntStream.range(1, night.exposed().size()).anyMatch(number ->
                night.exposed().get(number).openMin() < night.exposed().get(number - 1).closeMin()))
                .count() > CASES / 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void comesOutTheSameTwice(int seed) {
        assertEquals(SmallTimetable.of(seed).choice(), SmallTimetable.of(seed).choice());
    }
}
