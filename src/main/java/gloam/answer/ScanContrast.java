package gloam.answer;

import gloam.film.ToneCurve;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How much more contrast a scan has than its sheet: densities on the one as a factor of those on the other.
 *
 * <p><b>Model.</b> A scanner that codes by another power than the sRGB curve changes all densities by a
 * factor. Each star is a known lamp over a sky whose density the scan shows beside its trail, and how much
 * more the brighter of two trails adds to the film's tone depends on how far that sky is from black and from
 * white: so the trails show the sky's true density, and with it the factor. Not known besides are how much
 * light a trail gathers beside what is predicted, and by how much a line is lowered where the reading
 * smooths it. All three stand on a grid; each trail has a chance in it, of a law with heavy tails, since
 * trails that run beside each other do not fit; the factor is the mean over the grid. <b>Valid.</b> Factors
 * from 0.7 to 1.5, the same all over the picture. <b>Error.</b> As stated. <b>Departures.</b> The film's
 * tone curve and the predicted light of the sky are taken as they are.
 *
 * @param factor density on the scan beside that on the sheet
 * @param error  one standard deviation of its natural logarithm
 * @param trails by how many trails; 0 where they are too few
 */
public record ScanContrast(double factor, double error, int trails) {

    /** Scanners and cameras told to change nothing: a power between 1.9 and 2.5 for 2.2; no source. */
    private static final double ERROR_OF_CURVE = 0.12;
    /** Beside a wedge, whose densities are known to some hundredths; common practice, no source. */
    private static final double ERROR_BY_WEDGE = 0.02;

    private static final double[] LN_FACTORS = steps(-0.4, 0.4, 41);
    private static final double[] LN_LIGHTS = steps(-7, 1, 33);
    private static final double[] LN_LOWERED = steps(-1.4, 0.1, 16);
    /** What smoothing over five pixels leaves of the height of a line, normal with 1 to 2 pixels. */
    private static final double LOWERED = Math.log(0.6);
    private static final double LOWERED_ERROR = 0.3;
    private static final int LEAST_TRAILS = 6;
    /** A trail that takes more than that of the sky's density is broad and flat, and less lowered. */
    private static final double UP_TO_SHARE = 0.5;
    /** A trail's error is this density and this share of what it adds, by the scatter of trails. */
    private static final double ERROR_DENSITY = 0.02;
    private static final double ERROR_SHARE = 0.15;
    /** Degrees of freedom of Student's distribution. */
    private static final double TAILS = 3;
    private static final double FROM_END = 0.02;

    /** What is known of it before a trail is looked at. */
    static ScanContrast before(Optional<ReadQuestion.Wedge> wedge) {
        return new ScanContrast(1, wedge.isPresent() ? ERROR_BY_WEDGE : ERROR_OF_CURVE, 0);
    }

    /** By the trails of stars that are seen on a scan of a film, and what is known of it before. */
    static ScanContrast of(ToneCurve curve, List<Lamp> lamps, ScanContrast before) {
        List<Lamp> seen = lamps.stream().filter(Lamp::seen)
                .filter(lamp -> lamp.density() < UP_TO_SHARE * lamp.skyDensity()).toList();
        if (seen.size() < LEAST_TRAILS) {
            return before;
        }
        double[] cost = Arrays.stream(LN_FACTORS).parallel().map(lnFactor -> before.cost(lnFactor)
                + cost(curve, seen, lnFactor)).toArray();
        double least = Arrays.stream(cost).min().orElseThrow();
        double sum = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < cost.length; i++) {
            double weight = Math.exp(least - cost[i]);
            sum += weight;
            first += weight * LN_FACTORS[i];
            second += weight * LN_FACTORS[i] * LN_FACTORS[i];
        }
        double mean = first / sum;
        return new ScanContrast(Math.exp(mean), Math.sqrt(second / sum - mean * mean), seen.size());
    }

    private double cost(double lnFactor) {
        double away = (lnFactor - Math.log(factor)) / error;
        return away * away / 2;
    }

    /** Minus the logarithm of the chance of all trails by a factor, up to a constant. */
    private static double cost(ToneCurve curve, List<Lamp> lamps, double lnFactor) {
        double factor = Math.exp(lnFactor);
        double[] costs = new double[LN_LIGHTS.length * LN_LOWERED.length];
        double[] adds = new double[lamps.size()];
        for (int light = 0; light < LN_LIGHTS.length; light++) {
            for (int i = 0; i < adds.length; i++) {
                adds[i] = factor * adds(curve, lamps.get(i), factor, Math.exp(LN_LIGHTS[light]));
            }
            for (int lowered = 0; lowered < LN_LOWERED.length; lowered++) {
                double off = (LN_LOWERED[lowered] - LOWERED) / LOWERED_ERROR;
                double cost = off * off / 2;
                for (int i = 0; i < adds.length; i++) {
                    double found = lamps.get(i).density();
                    double away = (Math.exp(LN_LOWERED[lowered]) * adds[i] - found)
                            / Math.hypot(ERROR_DENSITY, ERROR_SHARE * found);
                    cost += (TAILS + 1) / 2 * Math.log1p(away * away / TAILS);
                }
                costs[light * LN_LOWERED.length + lowered] = cost;
            }
        }
        double least = Arrays.stream(costs).min().orElseThrow();
        return least - Math.log(Arrays.stream(costs).map(cost -> Math.exp(least - cost)).sum());
    }

    /** What a trail adds to the density of the film under it. */
    private static double adds(ToneCurve curve, Lamp lamp, double factor, double light) {
        double sky = Math.max(curve.densityMin() + FROM_END, Math.min(curve.densityMax() - FROM_END,
                curve.densityMin() + lamp.skyDensity() / factor));
        double progress = curve.progress(sky);
        return Math.abs(curve.density(progress * (1 + light * lamp.timesSky())) - sky);
    }

    private static double[] steps(double from, double to, int many) {
        double[] steps = new double[many];
        for (int i = 0; i < many; i++) {
            steps[i] = from + i * (to - from) / (many - 1);
        }
        return steps;
    }
}
