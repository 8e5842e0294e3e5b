package gloam.light;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import java.time.Instant;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The axes of the International Celestial Reference System over a site's horizon, to the aberration of 20″.
 *
 * @param origin towards right ascension 0, declination 0
 * @param east   towards right ascension 90°, declination 0
 * @param north  towards the pole
 */
record CelestialFrame(Vector3D origin, Vector3D east, Vector3D north) {

    private static final Star ORIGIN = Star.at("origin", 0, 0);
    private static final Star EAST = Star.at("east", 90, 0);
    private static final Star NORTH = Star.at("north", 0, 90);

    static CelestialFrame of(Ephemeris ephemeris, Site site, Instant at) {
        return new CelestialFrame(ephemeris.sightline(ORIGIN, site, at).direction(),
                ephemeris.sightline(EAST, site, at).direction(), ephemeris.sightline(NORTH, site, at)
                .direction());
    }

    /** What stands in a direction over the horizon, among the stars. */
    Vector3D amongStars(Vector3D overHorizon) {
        return new Vector3D(overHorizon.dotProduct(origin), overHorizon.dotProduct(east),
                overHorizon.dotProduct(north));
    }
}
