package gloam.ephemeris.orekit;

import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.orekit.bodies.CelestialBodies;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;

/** Sun, Moon and planets by the files of the jar, one for each year with a record to spare on either side. */
final class YearlyFiles implements PlanetSource {

    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2059;
    /** The records are those of DE405; one begins on 1999-12-24. */
    private static final double RECORD_START_S = -8.5 * Constants.JULIAN_DAY;

    private final EarthOrientation earthOrientation;
    private final Map<Integer, CelestialBodies> years = new ConcurrentHashMap<>();

    YearlyFiles(EarthOrientation earthOrientation) {
        this.earthOrientation = earthOrientation;
    }

    @Override
    public Interval covers() {
        return new Interval(startOf(FIRST_YEAR), startOf(LAST_YEAR + 1));
    }

    @Override
    public double originS() {
        return RECORD_START_S;
    }

    @Override
    public CelestialBodies at(AbsoluteDate date) {
        int year = date.getComponents(earthOrientation.scales().getTT()).getDate().getYear();
        return years.computeIfAbsent(Math.max(FIRST_YEAR, Math.min(LAST_YEAR, year)),
                there -> earthOrientation.bodies(DataFile.builtIn("unxp" + there + ".405")));
    }

    @Override
    public RuntimeException lacking(String body, AbsoluteDate date) {
        return new IllegalStateException("the jar has no sound place of " + body + " for " + date);
    }

    private static Instant startOf(int year) {
        return LocalDate.ofYearDay(year, 1).atStartOfDay().toInstant(ZoneOffset.UTC);
    }
}
