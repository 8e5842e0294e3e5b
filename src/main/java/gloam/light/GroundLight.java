package gloam.light;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import gloam.units.Range;
import java.time.Instant;

/**
 * Illuminance of level open ground by Sun, Moon and dark sky.
 *
 * <p><b>Model.</b> Polynomials of the Explanatory Supplement to the Astronomical Almanac (Seidelmann 1992;
 * Urban and Seidelmann 2013, p. 518): clear sky, sea level. <b>Valid.</b> Sun from −18°, Moon from −0.8°
 * up. <b>Error.</b> 0.03 in the logarithm against its own data; a factor of two between published models
 * late in twilight. <b>Departures.</b> The supplement's night value at −18° is taken off and the site's own
 * dark sky put in; below −0.8° the Moon fades as the Sun does; within 7° of full it has
 * the opposition surge of the moonlit sky, which measured maxima of 0.32 lx do not all show.
 */
public final class GroundLight {

    /** Allowed reflectances of a matt surface. */
    public static final Range REFLECTANCE = new Range("reflectance", 0.01, 1, "");

    private static final double EARTH_RADIUS_KM = 6378.137;
    private static final double MEAN_MOON_PARALLAX_DEG = 0.951;
    private static final double LOWEST_SUN_DEG = -18;
    private static final double LOWEST_MOON_DEG = -0.8;

    private static final Polynomial[] SUN = {
        new Polynomial(20, 3.74, 3.97, -4.07, 1.47),
        new Polynomial(5, 3.05, 13.28, -45.98, 64.33),
        new Polynomial(-0.8, 2.88, 22.26, -207.64, 1034.30),
        new Polynomial(-5, 2.88, 21.81, -258.11, -858.36),
        new Polynomial(-12, 2.70, 12.17, -431.69, -1899.83),
        new Polynomial(LOWEST_SUN_DEG, 13.84, 262.72, 1447.42, 2797.93),
    };
    private static final Polynomial[] MOON = {
        new Polynomial(20, -1.95, 4.06, -4.24, 1.56),
        new Polynomial(5, -2.58, 12.58, -42.58, 59.06),
        new Polynomial(LOWEST_MOON_DEG, -2.79, 24.27, -252.95, 1321.29),
    };

    private final SkyLight sky;

    /** The ground at a site. */
    public GroundLight(Ephemeris ephemeris, Site site) {
        this.sky = new SkyLight(ephemeris, site);
    }

    /** Illuminance of level ground in lux, by all that lights the sky. */
    public double lux(Instant at) {
        return Math.PI * reflecting(1, at).total().cdM2();
    }

    /** Luminance of level matt ground that throws back that share of the light. */
    public SkyBrightness landscape(double reflectance, Instant at) {
        return reflecting(reflectance, at).total();
    }

    /** The same by its sources. */
    public SkyLight.Sample reflecting(double reflectance, Instant at) {
        return sky.moment(at).ground(REFLECTANCE.check(reflectance));
    }

    /** What twilight at an altitude of the Sun adds to the night, in lx. */
    static double twilightLx(double sunDeg) {
        return sunDeg > LOWEST_SUN_DEG ? sunLx(sunDeg) - sunLx(LOWEST_SUN_DEG) : 0;
    }

    /** What the Moon adds, in lx. */
    static double moonLx(Appearance moon) {
        SkyPosition position = moon.position();
        double altitudeDeg = position.airlessAltitude().degrees();
        double parallaxDeg = Math.toDegrees(Math.asin(EARTH_RADIUS_KM / geocentricKm(position)));
        double upDeg = Math.max(LOWEST_MOON_DEG, altitudeDeg);
        double sunken = altitudeDeg < upDeg ? sunLx(Math.max(LOWEST_SUN_DEG, altitudeDeg)) / sunLx(upDeg) : 1;
        double phaseDeg = moon.phaseAngle().degrees();
        return sunken * MoonGlow.surge(phaseDeg) * moonLx(upDeg, phaseDeg, parallaxDeg);
    }

    private static double geocentricKm(SkyPosition fromSite) {
        double km = fromSite.distanceKm();
        return Math.sqrt(km * km + EARTH_RADIUS_KM * EARTH_RADIUS_KM
                + 2 * km * EARTH_RADIUS_KM * fromSite.airlessAltitude().sin());
    }

    /** Illuminance in lux by Sun and sky, the night included, for an altitude of the Sun from −18° to 90°. */
    static double sunLx(double altitudeDeg) {
        return Math.pow(10, Polynomial.log10(SUN, altitudeDeg));
    }

    /** Illuminance in lux by Moon and moonlit sky, for an altitude of the Moon from −0.8° to 90°. */
    static double moonLx(double altitudeDeg, double phaseDeg, double parallaxDeg) {
        return Math.pow(10, Polynomial.log10(MOON, altitudeDeg)
                - 8.68e-3 * phaseDeg - 2.2e-9 * Math.pow(phaseDeg, 4)
                + 2 * Math.log10(parallaxDeg / MEAN_MOON_PARALLAX_DEG));
    }

    /** A cubic in altitude/90° for the logarithm of the illuminance, from an altitude up. */
    private record Polynomial(double fromDeg, double l0, double l1, double l2, double l3) {

        static double log10(Polynomial[] fromHighest, double altitudeDeg) {
            int index = 0;
            while (index < fromHighest.length - 1 && altitudeDeg < fromHighest[index].fromDeg) {
                index++;
            }
            Polynomial part = fromHighest[index];
            double x = altitudeDeg / 90;
            return part.l0 + x * (part.l1 + x * (part.l2 + x * part.l3));
        }
    }
}
