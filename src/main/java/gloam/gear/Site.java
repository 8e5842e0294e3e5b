package gloam.gear;

import gloam.units.Angle;
import gloam.units.Range;
import java.time.ZoneId;
import java.util.List;

/**
 * A place to photograph from.
 *
 * @param name               its name
 * @param latitude           geodetic latitude on the WGS 84 ellipsoid, north positive, -90° to 90°
 * @param longitude          longitude, east positive, -180° to 180°
 * @param heightM            height over the ellipsoid in metres, -430 to 9000
 * @param zone               the time zone its clocks keep
 * @param darkSkyMagArcsec2  brightness of the moonless zenith, V mag/arcsec², 14 (city) to 22.5 (darkest
 *                           known)
 * @param extinctionMag      light lost at the zenith, V magnitudes per airmass, 0 to 2
 * @param skyline            the terrain around it
 * @param lightDomes         the glow of towns around it, as far as they are known
 * @param skyReadings        measurements of its sky
 * @param zenithSpreadStops  standard deviation of the figure of the zenith, in stops
 */
public record Site(String name, Angle latitude, Angle longitude, double heightM, ZoneId zone,
                   double darkSkyMagArcsec2, double extinctionMag, Skyline skyline,
                   List<LightDome> lightDomes,
                   List<SkyReading> skyReadings, double zenithSpreadStops) {

    /** How well a zenith is known that was not measured on the nights in question. */
    public static final double USUAL_ZENITH_STOPS = 0.3;

    /** Allowed latitudes in degrees. */
    public static final Range LATITUDE = new Range("latitude", -90, 90, "deg");
    /** Allowed longitudes in degrees. */
    public static final Range LONGITUDE = new Range("longitude", -180, 180, "deg");
    /** Allowed heights: from the shore of the lowest lake to the highest summit. */
    public static final Range HEIGHT = new Range("height", -430, 9000, "m");
    /** Allowed brightness of the moonless zenith. */
    public static final Range DARK_SKY = new Range("dark sky", 14, 22.5, "mag/arcsec2");
    /** Allowed extinction at the zenith. */
    public static final Range EXTINCTION = new Range("extinction", 0, 2, "mag");

    /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
    public Site {
        LATITUDE.check(latitude.degrees());
        LONGITUDE.check(longitude.degrees());
        HEIGHT.check(heightM);
        DARK_SKY.check(darkSkyMagArcsec2);
        EXTINCTION.check(extinctionMag);
        lightDomes = List.copyOf(lightDomes);
        skyReadings = List.copyOf(skyReadings);
    }

    /** A site of which no town is known. */
    public Site(String name, Angle latitude, Angle longitude, double heightM, ZoneId zone,
                double darkSkyMagArcsec2, double extinctionMag, Skyline skyline) {
        this(name, latitude, longitude, heightM, zone, darkSkyMagArcsec2, extinctionMag, skyline, List.of(),
                List.of(), USUAL_ZENITH_STOPS);
    }

    /** The same site with towns around it. */
    public Site with(List<LightDome> domes) {
        return new Site(name, latitude, longitude, heightM, zone, darkSkyMagArcsec2, extinctionMag, skyline,
                domes, skyReadings, zenithSpreadStops);
    }

    /** The same site with measurements of its sky. */
    public Site measured(List<SkyReading> readings) {
        return new Site(name, latitude, longitude, heightM, zone, darkSkyMagArcsec2, extinctionMag, skyline,
                lightDomes, readings, zenithSpreadStops);
    }

    /** The same under another dark sky. */
    public Site under(double otherMagArcsec2) {
        return new Site(name, latitude, longitude, heightM, zone, otherMagArcsec2, extinctionMag, skyline,
                lightDomes, skyReadings, zenithSpreadStops);
    }
}
