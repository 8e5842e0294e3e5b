package gloam.proof;

import gloam.film.ToneCurve;
import gloam.units.Stops;

/**
 * The levels 0 to 255 in which a screen shows a film's tones, the lightest tone as white.
 *
 * <p>Level by the sRGB transfer function (IEC 61966-2-1) of the share of light that the sheet throws back or
 * lets through, 10^−density.
 */
final class ToneScale {

    private static final double LEAST_STOPS = -24;
    private static final double MOST_STOPS = 24;
    private static final int STEPS_A_STOP = 256;

    private final byte[] levels;

    ToneScale(ToneCurve tone) {
        this.levels = new byte[(int) ((MOST_STOPS - LEAST_STOPS) * STEPS_A_STOP) + 1];
        for (int i = 0; i < levels.length; i++) {
            double progress = Stops.factor(LEAST_STOPS + (double) i / STEPS_A_STOP);
            levels[i] = (byte) Math.round(255
                    * encoded(Math.pow(10, tone.densityMin() - tone.density(progress))));
        }
    }

    /** The level, an unsigned byte, after a progress; from far under and far over the same as at the ends. */
    byte level(double progress) {
        double stops = Math.max(LEAST_STOPS, Math.min(MOST_STOPS, Stops.between(1, progress)));
        return levels[(int) Math.round((stops - LEAST_STOPS) * STEPS_A_STOP)];
    }

    /** The sRGB transfer function. */
    static double encoded(double share) {
        return share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
    }
}
