package gloam.ephemeris.orekit;

import gloam.ephemeris.orekit.JplHeader.Series;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Places of the Sun, the Moon and the planets out of a file in JPL's binary form.
 *
 * <p>The file is a row of records of equal length, each a span of days of Chebyshev series in km for the
 * items of {@link Item}. Time runs in barycentric dynamical time (TDB), in seconds from J2000.0; axes are
 * those of the International Celestial Reference System.
 */
final class JplEphemeris {

    /** What the file has series for, in its own order. */
    enum Item {
        MERCURY, VENUS, EARTH_MOON, MARS, JUPITER, SATURN, URANUS, NEPTUNE, PLUTO, MOON, SUN;

        String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** A place in km and its change in km/s. */
    record State(Vector positionKm, Vector velocityKmS) {
    }

    private static final double J2000_JD = 2451545.0;
    private static final double DAY_S = 86400;
    /** Neptune is 4.5e9 km away. */
    private static final double MOST_COEFFICIENT = 1e11;

    private final double firstS;
    private final double recordS;
    private final double lastS;
    private final double moonShare;
    private final int recordDoubles;
    private final List<Series> series;
    private final double[] coefficients;

    private JplEphemeris(JplHeader header, double[] coefficients) {
        this.moonShare = 1 / (1 + header.earthMoonRatio());
        this.recordDoubles = header.recordDoubles();
        this.series = header.series();
        this.coefficients = coefficients;
        this.firstS = secondsFromJ2000(coefficients[0]);
        this.recordS = header.recordDays() * DAY_S;
        this.lastS = firstS + coefficients.length / recordDoubles * recordS;
    }

    /**
     * Reads a whole file's bytes, in either order of bytes.
     *
     * @throws IOException when they are no such file or lack a body; the message says what is wrong
     */
    static JplEphemeris of(byte[] content) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        JplHeader header = JplHeader.of(bytes);
        int records = bytes.capacity() / Double.BYTES / header.recordDoubles() - JplHeader.RECORDS;
        double[] coefficients = new double[records * header.recordDoubles()];
        bytes.position(JplHeader.RECORDS * header.recordDoubles() * Double.BYTES);
        bytes.asDoubleBuffer().get(coefficients);
        return new JplEphemeris(header, coefficients);
    }

    /**
     * This ephemeris, every record of it looked at.
     *
     * @throws IOException when one does not follow that before it or holds what is no coefficient
     */
    JplEphemeris checked() throws IOException {
        double days = recordS / DAY_S;
        for (int at = 0; at < coefficients.length; at += recordDoubles) {
            double first = coefficients[0] + at / recordDoubles * days;
            if (coefficients[at] != first || coefficients[at + 1] != first + days) {
                throw new IOException("its record " + (at / recordDoubles + 1) + " does not follow the one before");
            }
            if (Arrays.stream(coefficients, at, at + recordDoubles).anyMatch(c -> !(Math.abs(c) < MOST_COEFFICIENT))) {
                throw new IOException("its record " + (at / recordDoubles + 1) + " is damaged");
            }
        }
        return this;
    }

    /** The first time covered. */
    double firstS() {
        return firstS;
    }

    /** The first time no longer covered. */
    double lastS() {
        return lastS;
    }

    /** Place of the Sun or a planet from the solar system's barycentre, in km. */
    Vector positionKm(Item item, double tdbS) {
        Place place = place(item, tdbS);
        double x = 2 * place.x;
        double before = 0;
        double here = 1;
        double sumX = 0;
        double sumY = 0;
        double sumZ = 0;
        for (int k = 0; k < place.size; k++) {
            sumX += here * coefficients[place.at + k];
            sumY += here * coefficients[place.at + place.size + k];
            sumZ += here * coefficients[place.at + 2 * place.size + k];
            double next = k == 0 ? place.x : x * here - before;
            before = here;
            here = next;
        }
        return new Vector(sumX, sumY, sumZ);
    }

    /** Place and motion of the Earth's centre from the solar system's barycentre. */
    State earth(double tdbS) {
        State both = state(Item.EARTH_MOON, tdbS);
        State moon = state(Item.MOON, tdbS);
        return new State(both.positionKm.plusTimes(-moonShare, moon.positionKm),
                both.velocityKmS.plusTimes(-moonShare, moon.velocityKmS));
    }

    /** Place of the Moon's centre from the solar system's barycentre, in km. */
    Vector moonKm(double tdbS) {
        return positionKm(Item.EARTH_MOON, tdbS).plusTimes(1 - moonShare, positionKm(Item.MOON, tdbS));
    }

    /** An item's place and its change: the sums of its polynomials and of their slopes. */
    private State state(Item item, double tdbS) {
        Place place = place(item, tdbS);
        double before = 0;
        double here = 1;
        double slopeBefore = 0;
        double slope = 0;
        double sumX = 0;
        double sumY = 0;
        double sumZ = 0;
        double slopeX = 0;
        double slopeY = 0;
        double slopeZ = 0;
        for (int k = 0; k < place.size; k++) {
            double x = coefficients[place.at + k];
            double y = coefficients[place.at + place.size + k];
            double z = coefficients[place.at + 2 * place.size + k];
            sumX += here * x;
            sumY += here * y;
            sumZ += here * z;
            slopeX += slope * x;
            slopeY += slope * y;
            slopeZ += slope * z;
            double next = k == 0 ? place.x : 2 * place.x * here - before;
            double nextSlope = k == 0 ? 1 : 2 * here + 2 * place.x * slope - slopeBefore;
            before = here;
            here = next;
            slopeBefore = slope;
            slope = nextSlope;
        }
        return new State(new Vector(sumX, sumY, sumZ),
                new Vector(slopeX * place.rate, slopeY * place.rate, slopeZ * place.rate));
    }

    private Place place(Item item, double tdbS) {
        Series of = series.get(item.ordinal());
        double records = (tdbS - firstS) / recordS;
        int record = (int) records;
        double granules = (records - record) * of.granules();
        int granule = (int) granules;
        return new Place(record * recordDoubles + of.start() + granule * 3 * of.size(), of.size(),
                2 * (granules - granule) - 1, 2 * of.granules() / recordS);
    }

    private static double secondsFromJ2000(double julianDay) {
        return (julianDay - J2000_JD) * DAY_S;
    }

    /**
     * Where a time's coefficients begin, how many a component has, the time from -1 to 1, and 1/s of that.
     */
    private record Place(int at, int size, double x, double rate) {
    }
}
