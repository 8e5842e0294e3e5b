package gloam.proof;

import gloam.film.ToneCurve;
import gloam.units.Stops;
import java.util.function.DoubleUnaryOperator;

/**
 * The levels 0 to 255 in which a screen shows a film's tones, the lightest tone as white.
 *
 * <p>Level by the sRGB transfer function (IEC 61966-2-1) of the share of light that the sheet throws back or
 * lets through, 10^−density. Between two levels as many pixels have the greater one as the tone is nearer to
 * it, by ordered dithering (Bayer 1973), so that an even slope shows no steps.
 */
final class ToneScale {

    private static final double LEAST_STOPS = -24;
    private static final double MOST_STOPS = 24;
    private static final int STEPS_A_STOP = 256;

    /** Rows and columns after which the order repeats. */
    private static final int ORDER = 8;

    private final float[] levels;

    /** The tones of a film as they are. */
    ToneScale(ToneCurve tone) {
        this(tone.densityMin(), tone::density);
    }

    private ToneScale(double densityMin, DoubleUnaryOperator density) {
        this.levels = new float[(int) ((MOST_STOPS - LEAST_STOPS) * STEPS_A_STOP) + 1];
        for (int i = 0; i < levels.length; i++) {
            double progress = Stops.factor(LEAST_STOPS + (double) i / STEPS_A_STOP);
            levels[i] = (float) (255 * encoded(Math.pow(10, densityMin - density.applyAsDouble(progress))));
        }
    }

    /**
     * The tones of a print made from a negative: its mid-tone prints as mid-tone, and a density beside it as
     * far from there as the light that made it would be on a print looked at itself.
     */
    static ToneScale printOf(ToneCurve negative) {
        ToneCurve print = ToneCurve.PRINT;
        return new ToneScale(print.densityMin(), progress -> print.density(
                Math.pow(10, (negative.density(progress) - negative.densityMid()) / negative.gamma())));
    }

    /**
     * The level, an unsigned byte, of a pixel after a progress; from far under and far over the same as at
     * the ends.
     */
    byte level(double progress, int column, int row) {
        double stops = Math.max(LEAST_STOPS, Math.min(MOST_STOPS, Stops.between(1, progress)));
        float level = levels[(int) Math.round((stops - LEAST_STOPS) * STEPS_A_STOP)];
        return (byte) Math.min(255, (int) (level + share(column, row)));
    }

    /** From 0 to 1 exclusive, each 64th once among any 8 by 8 pixels, like ones far from each other. */
    private static float share(int column, int row) {
        int order = 0;
        for (int bit = 1, weight = ORDER * ORDER / 4; bit < ORDER; bit <<= 1, weight /= 4) {
            int across = column & bit;
            order += weight * ((across ^ row & bit) == 0 ? across == 0 ? 0 : 1 : across == 0 ? 3 : 2);
        }
        return (order + 0.5f) / (ORDER * ORDER);
    }

    /** The sRGB transfer function. */
    static double encoded(double share) {
        return share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
    }
}
