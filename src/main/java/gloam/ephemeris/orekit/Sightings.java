package gloam.ephemeris.orekit;

import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.ephemeris.orekit.JplEphemeris.Item;
import java.util.EnumMap;
import java.util.Map;

/** Light on its way from the bodies and stars to an observer. */
final class Sightings {

    private static final double YEAR_S = 365.25 * 86400;
    private static final double AU_KM = 149_597_870.7;
    private static final double MAS_RAD = Math.toRadians(1 / 3.6e6);
    /** Light-time is found to this; the fastest planet moves 50 m in it. */
    private static final double LIGHT_TIME_TOLERANCE_S = 1e-3;
    private static final Map<Body, Item> ITEMS = new EnumMap<>(Body.class);

    static {
        for (Body body : Body.values()) {
            ITEMS.put(body, Item.valueOf(body.name()));
        }
    }

    private final JplEphemeris planets;

    Sightings(JplEphemeris planets) {
        this.planets = planets;
    }

    JplEphemeris planets() {
        return planets;
    }

    Observer observer(GroundPoint ground, EarthTurn turn) {
        return Observer.of(ground, turn, planets);
    }

    Sighting of(Target target, Observer observer) {
        return target instanceof Star star ? of(star, observer) : of((Body) target, observer);
    }

    /** A star, moved by its proper motion and shifted by its parallax. */
    private static Sighting of(Star star, Observer observer) {
        double rightAscensionRad = Math.toRadians(star.rightAscensionDeg());
        double declinationRad = Math.toRadians(star.declinationDeg());
        Vector there = Vector.ofAngles(rightAscensionRad, declinationRad);
        Vector east = new Vector(-Math.sin(rightAscensionRad), Math.cos(rightAscensionRad), 0);
        double years = observer.tdbS() / YEAR_S;
        Vector moved = there.plus(east.times(star.properMotionRaMasYr() * MAS_RAD * years))
                .plus(there.cross(east).times(star.properMotionDecMasYr() * MAS_RAD * years))
                .minus(observer.positionKm().times(star.parallaxMas() * MAS_RAD / AU_KM)).unit();
        return new Sighting(observer.aberrated(observer.bent(moved, moved)), Double.POSITIVE_INFINITY,
                observer.tdbS());
    }

    private Sighting of(Body body, Observer observer) {
        double leftS = observer.tdbS() - usualLightTimeS(body);
        Vector way = barycentricKm(body, leftS).minus(observer.positionKm());
        double distanceKm = way.length();
        while (Math.abs(observer.tdbS() - distanceKm / Observer.LIGHT_KM_S - leftS) > LIGHT_TIME_TOLERANCE_S) {
            leftS = observer.tdbS() - distanceKm / Observer.LIGHT_KM_S;
            way = barycentricKm(body, leftS).minus(observer.positionKm());
            distanceKm = way.length();
        }
        Vector direction = way.times(1 / distanceKm);
        boolean bends = body != Body.SUN && body != Body.MOON;
        Vector bent = bends
                ? observer.bent(direction, way.plus(observer.positionKm()).minus(observer.sunKm()).unit()) : direction;
        return new Sighting(observer.aberrated(bent), distanceKm, leftS);
    }

    /**
     * How a sighted body is lit: from where the Sun appears to the body, whose motion shifts the Sun as the
     * observer's shifts the body.
     */
    Look look(Body body, Sighting sighting, Observer observer) {
        Vector fromSunKm = barycentricKm(body, sighting.leftS()).minus(observer.sunKm());
        double litS = sighting.leftS() - fromSunKm.length() / Observer.LIGHT_KM_S;
        Vector seenFromSunKm = barycentricKm(body, litS).minus(observer.sunKm());
        return new Look(body, sighting.leftS(), seenFromSunKm.times(-1),
                sighting.direction().times(-sighting.distanceKm()));
    }

    private static double usualLightTimeS(Body body) {
        return switch (body) {
            case SUN -> 499;
            case MOON -> 1.28;
            default -> 0;
        };
    }

    private Vector barycentricKm(Body body, double tdbS) {
        return body == Body.MOON ? planets.moonKm(tdbS) : planets.positionKm(ITEMS.get(body), tdbS);
    }
}
