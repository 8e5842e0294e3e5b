package gloam.journal;

import gloam.units.Range;

/** The tone of the sky on a sheet, as judged or measured. */
public sealed interface Verdict {

    /**
     * Standard deviation, in stops, of a judged tone about the computed one: sky model and eye; no source.
     */
    double USUAL_SPREAD_STOPS = 0.6;

    /** Allowed tones in stops from the mid-tone. */
    Range TONE = new Range("sky tone", -12, 8, "stops");
    /** Allowed standard deviations in stops. */
    Range SPREAD = new Range("spread of the sky tone", 0.05, 3, "stops");

    /** The tone in stops from the mid-tone; of a word, the middle of what it stands for. */
    double typicalStops();

    /** A word. */
    record InWords(ToneWord word) implements Verdict {

        @Override
        public double typicalStops() {
            return word.typicalStops();
        }
    }

    /**
     * A tone in stops.
     *
     * @param stops       from the film's mid-tone, plus is lighter
     * @param spreadStops its standard deviation, that of the computed light included
     */
    record InStops(double stops, double spreadStops) implements Verdict {

        /** Refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
        public InStops {
            TONE.check(stops);
            SPREAD.check(spreadStops);
        }

        @Override
        public double typicalStops() {
            return stops;
        }
    }

    /** A tone that a scan of the sheet showed. */
    record OfScan(ScanReading.Tone tone) implements Verdict {

        @Override
        public double typicalStops() {
            return tone.stops();
        }
    }
}
