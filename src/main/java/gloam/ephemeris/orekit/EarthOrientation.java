package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.ITRFVersion;
import org.orekit.frames.ITRFVersionLoader.ITRFVersionConfiguration;
import org.orekit.utils.IERSConventions;

/**
 * What is measured of the Earth's rotation: UT1 and the wandering of the pole in the Earth, day by day.
 *
 * <p>Between the days it is taken as linear; the Earth's tides leave 0.1 ms of UT1 and 0.001″ out by that.
 */
final class EarthOrientation {

    private static final double DAY_S = 86400;
    private static final int J2000_MJD_NOON = 51544;
    private static final double HALF_DAY = 0.5;

    /** One day's values. */
    private record Day(double ut1MinusTaiS, double xPoleRad, double yPoleRad) {
    }

    private final int firstMjd;
    private final List<Day> days;

    private EarthOrientation(int firstMjd, List<Day> days) {
        this.firstMjd = firstMjd;
        this.days = days;
    }

    /** Reads a file in the columns of the IERS's finals2000A; days without UT1 end it. */
    static EarthOrientation read(Path file, LeapSeconds leapSeconds) {
        try (InputStream in = Files.newInputStream(file)) {
            List<EOPEntry> entries = EopHistoryLoader.Parser.newFinalsColumnsParser(IERSConventions.IERS_2010,
                    (name, mjd) -> new ITRFVersionConfiguration("", ITRFVersion.ITRF_2020, Integer.MIN_VALUE,
                            Integer.MAX_VALUE), OrekitTime.of(leapSeconds).scales(), true)
                    .parse(in, file.toString()).stream().sorted(Comparator.comparingInt(EOPEntry::getMjd))
                    .toList();
            if (entries.size() < 2
                    || last(entries).getMjd() - entries.get(0).getMjd() != entries.size() - 1) {
                throw new BadInput("Earth orientation " + file
                        + " does not hold two or more days without gaps. "
                        + "Give a finals2000A file of the IERS.");
            }
            return new EarthOrientation(entries.get(0).getMjd(),
                    entries.stream().map(entry -> day(entry, leapSeconds)).toList());
        } catch (IOException | OrekitException e) {
            throw Unreadable.of("Earth orientation", file, e, "Give a finals2000A file of the IERS.");
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

    private static Day day(EOPEntry entry, LeapSeconds leapSeconds) {
        return new Day(entry.getUT1MinusUTC() - leapSeconds.taiMinusUtcS(midnight(entry.getMjd())),
                entry.getX(), entry.getY());
    }

    private static EOPEntry last(List<EOPEntry> entries) {
        return entries.get(entries.size() - 1);
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
