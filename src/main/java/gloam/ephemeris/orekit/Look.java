package gloam.ephemeris.orekit;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.MoonMagnitude;
import gloam.ephemeris.PlanetMagnitude;
import gloam.ephemeris.PlanetMagnitude.View;
import gloam.ephemeris.SkyPosition;
import gloam.units.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * How a body is lit and seen at one time.
 *
 * @param body       which body
 * @param leftS       when its light left it, in seconds from J2000.0
 * @param toSunKm    the Sun as it appears from the body
 * @param toSiteKm   the observer from the body, in the direction from which the body appears
 */
record Look(Body body, double leftS, Vector3D toSunKm, Vector3D toSiteKm) {

    private static final double AU_KM = 149_597_870.7;
    private static final double YEAR_S = 365.25 * 86400;
    /** V magnitude of the Sun at one au: Allen's Astrophysical Quantities, 4th ed. */
    private static final double SUN_MAG = -26.74;
    /** Inclination of the ecliptic of J2000.0, IAU 2006. */
    private static final double OBLIQUITY_RAD = Math.toRadians(84381.406 / 3600);

    Appearance at(SkyPosition position, SolarSystem solarSystem) {
        double phaseRad = body == Body.SUN ? 0 : Vector3D.angle(toSunKm, toSiteKm);
        return new Appearance(body, position, Angle.ofRadians(phaseRad), (1 + Math.cos(phaseRad)) / 2,
                magnitude(Math.toDegrees(phaseRad), solarSystem),
                Angle.ofRadians(Math.asin(radiusKm() / toSiteKm.getNorm())));
    }

    private double magnitude(double phaseDeg, SolarSystem solarSystem) {
        View view = new View(toSunKm.getNorm() / AU_KM, toSiteKm.getNorm() / AU_KM, phaseDeg);
        return switch (body) {
            case SUN -> SUN_MAG + 5 * Math.log10(view.fromObserverAu());
            case MOON -> MoonMagnitude.of(phaseDeg, toSiteKm.getNorm());
            case MERCURY -> PlanetMagnitude.mercury(view);
            case VENUS -> PlanetMagnitude.venus(view);
            case MARS -> mars(view, solarSystem.axis(body, leftS));
            case JUPITER -> PlanetMagnitude.jupiter(view);
            case SATURN -> saturn(view, solarSystem.axis(body, leftS));
            case URANUS -> uranus(view, solarSystem.axis(body, leftS));
            case NEPTUNE -> PlanetMagnitude.neptune(view, 2000 + leftS / YEAR_S);
        };
    }

    private double mars(View view, PlanetAxis axis) {
        double eclipticDeg = Math.toDegrees(Math.atan2(
                -toSunKm.getY() * Math.cos(OBLIQUITY_RAD) - toSunKm.getZ() * Math.sin(OBLIQUITY_RAD),
                -toSunKm.getX()));
        return PlanetMagnitude.mars(view, axis.westDeg(toSiteKm), axis.westDeg(toSunKm), eclipticDeg);
    }

    private double saturn(View view, PlanetAxis axis) {
        return PlanetMagnitude.saturn(view, axis.centricDeg(toSiteKm), axis.centricDeg(toSunKm));
    }

    private double uranus(View view, PlanetAxis axis) {
        return PlanetMagnitude.uranus(view, axis.uranographicDeg(toSiteKm), axis.uranographicDeg(toSunKm));
    }

    /** Equatorial radius in km: IAU 2015 Resolution B3 (Sun), IAU working group 2009 (the others). */
    private double radiusKm() {
        return switch (body) {
            case SUN -> 695_700;
            case MOON -> 1737.4;
            case MERCURY -> 2439.7;
            case VENUS -> 6051.8;
            case MARS -> 3396.19;
            case JUPITER -> 71_492;
            case SATURN -> 60_268;
            case URANUS -> 25_559;
            case NEPTUNE -> 24_764;
        };
    }
}
