package gloam.gear;

import gloam.units.Angle;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The terrain's apparent horizon around a site: straight lines between given points, closed over north. */
public final class Skyline {

    /** Allowed azimuths of a point; 360° means north as 0° does. */
    public static final Range AZIMUTH = new Range("azimuth", 0, 360, "deg");
    /** Allowed altitudes of a point: from a view down off a summit to the foot of a wall. */
    public static final Range ALTITUDE = new Range("skyline altitude", -10, 89, "deg");

    /** A level horizon all around. */
    public static final Skyline FLAT = new Skyline(List.of(new Point(0, 0)));

    private final List<Point> points;
    private final double[] azimuthsDeg;

    /**
     * A skyline through points.
     *
     * @param points at least one, in any order; of points at one azimuth the first and the last given make a
     *               step
     */
    public Skyline(List<Point> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a skyline needs a point");
        }
        List<Point> inOrder = new ArrayList<>(points);
        inOrder.sort((one, other) -> Double.compare(one.azimuthDeg, other.azimuthDeg));
        this.points = List.copyOf(inOrder);
        this.azimuthsDeg = this.points.stream().mapToDouble(Point::azimuthDeg).toArray();
    }

    /** The points in order of azimuth. */
    public List<Point> points() {
        return points;
    }

    /** Apparent altitude of the terrain in a direction counted from north through east, any range. */
    public Angle altitudeAt(Angle azimuth) {
        double azimuthDeg = azimuth.positive().degrees();
        int found = Arrays.binarySearch(azimuthsDeg, azimuthDeg);
        int after = found >= 0 ? found : -found - 1;
        Point right = points.get(after % points.size());
        Point left = points.get((after + points.size() - 1) % points.size());
        double gapDeg = turn(right.azimuthDeg - left.azimuthDeg);
        double share = gapDeg == 0 ? 1 : turn(azimuthDeg - left.azimuthDeg) / gapDeg;
        return Angle.ofDegrees(left.altitudeDeg + share * (right.altitudeDeg - left.altitudeDeg));
    }

    /** Whether it is level all around. */
    public boolean isLevel() {
        return points.stream().allMatch(point -> point.altitudeDeg == 0);
    }

    /**
     * The same with the sea's horizon, as seen from a height over it in metres, where it is level or lower.
     */
    public Skyline overSea(double heightM) {
        double seaDeg = -SeaHorizon.dipDeg(heightM);
        return new Skyline(points.stream().map(point ->
                point.altitudeDeg > 0 ? point : new Point(point.azimuthDeg, seaDeg)).toList());
    }

    private static double turn(double deg) {
        return deg < 0 ? deg + 360 : deg;
    }

    /**
     * One point of a skyline.
     *
     * @param azimuthDeg  from north through east, 0 to 360 degrees
     * @param altitudeDeg apparent altitude over the level horizon in degrees
     */
    public record Point(double azimuthDeg, double altitudeDeg) {

        /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
        public Point {
            AZIMUTH.check(azimuthDeg);
            ALTITUDE.check(altitudeDeg);
            azimuthDeg = azimuthDeg == 360 ? 0 : azimuthDeg;
        }
    }
}
