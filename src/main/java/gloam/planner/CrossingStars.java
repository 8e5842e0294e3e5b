package gloam.planner;

import java.util.Arrays;

/**
 * How bright the stars are that run over the frame of a wish during exposures on a night. For one thread at a
 * time.
 *
 * <p>Looked up every quarter of an hour, in which they move by less than 4°: a star runs over the frame from
 * the first to the last look at which it stands in it, and is taken half-way.
 */
final class CrossingStars {

    private static final int STEP_MIN = 15;
    /**
     * From one slope of the limit to the next, in mag an octave of speed; none is steeper than all of them.
     */
    private static final double SLOPE = 0.1;
    private static final int SLOPES = 32;

    private final NightSky sky;
    private final Aiming aiming;
    private final StarField field;
    private final FrameStars[] byStep;
    private final float[][][][] known;
    private final int[] first;
    private final int[] last;

    /** Stars in the frames of a wish. */
    CrossingStars(NightSky sky, Aiming aiming, StarField field) {
        this.sky = sky;
        this.aiming = aiming;
        this.field = field;
        int steps = sky.clock().minutes() / STEP_MIN + 2;
        this.byStep = new FrameStars[steps];
        this.known = new float[steps][steps][][];
        this.first = new int[field.stars().size()];
        this.last = new int[field.stars().size()];
    }

    /**
     * Magnitude of the faintest of so many stars that are easiest to record, as if their images ran as fast
     * as that of a star on the equator; infinite where fewer run over the frame.
     *
     * @param perOctaveMag how much deeper the trail limit is for an image of half the speed
     */
    double magnitude(int count, int openMin, int closeMin, double perOctaveMag) {
        float[] all = sorted(openMin, closeMin, perOctaveMag);
        return all.length < count ? Double.POSITIVE_INFINITY : all[count - 1];
    }

    /** The same of the stars that stand in the frame half-way through alone. */
    double halfway(int count, int openMin, int closeMin, double perOctaveMag) {
        int middleMin = openMin + (closeMin - openMin) / 2;
        return magnitude(count, middleMin, middleMin, perOctaveMag);
    }

    /** How many stars record where that of a star on the equator would have to have a magnitude. */
    int recorded(int openMin, int closeMin, double limitMag, double perOctaveMag) {
        float[] all = sorted(openMin, closeMin, perOctaveMag);
        int recorded = 0;
        while (recorded < all.length && all[recorded] <= limitMag) {
            recorded++;
        }
        return recorded;
    }

    private static int step(int minute) {
        return (minute + STEP_MIN / 2) / STEP_MIN;
    }

    private FrameStars at(int step) {
        if (byStep[step] == null) {
            byStep[step] = FrameStars.of(sky, aiming.framing(step * STEP_MIN), step * STEP_MIN, field);
        }
        return byStep[step];
    }

    /**
     * The magnitudes of all stars that run over the frame, as if their images ran as fast as one on the
     * equator.
     */
    private float[] sorted(int openMin, int closeMin, double perOctaveMag) {
        int from = step(aiming.fixed() ? openMin : openMin + (closeMin - openMin) / 2);
        int to = aiming.fixed() ? step(closeMin) : from;
        if (known[from][to] == null) {
            known[from][to] = new float[SLOPES][];
        }
        int slope = (int) Math.max(0, Math.min(SLOPES - 1, Math.round(perOctaveMag / SLOPE)));
        if (known[from][to][slope] == null) {
            known[from][to][slope] = sorted(from, to, slope);
        }
        return known[from][to][slope];
    }

    private float[] sorted(int from, int to, int slope) {
        Arrays.fill(first, -1);
        int crossing = 0;
        for (int step = from; step <= to; step++) {
            for (int star : at(step).stars()) {
                crossing += first[star] < 0 ? 1 : 0;
                first[star] = first[star] < 0 ? step : first[star];
                last[star] = step;
            }
        }
        float[] magnitudes = new float[crossing];
        int seen = 0;
        for (int step = from; step <= to; step++) {
            FrameStars there = at(step);
            for (int i = 0; i < there.stars().length; i++) {
                int star = there.stars()[i];
                if ((first[star] + last[star]) / 2 == step) {
                    magnitudes[seen++] = (float) (there.magnitudes()[i] - slope * SLOPE
                            * there.octavesSlower()[i]);
                }
            }
        }
        Arrays.sort(magnitudes, 0, seen);
        return Arrays.copyOf(magnitudes, seen);
    }
}
