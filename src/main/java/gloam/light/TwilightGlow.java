package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.units.SmoothCurve;

/**
 * Sky brightness by the Sun below the horizon, the night sky itself left out.
 *
 * <p><b>Model.</b> At the zenith a smooth curve in magnitudes through measured values: Koomen et al. 1952,
 * JOSA 42, 353 (mean of a high and a low site) to 5° of depression; Patat et al. 2006, A&amp;A 455, 385,
 * less the night, to 14°; about 1 mag a degree from there. Away from the zenith the air path and the angle
 * to the Sun as in Schaefer 1993, Vistas in Astronomy 36, 311. <b>Valid.</b> Depressions 0° to 18°, clear
 * air. <b>Error.</b> 0.4 mag at the zenith by site and dust; about twice that low in the glow.
 * <b>Departures.</b> Schaefer's further term for low altitudes is left out: with it the whole sky would
 * light the ground twice as much as the Explanatory Supplement says. The Sun counts as no nearer than 10°
 * to the line of sight. Above the horizon a made-up growing daylight, fit only to be refused.
 */
final class TwilightGlow implements LightModel {

    /** Mag/arcsec² at the zenith over degrees of depression. */
    private static final SmoothCurve ZENITH = new SmoothCurve(
            new double[] {-90, -5, 0, 3, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 18},
            new double[] {3.5, 4.3, 7.40, 9.62, 11.84, 13.30, 14.65, 15.88, 17.00, 18.04, 18.99, 19.87,
                20.73, 21.66, 25.6});
    private static final double NEAREST_SUN_DEG = 10;
    private static final double LEAST_EXTINCTION_MAG = 0.01;

    /** Patat et al. 2006, A&amp;A 455, 385, between 5° and 12° of depression. */
    private static final double COLOUR_BV = -0.12;

    @Override
    public OverSite over(Site site) {
        return new OverSite() {

            @Override
            public double path(Direction direction) {
                return TwilightGlow.path(90 - direction.altitude().degrees(), site.extinctionMag());
            }

            @Override
            public Glow at(Circumstances sky) {
                double depressionDeg = sky.sunDepressionDeg();
                return new Twilight(sky.airlessSun(), depressionDeg,
                        SkyBrightness.ofMagArcsec2(zenithMagArcsec2(depressionDeg)).cdM2());
            }
        };
    }

    private record Twilight(Direction sun, double depressionDeg, double zenithCdM2) implements Glow {

        @Override
        public double cdM2(Sight sight) {
            return zenithCdM2 * towardSun(sun.to(sight.direction()).degrees(), depressionDeg);
        }

        @Override
        public double groundLx() {
            return GroundLight.twilightLx(-depressionDeg);
        }

        @Override
        public double colourBv() {
            return COLOUR_BV;
        }
    }

    /** Surface brightness at the zenith, mag/arcsec², at any depression of the Sun's centre (airless). */
    static double zenithMagArcsec2(double depressionDeg) {
        return ZENITH.at(depressionDeg);
    }

    /** Luminance of a direction as a multiple of the zenith's. */
    static double relativeToZenith(double zenithDeg, double fromSunDeg, double depressionDeg,
                                   double extinctionMag) {
        return path(zenithDeg, extinctionMag) * towardSun(fromSunDeg, depressionDeg);
    }

    /** The part of it that the air path makes. */
    static double path(double zenithDeg, double extinctionMag) {
        double extinction = Math.max(LEAST_EXTINCTION_MAG, extinctionMag);
        return (1 - Atmosphere.transmission(extinction, Atmosphere.airmass(zenithDeg)))
                / (1 - Atmosphere.transmission(extinction, 1));
    }

    /** The part of it that the angle to the Sun makes. */
    static double towardSun(double fromSunDeg, double depressionDeg) {
        return (90 + depressionDeg) / Math.max(NEAREST_SUN_DEG, fromSunDeg);
    }
}
