package gloam.answer;

import gloam.exposure.TrailLimit;
import gloam.units.Median;
import java.util.List;
import java.util.Optional;

/**
 * The faintest star that leaves a visible trail, by all trails of a sheet: each star is a known lamp.
 *
 * <p><b>Model.</b> What a trail adds to the density, times its width on the scan, is what it adds over its
 * spot times the spot's width, however blurred. A little above the limit that goes with the star's light, so
 * that each such trail shows how far the limit lies from the predicted one; the median of all, since trails
 * that run beside each other do not. <b>Valid.</b> Six trails from half a magnitude to two above the limit.
 * <b>Error.</b> Their scatter, and 0.3 mag by the width of the spot. <b>Departures.</b> Reciprocity failure
 * differs little within two magnitudes.
 *
 * @param magnitude V magnitude at the frame's centre
 * @param errorMag  one standard deviation
 * @param trails    by how many trails
 */
public record ReadLimit(double magnitude, double errorMag, int trails) {

    private static final double FROM_MAG = 0.5;
    private static final double TO_MAG = 2;
    private static final int LEAST_TRAILS = 6;
    private static final double FARTHEST_MAG = 4;
    private static final int ROUNDS = 30;
    /** Steps come to rest within a tenth of the error: trails at the ends of the range come and go. */
    private static final double SAME_MAG = 0.03;
    private static final double OF_SPOT_MAG = 0.3;
    private static final double NONE = 1e-3;

    /**
     * The limit by some trails; empty by too few.
     *
     * @param predictedMag that of the film, as predicted
     * @param spots        by how many times what a trail adds over its spot is more than on the scan, which
     *                     blurs it and has a contrast of its own
     */
    static Optional<ReadLimit> of(double predictedMag, List<Lamp> lamps, double spots) {
        double deeper = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double[] near = near(lamps, deeper, spots);
            if (near.length < LEAST_TRAILS || !Double.isFinite(predictedMag)) {
                return Optional.empty();
            }
            double before = deeper;
            deeper = (before + Median.of(near)) / 2;
            if (Math.abs(deeper) > FARTHEST_MAG) {
                return Optional.empty();
            }
            if (Math.abs(deeper - before) < SAME_MAG) {
                return Optional.of(new ReadLimit(predictedMag + deeper, Math.hypot(OF_SPOT_MAG,
                        Median.error(near, deeper)), near.length));
            }
        }
        return Optional.empty();
    }

    private static double[] near(List<Lamp> lamps, double deeper, double spots) {
        return lamps.stream().filter(lamp -> lamp.brighterMag() + deeper > FROM_MAG
                && lamp.brighterMag() + deeper < TO_MAG).mapToDouble(lamp -> deeperMag(lamp, spots))
                .toArray();
    }

    /** By how much the limit lies deeper than predicted, by a trail. */
    private static double deeperMag(Lamp lamp, double spots) {
        return 2.5 * Math.log10(Math.max(NONE, spots * lamp.density()) / TrailLimit.LEAST_DIFFERENCE_DENSITY)
                - lamp.brighterMag();
    }
}
