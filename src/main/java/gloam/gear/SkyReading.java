package gloam.gear;

import gloam.units.Angle;
import gloam.units.Range;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A measurement of the sky over a site.
 *
 * @param at         when
 * @param azimuth    where the meter pointed, from north through east
 * @param altitude   how high, 5° to 90°
 * @param magArcsec2 what it showed, V mag/arcsec², 12 to 23
 * @param spreadMag  its standard deviation in mag, 0.01 to 2
 * @param leftMag    by how much the sky as fitted is darker, in mag; empty before it is fitted
 * @param twilight   what the fit makes of that evening's twilight; empty where it was measured at night
 */
public record SkyReading(Instant at, Angle azimuth, Angle altitude, double magArcsec2, double spreadMag,
                         OptionalDouble leftMag, Optional<Twilight> twilight) {

    /** Allowed altitudes. */
    public static final Range ALTITUDE = new Range("altitude of the measured sky", 5, 90, "deg");
    /** Allowed brightness. */
    public static final Range BRIGHTNESS = new Range("measured sky", 12, 23, "mag/arcsec2");
    /** Allowed errors. */
    public static final Range SPREAD = new Range("error of the measured sky", 0.01, 2, "mag");
    /** What a sky-quality meter is good to; common practice, no source. */
    public static final double USUAL_SPREAD_MAG = 0.1;

    /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
    public SkyReading {
        Skyline.AZIMUTH.check(azimuth.degrees());
        ALTITUDE.check(altitude.degrees());
        BRIGHTNESS.check(magArcsec2);
        SPREAD.check(spreadMag);
    }

    /** A measurement before it is fitted. */
    public SkyReading(Instant at, Angle azimuth, Angle altitude, double magArcsec2, double spreadMag) {
        this(at, azimuth, altitude, magArcsec2, spreadMag, OptionalDouble.empty(), Optional.empty());
    }

    /**
     * A twilight as it was measured.
     *
     * @param brighterStops by how much it is brighter than usual; minus is darker
     * @param spreadStops   standard deviation of that
     */
    public record Twilight(double brighterStops, double spreadStops) {
    }

    /** The same with what a fit leaves of it. */
    public SkyReading left(double mag) {
        return new SkyReading(at, azimuth, altitude, magArcsec2, spreadMag, OptionalDouble.of(mag), twilight);
    }

    /** The same of such a twilight. */
    public SkyReading of(Twilight evening) {
        return new SkyReading(at, azimuth, altitude, magArcsec2, spreadMag, leftMag, Optional.of(evening));
    }
}
