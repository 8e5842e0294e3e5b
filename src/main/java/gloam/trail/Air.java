package gloam.trail;

import gloam.ephemeris.Refraction;
import gloam.units.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The air a camera looks through.
 *
 * @param refraction how far it lifts what is seen, nothing at zero pressure
 */
record Air(Refraction refraction) {

    static final Air NONE = new Air(new Refraction(0, 0));

    static Air at(double heightM) {
        return new Air(Refraction.ofHeight(heightM));
    }

    /** Where that is seen which stands in a direction without air. */
    Vector3D lifted(Vector3D airless) {
        return refraction.pressureHPa() == 0 ? airless
                : atAltitude(airless, refraction.apparent(altitude(airless)));
    }

    /** The direction without air of what is seen in a direction. */
    Vector3D lowered(Vector3D seen) {
        return refraction.pressureHPa() == 0 ? seen : atAltitude(seen, refraction.airless(altitude(seen)));
    }

    private static Angle altitude(Vector3D direction) {
        return Angle.ofRadians(Math.atan2(direction.getZ(), Math.hypot(direction.getX(), direction.getY())));
    }

    /** The direction of that altitude in the same azimuth. */
    private static Vector3D atAltitude(Vector3D direction, Angle altitude) {
        double level = Math.hypot(direction.getX(), direction.getY());
        double share = level == 0 ? 0 : altitude.cos() / level;
        return new Vector3D(share * direction.getX(), share * direction.getY(), altitude.sin());
    }
}
