package gloam.ephemeris.orekit;

/**
 * How a planet's globe stands among the stars, for what its brightness depends on.
 *
 * <p><b>Model.</b> IAU Working Group on Cartographic Coordinates and Rotational Elements, report of 2009
 * (Archinal et al. 2011, Celest. Mech. Dyn. Astr. 109, 101). <b>Valid.</b> 1900 to 2100. <b>Error.</b> Below
 * 0.1°. <b>Departures.</b> None for the three planets here.
 *
 * @param pole  its north pole
 * @param node  the node of its equator on that of the celestial reference system
 * @param turnedDeg angle from the node eastward to the prime meridian
 * @param flattening of its globe
 */
record PlanetAxis(Vector pole, Vector node, double turnedDeg, double flattening) {

    private static final double DAY_S = 86400;
    private static final double CENTURY_S = 36525 * DAY_S;

    /** Mars at a time counted in seconds from J2000.0. */
    static PlanetAxis mars(double tdbS) {
        double t = tdbS / CENTURY_S;
        return of(317.68143 - 0.1061 * t, 52.88650 - 0.0609 * t, 176.630 + 350.89198226 * tdbS / DAY_S,
                0.00589);
    }

    /** Saturn at a time counted in seconds from J2000.0. */
    static PlanetAxis saturn(double tdbS) {
        double t = tdbS / CENTURY_S;
        return of(40.589 - 0.036 * t, 83.537 - 0.004 * t, 38.90 + 810.7939024 * tdbS / DAY_S, 0.09796);
    }

    /** Uranus at a time counted in seconds from J2000.0. */
    static PlanetAxis uranus(double tdbS) {
        return of(257.311, -15.175, 203.81 - 501.1600928 * tdbS / DAY_S, 0.02293);
    }

    private static PlanetAxis of(double poleRaDeg, double poleDecDeg, double turnedDeg, double flattening) {
        double raRad = Math.toRadians(poleRaDeg);
        return new PlanetAxis(Vector.ofAngles(raRad, Math.toRadians(poleDecDeg)),
                new Vector(-Math.sin(raRad), Math.cos(raRad), 0), turnedDeg, flattening);
    }

    /**
     * West longitude of the point of the globe below what stands in a direction from its centre, 0 to 360.
     */
    double westDeg(Vector outward) {
        double eastOfNodeDeg = Math.toDegrees(Math.atan2(outward.dot(pole.cross(node)), outward.dot(node)));
        double westDeg = (turnedDeg - eastOfNodeDeg) % 360;
        return westDeg < 0 ? westDeg + 360 : westDeg;
    }

    /** Latitude of that point as seen from the planet's centre. */
    double centricDeg(Vector outward) {
        return Math.toDegrees(Math.asin(outward.unit().dot(pole)));
    }

    /** Latitude of that point by the vertical of the flattened globe. */
    double graphicDeg(Vector outward) {
        double round = 1 - flattening;
        return Math.toDegrees(Math.atan(Math.tan(Math.toRadians(centricDeg(outward))) / (round * round)));
    }
}
