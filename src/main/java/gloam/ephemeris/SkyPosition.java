package gloam.ephemeris;

import gloam.units.Angle;

/**
 * Where a target stands, seen from a site: apparent and topocentric, light-time and aberration included.
 *
 * @param azimuth          from north through east, 0 (included) to 360° (left out)
 * @param airlessAltitude  altitude over the level horizon as it would be without air, -90° to 90°
 * @param apparentAltitude altitude as seen through the air of the site
 * @param rightAscension   of the true equator and equinox of date, airless, 0 (included) to 360° (left out)
 * @param declination      of the true equator of date, airless, -90° to 90°
 * @param distanceKm       from the site, in km; infinite for a star
 */
public record SkyPosition(Angle azimuth, Angle airlessAltitude, Angle apparentAltitude, Angle rightAscension,
                          Angle declination, double distanceKm) {

    /** The direction in which it is seen, refraction included. */
    public Direction apparentDirection() {
        return new Direction(azimuth, apparentAltitude);
    }
}
