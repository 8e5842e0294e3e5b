package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.units.SmoothCurve;
import gloam.units.Stops;
import java.time.Instant;

/**
 * Sky brightness by the Sun below the horizon, the night sky itself left out.
 *
 * <p><b>Model.</b> At the zenith a smooth curve in magnitudes through measured values: Koomen et al. 1952,
 * JOSA 42, 353, to 5° of depression, between their sites of 30 m and 2800 m by height; Patat et al. 2006,
 * A&amp;A 455, 385, less the night, to 14°; about 1 mag a degree from there. Away from the zenith light
 * scattered once in a round Earth's air (src/data/twilight.py), and what the measured zenith has more,
 * scattered many times, by the law that Yoachim et al. 2016, SPIE 9910, fitted to all-sky frames.
 * <b>Valid.</b> Depressions 0° to 18°, clear air; single scattering leads to 7°, the law, fitted from 11°
 * on and to 19.5° of altitude, takes over until there. <b>Error.</b> 0.4 mag at the zenith by site and
 * dust, 0.8 stop low in the sky. <b>Departures.</b> Patat's site, 2635 m high, is at 6° as bright as
 * Koomen's low one and 0.8 mag brighter than their high one: from 6° on height makes no difference. Down to
 * 5° a tenth of the zenith's light counts as scattered more than once. The law is held below 19.5°, the
 * table below 2° of altitude. Above the horizon a made-up growing daylight, fit only to be refused.
 */
final class TwilightGlow implements LightModel {

    /** Mag/arcsec² at the zenith over degrees of depression, half-way between Koomen's sites in height. */
    private static final SmoothCurve ZENITH = new SmoothCurve(
            new double[] {-90, -5, 0, 3, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 18},
            new double[] {3.5, 4.3, 7.40, 9.62, 11.84, 13.30, 14.65, 15.88, 17.00, 18.04, 18.99, 19.87,
                20.73, 21.66, 25.6});
    /** By how many magnitudes the zenith of Koomen's high site is darker than that of the low one. */
    private static final SmoothCurve HIGH_IS_DARKER = new SmoothCurve(new double[] {-90, 0, 3, 6, 90},
            new double[] {0.68, 0.68, 0.75, 0, 0});
    private static final double LOW_SITE_M = 30;
    private static final double HIGH_SITE_M = 2800;

    /** Standard deviation of a twilight that was not measured. */
    static final double SPREAD_STOPS = 0.8;
    private static final double ONCE_SHARE = 0.9;
    private static final double UNIT_DEG = 3;
    /** Single scattering is trusted down to here, and not at all from where the law was fitted. */
    private static final double ONCE_TO_DEG = 7;
    private static final double LAW_FROM_DEG = 11;
    /** No light worth counting beside the darkest sky. */
    private static final double LAST_DEPRESSION_DEG = 25;

    /** The law's exponents for each airmass, in all directions and towards the Sun; green band. */
    private static final double BY_AIRMASS = Math.log(10) * 0.2977;
    private static final double TOWARDS_SUN = Math.log(10) * 0.3164;
    private static final double MOST_AIRMASS = 3.1;
    /** How suddenly it is held there. */
    private static final double SHARPNESS = 24;
    private static final double MAG = 0.4 * Math.log(10);

    /** Patat et al. 2006, A&amp;A 455, 385, between 5° and 12° of depression. */
    private static final double COLOUR_BV = -0.12;

    private final TwilightDirections directions = new TwilightDirections();

    @Override
    public OverSite over(Site site) {
        MeasuredTwilight measured = MeasuredTwilight.of(site);
        return new OverSite() {

            @Override
            public double path(Direction direction) {
                return 1;
            }

            @Override
            public double spreadStops(Instant at) {
                return measured.spreadStops(at);
            }

            @Override
            public Glow at(Circumstances sky) {
                double depressionDeg = sky.sunDepressionDeg();
                double strength = Stops.factor(measured.brighterStops(sky.at()));
                return new Twilight(depressionDeg, strength,
                        strength * overheadCdM2(depressionDeg, site.heightM()), spread(depressionDeg, site),
                        sky.sun().azimuth().degrees());
            }
        };
    }

    private static double overheadCdM2(double depressionDeg, double heightM) {
        return depressionDeg > LAST_DEPRESSION_DEG ? 0
                : SkyBrightness.ofMagArcsec2(zenithMagArcsec2(depressionDeg, heightM)).cdM2();
    }

    private record Twilight(double depressionDeg, double strength, double zenithCdM2, Spread spread,
            double sunAzimuthDeg) implements Glow {

        @Override
        public double cdM2(Sight sight) {
            Direction direction = sight.direction();
            double apartDeg = Math.abs(direction.azimuth().degrees() - sunAzimuthDeg) % 360;
            return zenithCdM2 == 0 ? 0 : zenithCdM2 * spread.relativeToZenith(direction.altitude().degrees(),
                    Math.min(apartDeg, 360 - apartDeg));
        }

        @Override
        public double groundLx() {
            return strength * GroundLight.twilightLx(-depressionDeg);
        }

        @Override
        public double colourBv() {
            return COLOUR_BV;
        }
    }

    /**
     * Surface brightness at the zenith, mag/arcsec², at any depression of the Sun's centre (airless),
     * half-way between sea and mountain.
     */
    static double zenithMagArcsec2(double depressionDeg) {
        return ZENITH.at(depressionDeg);
    }

    /** The same over a site of that height. */
    static double zenithMagArcsec2(double depressionDeg, double heightM) {
        double up = Math.max(0, Math.min(1, (heightM - LOW_SITE_M) / (HIGH_SITE_M - LOW_SITE_M)));
        return zenithMagArcsec2(depressionDeg) + (up - 0.5) * HIGH_IS_DARKER.at(depressionDeg);
    }

    /** How twilight is spread over the sky of a site. */
    Spread spread(double depressionDeg, Site site) {
        double dustMag = site.extinctionMag() - Atmosphere.OZONE_MAG
                - Atmosphere.moleculesMag(site.heightM());
        double heldDeg = Math.max(0, Math.min(TwilightDirections.DEEPEST_DEG, depressionDeg));
        TwilightDirections.Sky once = directions.sky(heldDeg, MAG * dustMag);
        double left = Math.max(0, Math.min(1, (LAW_FROM_DEG - heldDeg) / (LAW_FROM_DEG - ONCE_TO_DEG)));
        double trusted = left * left * (3 - 2 * left);
        double scale = trusted * ONCE_SHARE * Math.exp(MAG * (ZENITH.at(heldDeg) - ZENITH.at(UNIT_DEG)));
        return new Spread(once, scale, 1 - scale * once.relative(90, 0));
    }

    /**
     * Twilight by direction.
     *
     * @param once  light scattered once
     * @param scale what its unit is as a share of the zenith
     * @param often share of the zenith's light that was scattered more than once
     */
    record Spread(TwilightDirections.Sky once, double scale, double often) {

        /** Luminance of a direction as a multiple of the zenith's. */
        double relativeToZenith(double altitudeDeg, double azimuthFromSunDeg) {
            return scale * once.relative(altitudeDeg, azimuthFromSunDeg)
                    + often * law(altitudeDeg, azimuthFromSunDeg);
        }
    }

    /** The law of Yoachim et al. 2016. */
    static double law(double altitudeDeg, double azimuthFromSunDeg) {
        double up = Math.sin(Math.toRadians(Math.max(1, altitudeDeg)));
        double airmass = Math.pow(Math.pow(up, SHARPNESS)
                + Math.pow(MOST_AIRMASS, -SHARPNESS), -1 / SHARPNESS);
        double towards = Math.max(0, Math.cos(Math.toRadians(azimuthFromSunDeg)));
        return Math.exp((BY_AIRMASS + TOWARDS_SUN * towards) * (airmass - 1));
    }
}
