package gloam.ephemeris.orekit;

import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.utils.Constants;

/** Light on its way from the bodies and stars to a site. */
final class Sightings {

    private static final double YEAR_S = Constants.JULIAN_YEAR;
    private static final double AU_KM = Constants.IAU_2012_ASTRONOMICAL_UNIT / 1000;
    private static final double MAS_RAD = Math.toRadians(1 / 3.6e6);
    /** Light-time is found to this; the fastest planet moves 50 m in it. */
    private static final double LIGHT_TIME_TOLERANCE_S = 1e-3;

    private final SolarSystem solarSystem;

    Sightings(SolarSystem solarSystem) {
        this.solarSystem = solarSystem;
    }

    Sighting of(Target target, Topocentre from) {
        return target instanceof Star star ? of(star, from) : of((Body) target, from);
    }

    /** A star, moved by its proper motion and shifted by its parallax. */
    private static Sighting of(Star star, Topocentre from) {
        double rightAscensionRad = Math.toRadians(star.rightAscensionDeg());
        Vector3D there = new Vector3D(rightAscensionRad, Math.toRadians(star.declinationDeg()));
        Vector3D east = new Vector3D(-Math.sin(rightAscensionRad), Math.cos(rightAscensionRad), 0);
        double motionRad = MAS_RAD * from.ttS() / YEAR_S;
        Vector3D moved = new Vector3D(1, there, star.properMotionRaMasYr() * motionRad, east,
                star.properMotionDecMasYr() * motionRad, there.crossProduct(east),
                -star.parallaxMas() * MAS_RAD / AU_KM, from.positionKm()).normalize();
        return new Sighting(from.aberrated(from.bent(moved, moved)), Double.POSITIVE_INFINITY, from.ttS());
    }

    private Sighting of(Body body, Topocentre from) {
        double leftS = from.ttS() - usualLightTimeS(body);
        Vector3D way = solarSystem.positionKm(body, leftS).subtract(from.positionKm());
        double distanceKm = way.getNorm();
        while (Math.abs(from.ttS() - distanceKm / Topocentre.LIGHT_KM_S - leftS) > LIGHT_TIME_TOLERANCE_S) {
            leftS = from.ttS() - distanceKm / Topocentre.LIGHT_KM_S;
            way = solarSystem.positionKm(body, leftS).subtract(from.positionKm());
            distanceKm = way.getNorm();
        }
        Vector3D direction = way.scalarMultiply(1 / distanceKm);
        boolean bends = body != Body.SUN && body != Body.MOON;
        Vector3D fromSun = way.add(from.positionKm()).subtract(from.sunKm());
        Vector3D bent = bends ? from.bent(direction, fromSun.normalize()) : direction;
        return new Sighting(from.aberrated(bent), distanceKm, leftS);
    }

    /**
     * How a sighted body is lit: from where the Sun appears to the body, whose motion shifts the Sun as the
     * site's shifts the body.
     */
    Look look(Body body, Sighting sighting, Topocentre from) {
        Vector3D fromSunKm = solarSystem.positionKm(body, sighting.leftS()).subtract(from.sunKm());
        double litS = sighting.leftS() - fromSunKm.getNorm() / Topocentre.LIGHT_KM_S;
        Vector3D seenFromSunKm = solarSystem.positionKm(body, litS).subtract(from.sunKm());
        return new Look(body, sighting.leftS(), seenFromSunKm.negate(),
                sighting.direction().scalarMultiply(-sighting.distanceKm()));
    }

    private static double usualLightTimeS(Body body) {
        return switch (body) {
            case SUN -> 499;
            case MOON -> 1.28;
            default -> 0;
        };
    }
}
