package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.MathUtils;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EOPHistory;
import org.orekit.frames.Frame;
import org.orekit.frames.FramesFactory;
import org.orekit.frames.PoleCorrection;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.TAIUTCDatFilesLoader;
import org.orekit.time.TimeScalarFunction;
import org.orekit.time.TimeScales;
import org.orekit.utils.Constants;
import org.orekit.utils.IERSConventions;

/**
 * The Earth's turning and the scales of time, as Orekit has them after the IERS Conventions.
 *
 * <p>Orekit is asked a few times a week for the celestial pole by its quick series, now and then for how far
 * the exact ones differ, and a few times a day for UT1; between lie interpolants. Without measured days UT1
 * is UTC and the pole does not wander. Times are seconds of terrestrial time from J2000.0.
 */
final class EarthOrientation {

    static final IERSConventions CONVENTIONS = IERSConventions.IERS_2010;

    /** Within 0.1″ of those of 2010 from 2000 to 2059, and fifty times as quick. */
    private static final IERSConventions QUICK = IERSConventions.IERS_1996;


    private static final long DAY_S = 86_400;
    /** Between days UT1 and the pole are polynomials of the third degree by Orekit. */
    private static final int POINTS_A_DAY = 4;
    private static final double SPAN_S = 8 * Constants.JULIAN_DAY;
    /** Leaves 0.002″: nutation's shortest terms of weight have periods of 5.6 to 14 days. */
    private static final int POINTS = 6;
    private static final double SLOW_SPAN_S = 64 * Constants.JULIAN_DAY;
    /** Enough for precession and for what the quick series lack: terms of half a year and longer. */
    private static final int SLOW_POINTS = 4;
    /** Measured days follow one another; half a day more for rounding. */
    private static final double LONGEST_GAP_S = 1.5 * Constants.JULIAN_DAY;

    private final TimeScales scales;
    private final AbsoluteDate j2000;
    private final Frame celestial;
    private final Frame intermediate;
    private final Frame quick;
    private final Frame ecliptic;
    private final EOPHistory measured;
    private final TimeScalarFunction rotationAngle;
    private final OneAxisEllipsoid ellipsoid;
    private final Map<Long, EarthDay> days = new ConcurrentHashMap<>();
    private final Interpolants quickTurns = new Interpolants(0, SPAN_S, POINTS, this::quickTurn);
    private final Interpolants corrections = new Interpolants(0, SLOW_SPAN_S, SLOW_POINTS, this::correction);
    private final Interpolants eclipticPoles =
            new Interpolants(0, SLOW_SPAN_S, SLOW_POINTS, this::eclipticPole);

    /** The orientation with the measured values of some days. */
    EarthOrientation(Collection<EOPEntry> days) {
        LazyLoadedDataContext context = context();
        context.getFrames().addEOPHistoryLoader(CONVENTIONS, (converter, history) -> history.addAll(days));
        context.getFrames().addEOPHistoryLoader(QUICK, (converter, history) -> { });
        context.getFrames().setEOPContinuityThreshold(LONGEST_GAP_S);
        this.scales = context.getTimeScales();
        this.j2000 = scales.getJ2000Epoch();
        this.celestial = context.getFrames().getGCRF();
        this.intermediate = context.getFrames().getCIRF(CONVENTIONS, true);
        this.quick = context.getFrames().getCIRF(QUICK, true);
        this.ecliptic = context.getFrames().getEcliptic(CONVENTIONS);
        this.measured = FramesFactory.findEOP(intermediate);
        this.rotationAngle = CONVENTIONS.getEarthOrientationAngleFunction(scales.getUT1(CONVENTIONS, true),
                scales.getTAI());
        this.ellipsoid = new OneAxisEllipsoid(Constants.WGS84_EARTH_EQUATORIAL_RADIUS,
                Constants.WGS84_EARTH_FLATTENING, context.getFrames().getITRF(CONVENTIONS, true));
    }

    /**
     * The orientation with the days of a finals2000A file of the IERS.
     *
     * @throws BadInput when it cannot be read, is no such file or has gaps
     */
    static EarthOrientation read(Path path, TimeScales scales) {
        UserFile file = FinalsFile.at(path);
        try {
            return new EarthOrientation(FinalsFile.days(file, scales));
        } catch (OrekitException gap) {
            throw file.unreadable(gap);
        }
    }

    /** The dates for which there are measured days; empty where there are none at all. */
    Optional<Interval> covers() {
        return Optional.of(measured).filter(days -> !days.getEntries().isEmpty()).map(
                days -> new Interval(instant(days.getStartDate()), instant(days.getEndDate())));
    }

    private Instant instant(AbsoluteDate date) {
        return date.toInstant(scales);
    }

    /** A context on the leap seconds of the jar alone. */
    static LazyLoadedDataContext context() {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        DataFile leapSeconds = DataFile.builtIn("tai-utc.dat");
        context.getTimeScales().addUTCTAIOffsetsLoader(
                new TAIUTCDatFilesLoader(leapSeconds.pattern(), leapSeconds.manager()));
        return context;
    }

    TimeScales scales() {
        return scales;
    }

    /** The bodies of the solar system as a file has them. */
    CelestialBodies bodies(DataFile file) {
        return file.bodies(scales, celestial);
    }

    OneAxisEllipsoid ellipsoid() {
        return ellipsoid;
    }

    AbsoluteDate date(double ttS) {
        return j2000.shiftedBy(ttS);
    }

    double ttS(Instant at) {
        return dayOf(at).startTtS() + secondOfDay(at);
    }

    EarthAttitude attitude(Instant at) {
        EarthDay day = dayOf(at);
        double ttS = day.startTtS() + secondOfDay(at);
        Vector3D turn = quickTurns.at(ttS).value(ttS).add(corrections.at(ttS).value(ttS));
        Rotation fromIntermediate = new Rotation(Math.sqrt(1 - turn.getNormSq()), turn.getX(), turn.getY(),
                turn.getZ(), false);
        Vector3D turning = day.turning().value(secondOfDay(at));
        return EarthAttitude.of(ttS, fromIntermediate, turning.getX(), turning.getY(), turning.getZ());
    }

    /** The true equinox of date: where the ecliptic of date rises through the true equator, a unit vector. */
    Vector3D equinox(EarthAttitude attitude) {
        Vector3D eclipticPole = eclipticPoles.at(attitude.ttS()).value(attitude.ttS());
        return attitude.pole().crossProduct(eclipticPole).normalize();
    }

    private EarthDay dayOf(Instant at) {
        long day = Math.floorDiv(at.getEpochSecond(), DAY_S);
        EarthDay known = days.get(day);
        return known != null ? known : days.computeIfAbsent(day, this::sampledDay);
    }

    private static double secondOfDay(Instant at) {
        return Math.floorMod(at.getEpochSecond(), DAY_S) + at.getNano() * 1e-9;
    }

    private EarthDay sampledDay(long day) {
        AbsoluteDate start = new AbsoluteDate(new DateComponents(DateComponents.JAVA_EPOCH, (int) day),
                scales.getUTC());
        double startRad = rotationAngle.value(start);
        Interpolant turning = Interpolant.through(0, DAY_S, POINTS_A_DAY, seconds -> {
            AbsoluteDate date = start.shiftedBy(seconds);
            PoleCorrection pole = measured.getPoleCorrection(date);
            double turnedRad = MathUtils.normalizeAngle(rotationAngle.value(date) - startRad, Math.PI);
            return new Vector3D(startRad + turnedRad, pole.getXp(), pole.getYp());
        });
        return new EarthDay(start.durationFrom(j2000), turning);
    }

    /** The vector part of the unit quaternion from an intermediate to the celestial system. */
    private Vector3D turn(Frame from, double ttS) {
        Rotation turn = FramesFactory.getNonInterpolatingTransform(from, celestial, date(ttS)).getRotation();
        double sense = Math.signum(turn.getQ0());
        return new Vector3D(sense * turn.getQ1(), sense * turn.getQ2(), sense * turn.getQ3());
    }

    private Vector3D quickTurn(double ttS) {
        return turn(quick, ttS);
    }

    private Vector3D correction(double ttS) {
        return turn(intermediate, ttS).subtract(turn(quick, ttS));
    }

    private Vector3D eclipticPole(double ttS) {
        return ecliptic.getStaticTransformTo(celestial, date(ttS)).transformVector(Vector3D.PLUS_K);
    }
}
