package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.Samples;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Spans as sets of instants: the algebra holds instant by instant. */
class IntervalPropertyTest {

    private static final int SECONDS = 60;

    /** Two lists of spans, sorted and without overlaps, with ends on whole seconds of one minute. */
    record Lists(List<Interval> some, List<Interval> others) {
    }

    static Stream<Named<Lists>> lists() {
        return Samples.of(200, random -> new Lists(spans(random), spans(random)));
    }

    private static List<Interval> spans(RandomGenerator random) {
        TreeSet<Integer> ends = new TreeSet<>();
        int count = 2 * random.nextInt(0, 6);
        while (ends.size() < count) {
            ends.add(random.nextInt(0, SECONDS));
        }
        List<Integer> sorted = new ArrayList<>(ends);
        List<Interval> spans = new ArrayList<>();
        for (int i = 0; i < count; i += 2) {
            spans.add(new Interval(Instant.ofEpochSecond(sorted.get(i)),
                    Instant.ofEpochSecond(sorted.get(i + 1))));
        }
        return spans;
    }

    @ParameterizedTest
    @MethodSource("lists")
    void anInstantIsInTheCommonPartIfItIsInBoth(Lists lists) {
        List<Interval> common = Interval.intersect(lists.some, lists.others);
        for (int second = 0; second < SECONDS; second++) {
            assertEquals(in(lists.some, second) && in(lists.others, second), in(common, second),
                    "second " + second);
        }
        assertEquals(common, Interval.intersect(lists.others, lists.some));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void anInstantIsLeftIfItIsInNoHole(Lists lists) {
        Interval whole = new Interval(Instant.ofEpochSecond(10), Instant.ofEpochSecond(50));
        List<Interval> left = whole.without(lists.some);
        for (int second = 0; second < SECONDS; second++) {
            boolean inWhole = second >= 10 && second < 50;
            assertEquals(inWhole && !in(lists.some, second), in(left, second), "second " + second);
        }
        List<Interval> cut = Interval.intersect(List.of(whole), lists.some);
        Duration sum = Interval.total(left).plus(Interval.total(cut));
        assertEquals(whole.lasts(), sum);
    }

    private static boolean in(List<Interval> spans, int second) {
        return spans.stream().anyMatch(span -> span.contains(Instant.ofEpochSecond(second)));
    }
}
