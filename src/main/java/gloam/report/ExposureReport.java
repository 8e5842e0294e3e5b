package gloam.report;

import gloam.exposure.Exposure;
import gloam.exposure.ExposureTable;
import gloam.gear.FNumbers;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Aperture and time for one situation, all f-numbers side by side.
 *
 * @param generatedAt when the report was made
 * @param situation   what was asked
 * @param exposures   a row for each f-number, widest first
 */
public record ExposureReport(OffsetDateTime generatedAt, Situation situation, List<Row> exposures)
        implements Report {

    private static final double LONGEST_NIGHT_S = 16 * 3600;

    /** The report of a table's rows. */
    public static ExposureReport of(OffsetDateTime generatedAt, Situation situation, List<ExposureTable.Row> rows) {
        return new ExposureReport(generatedAt, situation, rows.stream().map(Row::of).toList());
    }

    @Override
    public boolean empty() {
        return exposures.stream().allMatch(Row::neverFinishes);
    }

    /**
     * One f-number; the meanings of {@link ExposureTable.Row}.
     *
     * @param notes what else to know, a sentence each
     */
    public record Row(double fNumber, OptionalDouble meteredS, OptionalDouble correctedS,
                      OptionalDouble correctedLowS, OptionalDouble correctedHighS, OptionalDouble reciprocityStops,
                      boolean extrapolated, boolean neverFinishes, double skyToneStops, double skyToneSpreadStops,
                      OptionalDouble trailLimitMag, List<String> notes) {

        static Row of(ExposureTable.Row row) {
            Exposure exposure = row.exposure();
            return new Row(FNumbers.marking(row.fNumber()), seconds(exposure.meteredS()),
                    seconds(exposure.correctedS()), seconds(exposure.lowS()), seconds(exposure.highS()),
                    exposure.neverFinishes() ? OptionalDouble.empty()
                            : OptionalDouble.of(Rounding.stops(exposure.reciprocityStops())),
                    exposure.extrapolated(), exposure.neverFinishes(), Rounding.stops(exposure.skyToneStops()),
                    Rounding.stops(exposure.spreadStops()), Rounding.magIfKnown(row.trailLimitMag()), notes(row));
        }

        private static OptionalDouble seconds(double seconds) {
            return Double.isFinite(seconds) ? OptionalDouble.of(Rounding.seconds(seconds)) : OptionalDouble.empty();
        }

        private static List<String> notes(ExposureTable.Row row) {
            List<String> notes = new ArrayList<>();
            if (row.exposure().neverFinishes()) {
                notes.add("the tone is not reached before dawn");
            } else if (row.exposure().correctedS() > LONGEST_NIGHT_S) {
                notes.add("longer than a night");
            }
            if (row.exposure().extrapolated()) {
                notes.add("beyond what the film's reciprocity law was measured for");
            }
            if (Double.isInfinite(row.trailLimitMag())) {
                notes.add("no star leaves a trail");
            }
            return notes;
        }
    }
}
