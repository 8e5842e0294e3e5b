package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import gloam.units.Range;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.ITRFVersion;
import org.orekit.frames.ITRFVersionLoader.ITRFVersionConfiguration;
import org.orekit.time.TimeScales;

/** The days of a finals2000A file of the IERS: UT1 and the wandering of the pole, measured and foreseen. */
final class FinalsFile {

    private static final Range UT1 = new Range("UT1 - UTC", -1, 1, "s");
    private static final Range POLE = new Range("the pole's place", -2, 2, "arcsec");
    private static final double ARCSEC_RAD = Math.toRadians(1 / 3600.0);

    private FinalsFile() {
    }

    static UserFile at(Path path) {
        return new UserFile("Earth orientation", path, "Give a finals2000A file of the IERS.");
    }

    /**
     * Its days, up to the first without UT1, which Orekit reads as nought.
     *
     * @throws BadInput when the file cannot be read, is no such file or holds impossible values
     */
    static List<EOPEntry> days(UserFile file, TimeScales scales) {
        EopHistoryLoader.Parser parser = EopHistoryLoader.Parser.newFinalsColumnsParser(
                EarthOrientation.CONVENTIONS, (name, mjd) -> new ITRFVersionConfiguration("",
                        ITRFVersion.ITRF_2020, Integer.MIN_VALUE, Integer.MAX_VALUE), scales, true);
        try {
            List<EOPEntry> days = parser.parse(new ByteArrayInputStream(file.bytes()), "it").stream()
                    .takeWhile(day -> day.getUT1MinusUTC() != 0).toList();
            if (days.size() < 2) {
                throw file.unreadable("it does not hold two or more days");
            }
            days.forEach(day -> check(day, file));
            return days;
        } catch (IOException | OrekitException | IllegalArgumentException e) {
            throw file.unreadable(e);
        }
    }

    private static void check(EOPEntry day, UserFile file) {
        try {
            UT1.check(day.getUT1MinusUTC());
            POLE.check(day.getX() / ARCSEC_RAD);
            POLE.check(day.getY() / ARCSEC_RAD);
        } catch (BadInput outside) {
            throw file.unreadable("on modified Julian date " + day.getMjd() + " " + outside.getMessage());
        }
    }
}
