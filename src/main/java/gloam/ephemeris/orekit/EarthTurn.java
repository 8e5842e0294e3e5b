package gloam.ephemeris.orekit;

import gloam.ephemeris.orekit.CelestialPole.Pole;
import gloam.ephemeris.orekit.EarthOrientation.Values;

/**
 * How the Earth stands among the stars at one time.
 *
 * @param tdbS        the time in seconds of barycentric dynamical time from J2000.0
 * @param cosTurned   cosine of the angle from the intermediate frame, without the locator s, to Greenwich
 * @param sinTurned   sine of that angle
 * @param orientation where the pole stands in the Earth
 * @param pole        where it points among the stars
 */
record EarthTurn(double tdbS, double cosTurned, double sinTurned, Values orientation, Pole pole) {

    private static final double CENTURY_S = 36525 * 86400.0;
    private static final double DAY_S = 86400;
    private static final double TURN_RAD = 2 * Math.PI;
    private static final double ARCSEC_RAD = Math.PI / 180 / 3600;

    /** The turn at a time of the even scale and of UTC, both in seconds from J2000.0. */
    static EarthTurn at(double tdbS, double utcS, Values orientation, Pole pole) {
        double turnedRad = rotationAngleRad(utcS + orientation.ut1MinusUtcS()) - pole.originRad();
        return new EarthTurn(tdbS, Math.cos(turnedRad), Math.sin(turnedRad), orientation, pole);
    }

    /**
     * A vector of the Earth's own axes by the true equator; IERS Conventions (2010), 5.4.1, to first order.
     */
    Vector fromEarth(Vector vector) {
        double x = vector.x() - orientation.xPoleRad() * vector.z();
        double y = vector.y() + orientation.yPoleRad() * vector.z();
        double z = vector.z() + orientation.xPoleRad() * vector.x() - orientation.yPoleRad() * vector.y();
        return new Vector(cosTurned * x - sinTurned * y, sinTurned * x + cosTurned * y, z);
    }

    /** Earth rotation angle: IAU Resolution B1.8 of 2000. */
    static double rotationAngleRad(double ut1S) {
        double days = ut1S / DAY_S;
        double turns = 0.7790572732640 + 0.00273781191135448 * days + (days - Math.floor(days));
        return TURN_RAD * (turns - Math.floor(turns));
    }

    /**
     * The true equator and equinox of date; the equinox is the ascending node of the ecliptic of date.
     *
     * <p><b>Model.</b> Ecliptic pole by the angles of Fukushima and Williams, IAU 2006 (Capitaine, Wallace
     * and Chapront 2003, A&amp;A 412, 567; Hilton et al. 2006). <b>Valid.</b> 1800 to 2200. <b>Error.</b> Below
     * 0.001″. <b>Departures.</b> None.
     */
    Equator equator() {
        double t = tdbS / CENTURY_S;
        double gammaRad = ARCSEC_RAD * (-0.052928 + t * (10.556378 + t * (0.4932044 - t * 0.00031238)));
        double phiRad = ARCSEC_RAD * (84381.412819 + t * (-46.811016 + t * (0.0511268 + t * 0.00053289)));
        Vector eclipticPole = new Vector(Math.sin(phiRad) * Math.sin(gammaRad),
                -Math.sin(phiRad) * Math.cos(gammaRad), Math.cos(phiRad));
        Vector axis = pole.vector();
        Vector equinox = axis.cross(eclipticPole).unit();
        return new Equator(equinox, axis.cross(equinox), axis);
    }

    /**
     * The axes of right ascension and declination, unit vectors.
     *
     * @param equinox  where right ascension begins
     * @param sixHours where it is six hours and declination zero
     * @param pole     where declination is 90°
     */
    record Equator(Vector equinox, Vector sixHours, Vector pole) {
    }
}
