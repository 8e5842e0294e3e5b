package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A published table of times, taken as a journal of sheets that came out at the mid-tone, gives its exponent.
 */
class FilmFitReferenceTest {

    private static final FilmStock PUBLISHED = Films.print(320, Reciprocity.power(1.3, 1));

    /**
     * Slope of log time over log time by least squares, independently computed to 0.0005; of two rows the
     * line through them. Spread: how far the rows lie from a line (0.12 stop), else half the last digit of a
     * maker's time.
     */
    @ParameterizedTest
    @CsvSource({
        "barnbaum-1994/times.csv, fast-panchromatic-table-1, 0.12, 1.254",
        "barnbaum-1994/times.csv, slow-panchromatic-table-1, 0.1, 1.158",
        "makers/tables.csv, fast-panchromatic-table-1, 0.05, 1.389",
        "makers/tables.csv, slow-panchromatic-table-1, 0.05, 1.125",
        "makers/tables.csv, fast-panchromatic-table-2, 0.05, 1.301"})
    void tableGivesItsExponent(String table, String film, double spreadStops, double exponent) {
        List<Entry> sheets = sheets(table, film, spreadStops);
        FilmFit fit = Sheets.fit(PUBLISHED, sheets);
        Estimate fitted = fit.posterior().exponent();
        double sdOfSlope = spreadStops / Math.sqrt(squares(sheets));
        // what the table leaves open, and how far the published film may draw it on top of that
        assertEquals(exponent, fitted.mean(), sdOfSlope + pull(exponent, sdOfSlope));
        // two rows are enough to settle more than half of what was open before
        assertTrue(fitted.sd() < fit.prior().exponent().sd() / 2, fitted.toString());
    }

    /**
     * First order of how far a prior of ln(P - 1) about ln 0.3, standard deviation 0.35, draws a normal
     * likelihood.
     */
    private static double pull(double exponent, double sd) {
        return sd * sd * Math.abs(Math.log((exponent - 1) / 0.3)) / ((exponent - 1) * 0.35 * 0.35);
    }

    private static double squares(List<Entry> sheets) {
        double[] log2 = sheets.stream().mapToDouble(sheet ->
                Stops.between(1, PUBLISHED.midToneLxS() / sheet.exposed().middleLx())).toArray();
        double mean = Arrays.stream(log2).average().orElseThrow();
        return Arrays.stream(log2).map(value -> (value - mean) * (value - mean)).sum();
    }

    private static List<Entry> sheets(String table, String film, double spreadStops) {
        List<Entry> sheets = new ArrayList<>();
        for (Row row : ReferenceTable.read(table).rows()) {
            if (row.text("film").equals(film)) {
                sheets.add(Sheets.steady(String.valueOf(sheets.size() + 1), PUBLISHED, row.number("meteredS"),
                        row.number("correctedS"), Sheets.measured(0, spreadStops)));
            }
        }
        return sheets;
    }
}
