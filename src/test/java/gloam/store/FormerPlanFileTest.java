package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.planner.FormerPlan;
import gloam.units.Interval;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read of a saved plan of a trip that is planned again. */
class FormerPlanFileTest {

    private static final UUID TRIP = new UUID(1, 2);
    private static final UUID WINDOW = new UUID(3, 4);
    private static final UUID GONE = new UUID(5, 6);
    private static final String SAVED = """
            {"schema": "gloam/2", "identity": "%s", "nights": [{"site": "Hill", "more": 1, "windows": [
              {"identity": "%s", "sequence": 7, "wish": "wheel", "openAt": "2027-02-08T20:00:00.0+01:00",
               "closeAt": "2027-02-08T21:00:00.0+01:00", "sheet": 3, "film": "own",
               "prepareAt": "2027-02-08T19:40:00.0+01:00",
               "azimuthDeg": 10.5, "altitudeDeg": 40.25, "rollDeg": -5, "fNumber": 11, "score": 2}]}],
             "cancelled": [{"identity": "%s", "sequence": 8, "wish": "dusk", "site": "Shore",
               "openAt": "2027-02-09T20:00:00.0+01:00", "closeAt": "2027-02-09T21:00:00.0+01:00"}]}
            """.formatted(TRIP, WINDOW, GONE);

    @TempDir
    private Path folder;

    private FormerPlan read(String text) {
        return FormerPlanFile.read(Input.of(Refusals.file(folder, "plan.json", text).toString()));
    }

    @Test
    void whatACalendarKnowsIsRead() {
        FormerPlan plan = read(SAVED);
        assertEquals(TRIP, plan.identity());
        assertEquals(List.of(new FormerPlan.Window(new FormerPlan.Event(WINDOW, 7), "wheel",
                new FormerPlan.Details(3, "Hill", "own", Instant.parse("2027-02-08T18:40:00Z"),
                new Interval(Instant.parse("2027-02-08T19:00:00Z"), Instant.parse("2027-02-08T20:00:00Z")),
                        10.5, 40.25, -5,
                11, Optional.empty()))), plan.windows());
        assertEquals(List.of(new FormerPlan.Cancelled(new FormerPlan.Event(GONE, 8), "dusk", "Shore",
                new Interval(Instant.parse("2027-02-09T19:00:00Z"), Instant.parse("2027-02-09T20:00:00Z")))),
                        plan.cancelled());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"\"sequence\": 7 | \"sequence\": -1",
            "\"sequence\": 8 | \"sequence\": 2000000001",
        "\"sheet\": 3 | \"sheet\": 0", "\"azimuthDeg\": 10.5 | \"azimuthDeg\": 361",
                "\"altitudeDeg\": 40.25 | \"altitudeDeg\": 91",
        "\"rollDeg\": -5 | \"rollDeg\": -181", "\"fNumber\": 11 | \"fNumber\": 0",
        "2027-02-08T21:00:00.0 | 2027-02-08T20:00:00.0", "2027-02-09T21:00:00.0 | 2027-02-09T19:00:00.0"})
    void whatCannotBeIsRefused(String sound, String wrong) {
        assertTrue(SAVED.contains(sound), sound);
        assertEquals(1, Refusals.of(folder, () -> read(SAVED.replace(sound, wrong))).size());
    }
}
