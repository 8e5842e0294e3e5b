package gloam.ephemeris.orekit;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Where the Earth's axis points: the celestial intermediate pole and origin of the IAU 2006/2000A model.
 *
 * <p><b>Model.</b> X, Y and s + XY/2 of the IERS Conventions (2010), TN 36, ch. 5, as Orekit computes them,
 * tabulated once a day; outside the table from Orekit's series. <b>Valid.</b> 1800 to 2200. <b>Error.</b>
 * Cubic interpolation between the days, below 0.001″; without observed corrections, below 0.001″.
 * <b>Departures.</b> None.
 */
final class CelestialPole {

    private static final double UNIT_RAD = 1e-11;
    private static final double DAY_S = 86400;

    private final int firstDay;
    private final int[] nodes;
    private final PoleSeries outside;

    private CelestialPole(int firstDay, int[] nodes, PoleSeries outside) {
        this.firstDay = firstDay;
        this.nodes = nodes;
        this.outside = outside;
    }

    /**
     * Reads a table: days from J2000.0 to its first day, number of days, then three numbers a day in 1e-11
     * rad.
     */
    static CelestialPole read(InputStream in, PoleSeries outside) throws IOException {
        DataInputStream data = new DataInputStream(in);
        int firstDay = data.readInt();
        int[] nodes = new int[3 * data.readInt()];
        ByteBuffer.wrap(data.readNBytes(nodes.length * Integer.BYTES)).asIntBuffer().get(nodes);
        return new CelestialPole(firstDay, nodes, outside);
    }

    /** The pole at a time counted in seconds of terrestrial time from J2000.0. */
    Pole at(double ttS) {
        double days = ttS / DAY_S - firstDay;
        int before = (int) Math.floor(days);
        double u = days - before;
        double[] weights = {
            -u * (u - 1) * (u - 2) / 6, (u + 1) * (u - 1) * (u - 2) / 2,
            -(u + 1) * u * (u - 2) / 2, (u + 1) * u * (u - 1) / 6};
        boolean inTable = before >= 1 && 3 * (before + 2) + 2 < nodes.length;
        double[] around = inTable ? fromTable(before - 1) : fromSeries(firstDay + before - 1);
        double x = interpolated(around, 0, weights);
        double y = interpolated(around, 1, weights);
        return new Pole(x, y, interpolated(around, 2, weights) - x * y / 2);
    }

    private double[] fromTable(int first) {
        double[] around = new double[12];
        for (int i = 0; i < around.length; i++) {
            around[i] = nodes[3 * first + i] * UNIT_RAD;
        }
        return around;
    }

    private double[] fromSeries(int first) {
        return IntStream.range(first, first + 4).mapToObj(outside::at).flatMapToDouble(Arrays::stream)
                .toArray();
    }

    private static double interpolated(double[] days, int component, double[] weights) {
        return weights[0] * days[component] + weights[1] * days[component + 3] + weights[2] * days[component + 6]
                + weights[3] * days[component + 9];
    }

    /**
     * Pole and origin at one time.
     *
     * @param x first component of the pole's unit vector in the celestial reference system
     * @param y second component
     * @param originRad the celestial intermediate origin locator s
     */
    record Pole(double x, double y, double originRad) {

        /** The pole's unit vector. */
        Vector vector() {
            return new Vector(x, y, Math.sqrt(1 - x * x - y * y));
        }

        /** A vector of the intermediate frame without the locator s, as a celestial one. */
        Vector toCelestial(Vector intermediate) {
            double z = Math.sqrt(1 - x * x - y * y);
            double a = 1 / (1 + z);
            return new Vector(
                    (1 - a * x * x) * intermediate.x() - a * x * y * intermediate.y() + x * intermediate.z(),
                    -a * x * y * intermediate.x() + (1 - a * y * y) * intermediate.y() + y * intermediate.z(),
                    -x * intermediate.x() - y * intermediate.y() + z * intermediate.z());
        }
    }
}
