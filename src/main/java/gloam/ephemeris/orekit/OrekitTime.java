package gloam.ephemeris.orekit;

import java.util.List;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.OffsetModel;
import org.orekit.time.TimeScales;

/** Orekit's time scales on Gloam's leap seconds, without Orekit's global data context. */
record OrekitTime(TimeScales scales) {

    /** Scales with those leap seconds, UT1 taken as UTC. */
    static OrekitTime of(LeapSeconds leapSeconds) {
        List<OffsetModel> offsets = leapSeconds.offsets();
        return new OrekitTime(TimeScales.of(offsets, (conventions, scales) -> List.of()));
    }

    /** The date of a time in seconds of terrestrial time from J2000.0. */
    AbsoluteDate date(double ttS) {
        return new AbsoluteDate(scales.getJ2000Epoch(), ttS);
    }
}
