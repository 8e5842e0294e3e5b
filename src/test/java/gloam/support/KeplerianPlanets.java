package gloam.support;

import static java.lang.Math.toRadians;

import gloam.ephemeris.Body;
import java.util.Map;

/**
 * The planets' heliocentric places.
 *
 * <p><b>Model.</b> E. M. Standish, "Keplerian Elements for Approximate Positions of the Major Planets", JPL,
 * table 1.
 * <b>Valid.</b> 1800 to 2050.
 * <b>Error.</b> Seen from the Sun: 15″ (Mercury) to 600″ (Saturn).
 * <b>Departures.</b> Used to 2060; the Earth–Moon barycentre stands for the Earth.
 */
final class KeplerianPlanets {

    /** a (au), e, i, L, perihelion and node (degrees), each followed by its change a Julian century. */
    private static final double[] EARTH = {
        1.00000261, 0.00000562, 0.01671123, -0.00004392, -0.00001531, -0.01294668,
        100.46457166, 35999.37244981, 102.93768193, 0.32327364, 0, 0};

    private static final Map<Body, double[]> ELEMENTS = Map.of(
        Body.MERCURY, new double[] {
            0.38709927, 0.00000037, 0.20563593, 0.00001906, 7.00497902, -0.00594749,
            252.25032350, 149472.67411175, 77.45779628, 0.16047689, 48.33076593, -0.12534081},
        Body.VENUS, new double[] {
            0.72333566, 0.00000390, 0.00677672, -0.00004107, 3.39467605, -0.00078890,
            181.97909950, 58517.81538729, 131.60246718, 0.00268329, 76.67984255, -0.27769418},
        Body.MARS, new double[] {
            1.52371034, 0.00001847, 0.09339410, 0.00007882, 1.84969142, -0.00813131,
            -4.55343205, 19140.30268499, -23.94362959, 0.44441088, 49.55953891, -0.29257343},
        Body.JUPITER, new double[] {
            5.20288700, -0.00011607, 0.04838624, -0.00013253, 1.30439695, -0.00183714,
            34.39644051, 3034.74612775, 14.72847983, 0.21252668, 100.47390909, 0.20469106},
        Body.SATURN, new double[] {
            9.53667594, -0.00125060, 0.05386179, -0.00050991, 2.48599187, 0.00193609,
            49.95424423, 1222.49362201, 92.59887831, -0.41897216, 113.66242448, -0.28867794},
        Body.URANUS, new double[] {
            19.18916464, -0.00196176, 0.04725744, -0.00004397, 0.77263783, -0.00242939,
            313.23810451, 428.48202785, 170.95427630, 0.40805281, 74.01692503, 0.04240589},
        Body.NEPTUNE, new double[] {
            30.06992276, 0.00026291, 0.00859048, 0.00005105, 1.77004347, 0.00035372,
            -55.12002969, 218.45945325, 44.96476227, -0.32241464, 131.78422574, -0.00508664});

    private KeplerianPlanets() {
    }

    /** Place of a planet from the Sun in au, ecliptic and equinox of J2000.0. */
    static Vector fromSun(Body planet, double daysFromJ2000) {
        return place(ELEMENTS.get(planet), daysFromJ2000 / 36525);
    }

    /** Place of the Earth from the Sun in au, ecliptic and equinox of J2000.0. */
    static Vector earthFromSun(double daysFromJ2000) {
        return place(EARTH, daysFromJ2000 / 36525);
    }

    private static Vector place(double[] elements, double centuries) {
        double[] now = new double[6];
        for (int i = 0; i < 6; i++) {
            now[i] = elements[2 * i] + elements[2 * i + 1] * centuries;
        }
        double eccentricity = now[1];
        double anomalyRad = eccentricAnomalyRad(toRadians(now[3] - now[4]), eccentricity);
        double xAu = now[0] * (Math.cos(anomalyRad) - eccentricity);
        double yAu = now[0] * Math.sqrt(1 - eccentricity * eccentricity) * Math.sin(anomalyRad);
        return new Vector(xAu, yAu, 0)
                .turnedAboutZ(-toRadians(now[4] - now[5]))
                .turnedAboutX(-toRadians(now[2]))
                .turnedAboutZ(-toRadians(now[5]));
    }

    private static double eccentricAnomalyRad(double meanAnomalyRad, double eccentricity) {
        double anomalyRad = meanAnomalyRad;
        for (int i = 0; i < 20; i++) {
            anomalyRad -= (anomalyRad - eccentricity * Math.sin(anomalyRad) - meanAnomalyRad)
                    / (1 - eccentricity * Math.cos(anomalyRad));
        }
        return anomalyRad;
    }
}
