package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.units.Interval;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {

    private static final String PLAN = """
            {"title": "Two nights", "nights": [
              {"site": "Stilvlakte", "darkness": [], "windows": [
                {"sheet": 3, "wish": "Southern wheel", "film": "Slow pan",
                 "openAt": "2027-06-01T19:36:00.0+02:00",
                 "closeAt": "2027-06-01T22:21:00.0+02:00",
                 "azimuthDeg": 180, "altitudeDeg": 41.5, "fNumber": 11, "misses": []}]}]}
            """;

    @TempDir
    Path folder;

    @Test
    void aSavedSheetIsReadAsItWasPlanned() {
        assertEquals(new PlanFile.PlannedSheet(3, "Stilvlakte", "Southern wheel", Optional.empty(),
                "Slow pan",
                new Interval(Instant.parse("2027-06-01T17:36:00Z"), Instant.parse("2027-06-01T20:21:00Z")),
                Direction.ofDegrees(180, 41.5), FNumber.marked(11), OptionalDouble.empty(), List.of(
                new PlanFile.PlannedOpening(new Interval(Instant.parse("2027-06-01T17:36:00Z"),
                Instant.parse("2027-06-01T20:21:00Z")), Direction.ofDegrees(180, 41.5), FNumber.marked(11)))),
                sheet(PLAN, 3));
    }

    @Test
    void everySheetOfAPlanThatGloamWroteComesBack() {
        Path plan = Path.of("src/test/resources/golden/plan-json/out");
        for (int sheet = 1; sheet <= 3; sheet++) {
            assertEquals(sheet, PlanFile.sheet(Input.of(plan.toString()), sheet).sheet());
        }
        assertEquals(List.of(plan + " has no sheet 9; it has 1, 2, 3"),
                Refusals.of(folder, () -> PlanFile.sheet(Input.of(plan.toString()), 9)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "sheet": 3             | "sheet": "3"           | 3:15 nights[0].windows[0].sheet: expected a whole number, \
            found "3"
            "sheet": 3             | "sheet": 3.5           | 3:15 nights[0].windows[0].sheet: expected a whole number, \
            found "3.5"
            "sheet": 3             | "sheet": 0             | 3:5 nights[0].windows[0]: sheet 0 is out of range; give 1 … 500
            "sheet": 3,            |                        | 3:5 nights[0].windows[0].sheet: is missing. Add the key sheet.
            "wish": "Southern      | "wosh": "Southern      | 3:5 nights[0].windows[0].wish: is missing. Add the key wish.
            "azimuthDeg": 180      | "azimuthDeg": 480      | 3:5 nights[0].windows[0]: azimuth 480 deg is out of range; \
            give 0 … 360 deg
            "azimuthDeg": 180      | "azimuthDeg": null     | 6:20 nights[0].windows[0].azimuthDeg: expected a number, \
            found nothing. Write a value.
            "azimuthDeg": 180      | "azimuthDeg": [180]    | 6:20 nights[0].windows[0].azimuthDeg: expected a number, \
            found a list
            "fNumber": 11          | "fNumber": 11, "fNumber": 8 | 6:70: not JSON: Duplicate Object property "fNumber"
            2027-06-01T19:36:00.0  | 2027-06-31T19:36:00.0  | 4:16 nights[0].windows[0].openAt: expected a moment such as \
            2027-02-08T21:35:00+01:00, found "2027-06-31T19:36:00.0+02:00"
            2027-06-01T22:21:00.0  | 2027-06-01T19:21:00.0  | 3:5 nights[0].windows[0]: does not close after it opens. \
            Save the plan anew.
            "windows": [           | "windows": [null,      | 2:54 nights[0].windows[0]: expected a section of keys, \
            found nothing. Write a value.
            "nights": [            | "nights": 5, "more": [ | 1:35 nights: expected a list, found "5"
            """)
    void whatIsWrongIsToldAtItsPlace(String right, String wrong, String problem) {
        assertEquals(List.of("plan.json:" + problem), Refusals.of(folder,
                () -> sheet(PLAN.replace(right, wrong == null ? "" : wrong), 3)));
    }

    @Test
    void monstersAreToldInALine() {
        assertEquals(List.of("plan.json:1:1: not JSON: Number value length (2000) exceeds the maximum "
                + "allowed (1000, from `StreamReadConstraints.getMaxNumberLength()`)"),
                Refusals.of(folder, () -> sheet("{\"nights\": [" + "9".repeat(2000) + "]}", 3)));
        assertEquals(List.of("plan.json:1:1 nights: is missing. Add the key nights."),
                Refusals.of(folder, () -> sheet("{} and more", 3)));
    }

    @Test
    void nothingMayFollow() {
        assertEquals(List.of("plan.json:7:1: a second value begins here. Keep one."),
                Refusals.of(folder, () -> sheet(PLAN + "{}", 3)));
        assertEquals(List.of("plan.json:1:1: the file is empty"), Refusals.of(folder, () -> sheet(" ", 3)));
    }

    private PlanFile.PlannedSheet sheet(String text, int sheet) {
        return PlanFile.sheet(Input.of(Refusals.file(folder, "plan.json", text).toString()), sheet);
    }
}
