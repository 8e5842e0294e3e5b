package gloam.ephemeris.orekit;

import java.util.HashMap;
import java.util.Map;
import org.orekit.time.TimeVectorFunction;
import org.orekit.utils.IERSConventions;

/** Orekit's full series of the celestial pole, day by day, loaded when the first day is asked for. */
final class PoleSeries {

    private static final double DAY_S = 86400;

    private final LeapSeconds leapSeconds;
    private final Map<Integer, double[]> known = new HashMap<>();
    private Loaded loaded;

    PoleSeries(LeapSeconds leapSeconds) {
        this.leapSeconds = leapSeconds;
    }

    /** X, Y and s + XY/2 in radians at noon TT of a day counted from J2000.0. */
    synchronized double[] at(int day) {
        if (loaded == null) {
            OrekitTime time = OrekitTime.of(leapSeconds);
            loaded = new Loaded(time, IERSConventions.IERS_2010.getXYSpXY2Function(time.scales()));
        }
        return known.computeIfAbsent(day, key -> loaded.series.value(loaded.time.date(key * DAY_S)));
    }

    private record Loaded(OrekitTime time, TimeVectorFunction series) {
    }
}
