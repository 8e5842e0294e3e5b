package gloam.ephemeris.orekit;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What an observer sees of a target.
 *
 * @param direction  apparent direction, a unit vector in the celestial reference system
 * @param distanceKm way of the light that arrives, infinite for a star
 * @param leftS      when the light left a body, in seconds from J2000.0
 */
record Sighting(Vector3D direction, double distanceKm, double leftS) {
}
