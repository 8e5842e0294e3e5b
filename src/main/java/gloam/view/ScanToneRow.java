package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.journal.ScanReading;
import gloam.units.Label;

/**
 * The tone of the sky that a scan of a sheet shows.
 *
 * @param toneStops  from the film's mid-tone, plus is lighter
 * @param errorStops one standard deviation; 0 of a bound
 * @param bound      {@code none}, or how the tone lies to the one given: {@code at-most} or
 *                   {@code at-least}
 */
public record ScanToneRow(double toneStops, double errorStops, String bound) {

    private static final String NONE = Label.of(ScanReading.Bound.NONE);

    static ScanToneRow of(ScanReading.Tone tone) {
        return new ScanToneRow(tone.stops(), tone.errorStops(), Label.of(tone.bound()));
    }

    /** The tone without its error. */
    @JsonIgnore
    String stops() {
        return (bound.equals(NONE) ? "" : bound.replace('-', ' ') + " ") + Wording.signed(toneStops, 1)
                + " stops";
    }

    @JsonIgnore
    String text() {
        return stops() + " from the mid-tone"
                + (bound.equals(NONE) ? ", ± " + Wording.number(errorStops, 1) : "");
    }
}
