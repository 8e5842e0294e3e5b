package gloam.view;

import gloam.journal.ScanReading.Bound;
import gloam.units.Label;

/** The words for a tone that was read off a scan. */
final class ReadToneWords {

    private ReadToneWords() {
    }

    static String of(double toneStops, double errorStops, String bound) {
        return (bound.equals(Label.of(Bound.NONE)) ? "" : bound.replace('-', ' ') + " ")
                + Wording.signed(toneStops, 1) + " stops from the mid-tone"
                + (bound.equals(Label.of(Bound.NONE)) ? ", ± " + Wording.number(errorStops, 1) : "");
    }
}
