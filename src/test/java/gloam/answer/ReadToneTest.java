package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.ToneCurve;
import gloam.frame.PictureTone;
import gloam.journal.ScanReading.Bound;
import gloam.journal.ScanReading.Tone;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tones of scans whose light follows from a density by its definition, D = -log10 of it (ISO 5-1). */
class ReadToneTest {

    private static final double BORDER = 0.8;

    private static PictureTone picture(double toneStops, double contrast) {
        double over = ToneCurve.PRINT.density(Math.pow(2, toneStops)) - ToneCurve.PRINT.densityMin();
        return new PictureTone(BORDER * Math.pow(10, -contrast * over), OptionalDouble.of(BORDER), 0);
    }

    /** Towards black a density is more stops than towards white: the error is the one towards black. */
    @ParameterizedTest
    @CsvSource({"-2, 1, 0.05", "-2, 1.15, 0.05", "-1.5, 0.9, 0.08", "-0.5, 0.9, 0.02"})
    void theContrastOfTheScanIsTakenOff(double toneStops, double contrast, double contrastError) {
        Tone tone = ReadTone.of(picture(toneStops, contrast), ToneCurve.PRINT,
                new ScanContrast(contrast, contrastError, 30));
        assertEquals(Bound.NONE, tone.bound());
        assertEquals(toneStops, tone.stops(), 1e-9);
        double density = ToneCurve.PRINT.density(Math.pow(2, toneStops));
        // 0.03 for the border: common practice, no source
        double error = Math.hypot(0.03, contrastError * (density - ToneCurve.PRINT.densityMin()));
        assertEquals(density + error, ToneCurve.PRINT.density(Math.pow(2, toneStops - tone.errorStops())),
                1e-9);
    }

    /** A sheet that is black to its error is at most that light. */
    @ParameterizedTest
    @CsvSource({"-4.5, 1, 0.12", "-4.5, 0.9, 0.12"})
    void nearBlackItIsABound(double toneStops, double contrast, double contrastError) {
        Tone tone = ReadTone.of(picture(toneStops, contrast), ToneCurve.PRINT,
                new ScanContrast(contrast, contrastError, 30));
        assertEquals(Bound.AT_MOST, tone.bound());
        double density = ToneCurve.PRINT.density(Math.pow(2, toneStops));
        double error = Math.hypot(0.03, contrastError * (density - ToneCurve.PRINT.densityMin()));
        assertEquals(density - error, ToneCurve.PRINT.density(Math.pow(2, tone.stops())), 1e-9);
    }
}
