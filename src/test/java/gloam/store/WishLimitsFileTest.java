package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.Aim;
import gloam.planner.Between;
import gloam.planner.Limits;
import gloam.planner.Wish;
import gloam.units.Angle;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What narrows a wish in a trip file, and that no section takes a key that it does not know. */
class WishLimitsFileTest {

    private static final String TRIP = """
            sites: [{name: A, latitude-deg: 1, longitude-deg: 2, height-m: 3, zone: UTC}]
            nights: {from: 2027-02-01, to: 2027-02-02}
            camera: {focal-length-mm: 120, frame-mm: {width: 80, height: 70}, f-numbers: [11],
                     t-stop: {f-number: 2, t-number: 2.2}}
            film: {name: own, iso: 100, kind: negative, reciprocity: {model: power, exponent: 1.2},
                   tone: {density-min: 0.1, density-max: 2, density-mid: 0.7, gamma: 1}}
            sheets: 1
            preview: {f-number: 2.8, iso: 6400, exposure-s: 30}
            wishes:
              - {name: u, pole: {roll-deg: 1}, sky: dark}
              - {name: v, follow: {star: {ra-deg: 1, dec-deg: 2}}, trail-mm: {least: 1, most: 2}}
              - name: w
                point: {azimuth-deg: 0, altitude-deg: 40}
                exposure-min: {shortest: 30}
                moon: {altitude-deg: {least: 10, most: 20}, lit-percent: {least: 30}, side: left}
                sun-depth-deg: {most: 12}
                time-of-night: {from: "23:30", to: "01:15"}
                twilight-min: {least: 5, most: 6}
                twilight-percent: {least: 7, most: 8}
                arc-deg: {least: 9, most: 11}
            """;

    @TempDir
    private Path folder;

    private List<Wish> wishes(String text) {
        return TripFile.read(Refusals.file(folder, "trip.yaml", text)).trip().wishes();
    }

    private List<String> problems(String text) {
        Path file = Refusals.file(folder, "trip.yaml", text);
        return Refusals.of(folder, () -> TripFile.read(file));
    }

    private static Between between(double least, double most) {
        return new Between(OptionalDouble.of(least), OptionalDouble.of(most));
    }

    private static Between most(double most) {
        return new Between(OptionalDouble.empty(), OptionalDouble.of(most));
    }

    private static Between least(double least) {
        return new Between(OptionalDouble.of(least), OptionalDouble.empty());
    }

    @Test
    void everyLimitIsItsOwn() {
        assertEquals(new Limits(between(10, 20), least(30), Optional.of(Limits.Side.LEFT), most(12),
                Optional.of(new Limits.TimeOfNight(LocalTime.of(23, 30), LocalTime.of(1, 15))), between(5, 6),
                between(7, 8), between(9, 11)), wishes(TRIP).get(2).limits());
        assertEquals(Limits.NONE, wishes(TRIP).get(0).limits());
        assertEquals(new Aim.Pole(Angle.ofDegrees(1)), wishes(TRIP).get(0).aim());
    }

    @Test
    void boundsMayBeEqualButNotCrossed() {
        assertEquals(between(20, 20), wishes(TRIP.replace("least: 10, most: 20", "least: 20, most: 20"))
                .get(2).limits()
                .moonAltitudeDeg());
        assertEquals(1, problems(TRIP.replace("least: 10, most: 20", "least: 20.1, most: 20")).size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"altitude-deg: {least: 10 | altitude-deg: {least: -91",
        "lit-percent: {least: 30 | lit-percent: {least: 101",
                "sun-depth-deg: {most: 12 | sun-depth-deg: {most: 2.9",
        "twilight-min: {least: 5, most: 6 | twilight-min: {least: 5, most: 1441",
        "twilight-percent: {least: 7 | twilight-percent: {least: -1",
                "arc-deg: {least: 9 | arc-deg: {least: 0.24",
        "side: left | side: above", "from: \"23:30\" | from: \"24:30\"", "roll-deg: 1 | roll-deg: 181"})
    void whatIsOutOfRangeIsRefusedAtItsPlace(String sound, String wrong) {
        assertTrue(TRIP.contains(sound), sound);
        List<String> problems = problems(TRIP.replace(sound, wrong));
        assertEquals(1, problems.size(), problems::toString);
        int line = TRIP.substring(0, TRIP.indexOf(sound)).split("\n", -1).length;
        assertTrue(problems.get(0).startsWith("trip.yaml:" + line + ":"), problems::toString);
    }

    static Stream<Integer> everySection() {
        return Pattern.compile("\\{").matcher(TRIP).results().map(brace -> brace.end());
    }

    @ParameterizedTest
    @MethodSource("everySection")
    void anUnknownKeyIsRefusedInEverySection(int at) {
        List<String> problems = problems(TRIP.substring(0, at) + "zzz: 1, " + TRIP.substring(at));
        assertTrue(problems.stream().anyMatch(problem -> problem.contains("zzz")), problems::toString);
    }

    static Stream<String> everyLaw() {
        return Stream.of("model: none", "model: power, exponent: 1.2, from-s: 1",
                "model: schwarzschild, p: 0.8",
                "model: added-power, factor: 0.1, exponent: 1.3",
                        "model: catenary, factor: 0.1, exponent: 1.3",
                "model: table, points: [{metered-s: 1, corrected-s: 1}, {metered-s: 10, corrected-s: 20}]");
    }

    @ParameterizedTest
    @MethodSource("everyLaw")
    void anUnknownKeyIsRefusedInEveryLaw(String law) {
        String text = TRIP.replace("model: power, exponent: 1.2", "zzz: 1, " + law);
        assertTrue(problems(text).stream().anyMatch(problem -> problem.contains("zzz")), () -> problems(text)
                .toString());
        Matcher point = Pattern.compile("metered-s: 1,").matcher(law);
        if (point.find()) {
            String inside = TRIP.replace("model: power, exponent: 1.2",
                    law.replace("metered-s: 1,", "zzz: 1, metered-s: 1,"));
            assertTrue(problems(inside).stream().anyMatch(problem -> problem.contains("zzz")));
        }
    }
}
