package gloam.planner;

import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Angle;
import java.util.Arrays;

/**
 * The trail limit of an f-number by the sky's tone and light, straight between quarters of a stop and
 * computed when first asked for; several threads may ask at once.
 */
final class TrailLimits {

    /** Where no trail shows at all, in mag. */
    static final double NONE_MAG = -30;

    private static final int DARKEST_TONE = -18;
    private static final int TONES = 26;
    private static final int DARKEST_LIGHT = -44;
    private static final int LIGHTS = 52;
    private static final int STEPS_A_STOP = 4;
    private static final int ACROSS = LIGHTS * STEPS_A_STOP + 2;
    /** Longer than any image dwells on a point. */
    private static final double LONG_S = 86_400;

    private final FilmStock film;
    private final Lens lens;
    private final FNumber fNumber;
    private final double speedMmS;
    private final Angle semidiameter;
    private final float[] known = new float[(TONES * STEPS_A_STOP + 2) * ACROSS];

    /**
     * The limits through an f-number.
     *
     * @param speedMmS     speed of the image
     * @param semidiameter half the angle of the disc that draws the trail, zero for a star
     */
    TrailLimits(FilmStock film, Lens lens, FNumber fNumber, double speedMmS, Angle semidiameter) {
        this.film = film;
        this.lens = lens;
        this.fNumber = fNumber;
        this.speedMmS = speedMmS;
        this.semidiameter = semidiameter;
        Arrays.fill(known, Float.NaN);
    }

    /**
     * Faintest V magnitude, dimmed by the air, that leaves a visible trail; {@link #NONE_MAG} where none
     * does.
     *
     * @param toneStops tone of the sky
     * @param log2Lx    light of the sky on the film half-way through, as the logarithm to base 2 of lx
     */
    double magnitude(double toneStops, double log2Lx) {
        double down = (Math.max(DARKEST_TONE, Math.min(DARKEST_TONE + TONES, toneStops)) - DARKEST_TONE)
                * STEPS_A_STOP;
        double over = (Math.max(DARKEST_LIGHT, Math.min(DARKEST_LIGHT + LIGHTS, log2Lx)) - DARKEST_LIGHT)
                * STEPS_A_STOP;
        int top = (int) down;
        int left = (int) over;
        double upper = between(at(top, left), at(top, left + 1), over - left);
        double lower = between(at(top + 1, left), at(top + 1, left + 1), over - left);
        return between(upper, lower, down - top);
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    private float at(int tone, int light) {
        int place = tone * ACROSS + light;
        float there = known[place];
        if (Float.isNaN(there)) {
            there = (float) Math.max(NONE_MAG,
                    TrailLimit.magnitude(new TrailLimit.Passing(new ExposedSheet(film, lens, fNumber, LONG_S,
                    Math.pow(2, DARKEST_TONE + (double) tone / STEPS_A_STOP),
                    Math.pow(2, DARKEST_LIGHT + (double) light / STEPS_A_STOP)), speedMmS, 0), semidiameter));
            known[place] = there;
        }
        return there;
    }
}
