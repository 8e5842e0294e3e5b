package gloam.frame;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A star or planet as it is seen over a site.
 *
 * @param name      its name
 * @param direction where it is seen, towards east (x), north (y) and the zenith (z)
 * @param magnitude how bright it is seen, what the air takes included
 */
public record SkyStar(String name, Vector3D direction, double magnitude) {

    private static final List<Body> PLANETS =
            List.of(Body.MERCURY, Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN);

    /** Those of a catalogue and the planets that stand over the horizon, brightest first. */
    public static List<SkyStar> over(Ephemeris ephemeris, Site site, Instant at, List<Star> catalogue) {
        List<SkyStar> stars = new ArrayList<>();
        for (Star star : catalogue) {
            add(stars, site, star.name(), ephemeris.position(star, site, at).apparentDirection(),
                    star.magnitude());
        }
        for (Body planet : PLANETS) {
            Appearance seen = ephemeris.appearance(planet, site, at);
            add(stars, site, planet.name().charAt(0) + planet.name().substring(1).toLowerCase(Locale.ROOT),
                    seen.position().apparentDirection(), seen.magnitude());
        }
        stars.sort(Comparator.comparingDouble(SkyStar::magnitude));
        return stars;
    }

    private static void add(List<SkyStar> stars, Site site, String name, Direction seen, double magnitude) {
        if (seen.altitude().radians() > 0) {
            stars.add(new SkyStar(name, seen.vector(), magnitude
                    + Atmosphere.lossMag(site.extinctionMag(), seen.altitude())));
        }
    }
}
