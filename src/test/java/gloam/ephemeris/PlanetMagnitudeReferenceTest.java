package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.PlanetMagnitude.View;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanetMagnitudeReferenceTest {

    static Stream<Row> rows() {
        return ReferenceTable.read("mallama-hilton-2018/rows.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void magnitudesOfTheAuthors(Row row) {
        View view = new View(row.number("from_sun_au"), row.number("from_observer_au"),
                row.number("phase_deg"));
        // Reasons in the table's head.
        double toleranceMag = row.text("planet").equals("mars") ? 0.003 : 0.0006;
        assertEquals(row.number("magnitude"), magnitude(row, view), toleranceMag);
    }

    private static double magnitude(Row row, View view) {
        return switch (row.text("planet")) {
            case "mercury" -> PlanetMagnitude.mercury(view);
            case "venus" -> PlanetMagnitude.venus(view);
            case "mars" -> PlanetMagnitude.mars(view, row.number("seen_deg"), row.number("sunlit_deg"),
                    row.number("ecliptic_deg"));
            case "jupiter" -> PlanetMagnitude.jupiter(view);
            case "saturn" -> PlanetMagnitude.saturn(view, row.number("seen_deg"), row.number("sunlit_deg"));
            case "uranus" -> PlanetMagnitude.uranus(view, row.number("seen_deg"), row.number("sunlit_deg"));
            case "neptune" -> PlanetMagnitude.neptune(view, year(LocalDate.parse(row.text("date"))));
            default -> throw new IllegalArgumentException(row.text("planet"));
        };
    }

    private static double year(LocalDate date) {
        return date.getYear() + date.getDayOfYear() / 365.25;
    }
}
