package gloam.light;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.gear.LightDome;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.units.Range;
import gloam.units.Stops;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Sets what is free in the sky of a site by what was measured there: the figure of its zenith, its haze, the
 * strength of each town and of each twilight that was measured.
 *
 * <p><b>Model.</b> Weighted least squares (Levenberg and Marquardt): each measurement by its own error and
 * that of the sources that are not free, each free number by how well it was known before. <b>Valid.</b>
 * Any number of measurements, none too. <b>Error.</b> Told with each number. <b>Departures.</b> Errors of
 * the free numbers count as independent afterwards; haze is known to 0.1 mag before. A measurement is of
 * twilight where that has a tenth of its light or more; what it says holds for that evening alone, to 0.3
 * stop at best, since twilight keeps no exact shape.
 */
public final class SkyFit {

    private static final double HAZE_MAG = 0.1;
    private static final double STEP = 0.02;
    private static final double WITHIN = 1e-6;
    private static final int MOST_ROUNDS = 60;
    private static final double TWILIT_SHARE = 0.1;
    /** The zenith and the haze; the towns and the twilights come after them. */
    private static final int ZENITH = 0;
    private static final int HAZE = 1;
    private static final int TOWNS = 2;

    private final Ephemeris ephemeris;
    private final Site site;
    private final double[] weights;
    /** The number of the twilight that each measurement is of, from 0; -1 for none. */
    private final int[] twilights;

    private SkyFit(Ephemeris ephemeris, Site site) {
        this.ephemeris = ephemeris;
        this.site = site;
        this.twilights = twilights();
        this.weights = IntStream.range(0, twilights.length).mapToDouble(i -> 1 / Math.hypot(
                site.skyReadings().get(i).spreadMag(), Stops.MAG * notFreeStops(i))).toArray();
    }

    private int[] twilights() {
        List<SkyReading> readings = site.skyReadings();
        SkyLight sky = new SkyLight(ephemeris, site);
        int[] numbers = new int[readings.size()];
        List<Instant> last = new ArrayList<>();
        for (int i : IntStream.range(0, numbers.length).boxed()
                .sorted(Comparator.comparing(i -> readings.get(i).at())).toList()) {
            Instant at = readings.get(i).at();
            SkyLight.Sample seen = sample(sky, readings.get(i));
            if (seen.of(LightSource.TWILIGHT).cdM2() < TWILIT_SHARE * seen.total().cdM2()) {
                numbers[i] = -1;
                continue;
            }
            if (last.isEmpty() || !MeasuredTwilight.same(last.get(last.size() - 1), at)) {
                last.add(at);
            }
            numbers[i] = last.size() - 1;
            last.set(numbers[i], at);
        }
        return numbers;
    }

    /** How well the light of a measurement is known but for what is free. */
    private double notFreeStops(int reading) {
        SkyLight.Sample seen = sample(site, site.skyReadings().get(reading));
        if (twilights[reading] < 0) {
            return seen.spreadStopsWithout(LightSource.AIRGLOW, LightSource.TOWNS);
        }
        return Math.hypot(seen.spreadStopsWithout(LightSource.AIRGLOW, LightSource.TOWNS,
                LightSource.TWILIGHT), MeasuredTwilight.LEAST_SPREAD_STOPS
                * seen.of(LightSource.TWILIGHT).cdM2() / seen.total().cdM2());
    }

    /** The same site as its measurements have it, with what they leave; itself where there are none. */
    public static Site of(Ephemeris ephemeris, Site site) {
        return site.skyReadings().isEmpty() ? site : new SkyFit(ephemeris, site).fitted();
    }

    private Site fitted() {
        int free = TOWNS + site.lightDomes().size() + 1 + Arrays.stream(twilights).max().orElseThrow();
        double[] target = new double[weights.length + free];
        for (int i = 0; i < weights.length; i++) {
            target[i] = weights[i] * site.skyReadings().get(i).magArcsec2();
        }
        LeastSquaresOptimizer.Optimum best = new LevenbergMarquardtOptimizer().optimize(
                new LeastSquaresBuilder().start(new double[free]).target(target)
                .model(this::model).lazyEvaluation(false).maxEvaluations(MOST_ROUNDS)
                .maxIterations(MOST_ROUNDS)
                .checker((round, before, now) -> before.getPoint().getDistance(now.getPoint()) < WITHIN)
                .build());
        RealVector shares = best.getSigma(0);
        Site moved = moved(best.getPoint());
        List<LightDome> domes = IntStream.range(0, moved.lightDomes().size()).mapToObj(i ->
                moved.lightDomes().get(i).knownTo(shares.getEntry(TOWNS + i)
                * site.lightDomes().get(i).spreadStops())).toList();
        return new Site(moved.name(), moved.latitude(), moved.longitude(), moved.heightM(), moved.zone(),
                moved.darkSkyMagArcsec2(), moved.extinctionMag(), moved.skyline(), domes,
                IntStream.range(0, weights.length).mapToObj(i -> left(moved, i, shares)).toList(),
                shares.getEntry(ZENITH) * site.zenithSpreadStops());
    }

    /** A measurement with what the fit leaves of it and, by its errors, how well a twilight is known then. */
    private SkyReading left(Site fitted, int i, RealVector shares) {
        SkyReading reading = fitted.skyReadings().get(i);
        SkyReading left = reading.left(sample(fitted, reading).total().magArcsec2() - reading.magArcsec2());
        return left.twilight().map(twilight -> left.of(new SkyReading.Twilight(twilight.brighterStops(),
                Math.max(MeasuredTwilight.LEAST_SPREAD_STOPS, TwilightGlow.SPREAD_STOPS
                * shares.getEntry(twilightAt(i)))))).orElse(left);
    }

    private int twilightAt(int reading) {
        return TOWNS + site.lightDomes().size() + twilights[reading];
    }

    /** What would be measured, then the free numbers themselves, each by its error; and its slopes. */
    private Pair<RealVector, RealMatrix> model(RealVector point) {
        RealVector here = values(point);
        RealMatrix slopes = new Array2DRowRealMatrix(here.getDimension(), point.getDimension());
        for (int free = 0; free < point.getDimension(); free++) {
            RealVector aside = point.copy();
            aside.addToEntry(free, STEP);
            slopes.setColumnVector(free, values(aside).subtract(here).mapDivide(STEP));
        }
        return new Pair<>(here, slopes);
    }

    private RealVector values(RealVector point) {
        Site there = moved(point);
        SkyLight sky = new SkyLight(ephemeris, there);
        double[] seen = IntStream.range(0, weights.length).mapToDouble(i ->
                weights[i] * sample(sky, site.skyReadings().get(i)).total().magArcsec2()).toArray();
        return new ArrayRealVector(seen).append(point);
    }

    private SkyLight.Sample sample(Site there, SkyReading reading) {
        return sample(new SkyLight(ephemeris, there), reading);
    }

    private static SkyLight.Sample sample(SkyLight sky, SkyReading reading) {
        return sky.at(new Direction(reading.azimuth(), reading.altitude()), reading.at());
    }

    /** The site with its free numbers off by so many times their errors. */
    private Site moved(RealVector point) {
        List<LightDome> domes = new ArrayList<>();
        for (int i = 0; i < site.lightDomes().size(); i++) {
            LightDome dome = site.lightDomes().get(i);
            domes.add(brighter(dome, point.getEntry(TOWNS + i) * dome.spreadStops()));
        }
        return new Site(site.name(), site.latitude(), site.longitude(), site.heightM(), site.zone(),
                inside(Site.DARK_SKY, site.darkSkyMagArcsec2()
                - Stops.MAG * point.getEntry(ZENITH) * site.zenithSpreadStops()),
                inside(Site.EXTINCTION, site.extinctionMag() + HAZE_MAG * point.getEntry(HAZE)),
                site.skyline(), domes, IntStream.range(0, weights.length).mapToObj(i -> twilights[i] < 0
                ? site.skyReadings().get(i) : site.skyReadings().get(i).of(new SkyReading.Twilight(
                TwilightGlow.SPREAD_STOPS * point.getEntry(twilightAt(i)), TwilightGlow.SPREAD_STOPS)))
                .toList(), site.zenithSpreadStops());
    }

    private static LightDome brighter(LightDome dome, double stops) {
        LightDome.Known known = dome.known() instanceof Town town
                ? new Town(inside(Town.PEOPLE, town.people() * Math.pow(2, stops)), town.distanceKm())
                : new Measured(((Measured) dome.known()).altitude(), inside(Measured.BRIGHTNESS,
                ((Measured) dome.known()).magArcsec2() - Stops.MAG * stops));
        return new LightDome(dome.azimuth(), known, dome.colourK(), dome.spreadStops());
    }

    private static double inside(Range range, double value) {
        return Math.max(range.least(), Math.min(range.most(), value));
    }
}
