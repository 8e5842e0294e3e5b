package gloam.support;

import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.units.Angle;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** Sites for tests, each for a reason. */
public final class Places {

    /** The everyday case: night and day all year, the north pole of the sky at mid height. */
    public static final Site MID_NORTH = site("mid north", 44.2, 9.7, 620, "Europe/Rome");
    /** The same in the south: other pole, other way round, other seasons. */
    public static final Site MID_SOUTH = site("mid south", -31.4, 22.3, 1270, "Africa/Johannesburg");
    /** Both poles on the horizon, stars rise straight up, short twilight. */
    public static final Site EQUATOR = site("equator", 0, 36.9, 1750, "Africa/Nairobi");
    /** Polar day and polar night; the Moon too stays up or down for days. */
    public static final Site POLAR = site("polar", 78.2, 15.6, 30, "Arctic/Longyearbyen");
    /** Just west of the 180th meridian, where the local date is nearly a day ahead of that in Greenwich. */
    public static final Site DATE_LINE = site("date line", -16.8, 179.9, 40, "Pacific/Fiji");
    /** Thin air: less refraction, and the height counts in the Moon's parallax. */
    public static final Site HIGH_PLATEAU = site("high plateau", -22.9, -67.8, 4800, "America/La_Paz");
    /** Clocks that differ from Greenwich by a half hour. */
    public static final Site HALF_HOUR_ZONE = site("half-hour zone", 32.8, 78.9, 4300, "Asia/Kolkata");
    /** Clocks change at night twice a year; see {@link #CLOCKS_FORWARD} and {@link #CLOCKS_BACK}. */
    public static final Site CLOCK_CHANGE = site("clock change", 55.2, -2.3, 250, "Europe/London");

    /** Evening of the night of 23 hours at {@link #CLOCK_CHANGE}. */
    public static final LocalDate CLOCKS_FORWARD = LocalDate.of(2027, 3, 27);
    /** Evening of the night of 25 hours at {@link #CLOCK_CHANGE}. */
    public static final LocalDate CLOCKS_BACK = LocalDate.of(2027, 10, 30);

    private static final double DARK_SKY_MAG_ARCSEC2 = 21.6;
    private static final double EXTINCTION_MAG = 0.2;

    private Places() {
    }

    /** All of them. */
    public static List<Site> all() {
        return List.of(MID_NORTH, MID_SOUTH, EQUATOR, POLAR, DATE_LINE, HIGH_PLATEAU, HALF_HOUR_ZONE,
                CLOCK_CHANGE);
    }

    /** A site at coordinates, clocks on UTC, with a dark sky and a flat skyline. */
    public static Site at(double latitudeDeg, double longitudeDeg, double heightM) {
        return site("test site", latitudeDeg, longitudeDeg, heightM, "UTC");
    }

    /** The same in a city, whose zenith of 16 mag/arcsec² outshines what is beyond the air by 200 to 1. */
    public static Site inACity(double latitudeDeg, double longitudeDeg, double heightM) {
        Site dark = at(latitudeDeg, longitudeDeg, heightM);
        return new Site(dark.name(), dark.latitude(), dark.longitude(), heightM, dark.zone(), 16,
                EXTINCTION_MAG, dark.skyline());
    }

    private static Site site(String name, double latitudeDeg, double longitudeDeg, double heightM,
                             String zone) {
        return new Site(name, Angle.ofDegrees(latitudeDeg), Angle.ofDegrees(longitudeDeg), heightM,
                ZoneId.of(zone), DARK_SKY_MAG_ARCSEC2, EXTINCTION_MAG, Skyline.FLAT);
    }
}
