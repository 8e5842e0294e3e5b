package gloam.ephemeris.orekit;

import gloam.units.Angle;
import gloam.units.Interval;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * What is measured of the Earth's rotation: UT1 and the wandering of the pole in the Earth, day by day.
 *
 * <p>Between the days it is taken as linear; the Earth's tides leave 0.1 ms of UT1 and 0.001″ out by that.
 */
final class EarthOrientation {

    private static final double DAY_S = 86400;
    private static final int J2000_MJD_NOON = 51544;
    private static final double HALF_DAY = 0.5;
    private static final double ARCSEC_IN_DEG = 3600;

    /** One day's values. */
    private record Day(double ut1MinusTaiS, double xPoleRad, double yPoleRad) {
    }

    private final int firstMjd;
    private final List<Day> days;

    private EarthOrientation(int firstMjd, List<Day> days) {
        this.firstMjd = firstMjd;
        this.days = days;
    }

    /** Reads a file in the columns of the IERS's finals2000A; the first day without UT1 ends it. */
    static EarthOrientation read(Path path, LeapSeconds leapSeconds) {
        UserFile file = new UserFile("Earth orientation", path, "Give a finals2000A file of the IERS.");
        try {
            List<FinalsLine> lines = FinalsLine.of(path, new String(file.bytes(), StandardCharsets.ISO_8859_1));
            return new EarthOrientation(lines.get(0).mjd(),
                    lines.stream().map(line -> day(line, leapSeconds)).toList());
        } catch (IOException e) {
            throw file.unreadable(e);
        }
    }

    /** The time for which there are values. */
    Interval covers() {
        return new Interval(midnight(firstMjd), midnight(firstMjd + days.size() - 1));
    }

    /**
     * The Earth's orientation at an instant it covers, in seconds of UTC from J2000.0 with TAI − UTC then.
     */
    Values at(double utcS, double taiMinusUtcS) {
        double mjd = utcS / DAY_S + J2000_MJD_NOON + HALF_DAY - firstMjd;
        int before = Math.min((int) mjd, days.size() - 2);
        double share = mjd - before;
        Day one = days.get(before);
        Day next = days.get(before + 1);
        return new Values(mix(one.ut1MinusTaiS, next.ut1MinusTaiS, share) + taiMinusUtcS,
                mix(one.xPoleRad, next.xPoleRad, share), mix(one.yPoleRad, next.yPoleRad, share));
    }

    private static Day day(FinalsLine line, LeapSeconds leapSeconds) {
        return new Day(line.ut1MinusUtcS() - leapSeconds.taiMinusUtcS(midnight(line.mjd())),
                Angle.ofDegrees(line.xPoleArcsec() / ARCSEC_IN_DEG).radians(),
                Angle.ofDegrees(line.yPoleArcsec() / ARCSEC_IN_DEG).radians());
    }

    private static Instant midnight(int mjd) {
        return LeapSeconds.NOON_2000.plusSeconds((long) ((mjd - J2000_MJD_NOON - HALF_DAY) * DAY_S));
    }

    private static double mix(double one, double next, double share) {
        return one + share * (next - one);
    }

    /**
     * Orientation at one time.
     *
     * @param ut1MinusUtcS  in seconds
     * @param xPoleRad      the pole's place in the Earth, along the meridian of Greenwich
     * @param yPoleRad      and along 90° west
     */
    record Values(double ut1MinusUtcS, double xPoleRad, double yPoleRad) {

        /** Where nothing is known: within 0.9 s and 0.5″ of the truth. */
        static final Values UNKNOWN = new Values(0, 0, 0);
    }
}
