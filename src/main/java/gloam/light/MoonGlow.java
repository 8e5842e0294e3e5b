package gloam.light;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;

/**
 * Sky brightness added by scattered moonlight.
 *
 * <p><b>Model.</b> Krisciunas and Schaefer 1991, PASP 103, 1033, V band, with its opposition surge; the
 * Moon's distance by the inverse square. <b>Valid.</b> Moon and target up to about 75° from the zenith,
 * more than 10° apart, clear air. <b>Error.</b> 8 % to 23 % by the paper; about 25 % with the distance and
 * surge terms. <b>Departures.</b> Within 10° of the Moon the larger of the paper's two aureole terms, which
 * do not meet at 10°; held at 0.25° inside the disc. The paper leaves a low Moon too bright and has a cliff
 * at moonset: below 5° the light is brought down to what twilight is to the Sun, and below the horizon it
 * fades as twilight does. No difference between waxing and waning.
 */
final class MoonGlow implements LightModel {

    /** Mean distance in Earth radii, 384 400 km, for which the paper's magnitudes hold. */
    private static final double MEAN_DISTANCE_KM = 384_400;
    private static final double NANOLAMBERT_CD_M2 = 1e-5 / Math.PI;
    private static final double MOON_RADIUS_DEG = 0.25;
    private static final double LOW_MOON_DEG = 5;
    private static final double SPREAD_STOPS = 0.4;

    /**
     * How far the paper's moonlit zenith for a Moon on the horizon lies above the twilight zenith for a Sun
     * there, Sun and Moon being 14.01 mag apart (−26.74, −12.73): 1.70 to 1.78 mag for extinctions of 0.12
     * to 0.25 mag.
     */
    private static final double TOO_BRIGHT_AT_HORIZON_MAG = 1.75;

    /** Sky model of Cerro Paranal: Jones et al. 2013, A&amp;A 560, A91. */
    private static final double COLOUR_BV = 0.17;

    @Override
    public OverSite over(Site site) {
        return new OverSite() {

            @Override
            public double path(Direction direction) {
                return scattered(90 - direction.altitude().degrees(), site.extinctionMag());
            }

            @Override
            public double spreadStops(Instant at) {
                return SPREAD_STOPS;
            }

            @Override
            public Glow at(Circumstances sky) {
                Appearance moon = sky.moon();
                double intensity = intensity(moon.phaseAngle().degrees(), moon.position().distanceKm());
                return new Moonlight(moon, moon.position().apparentDirection(), strengthCdM2(intensity,
                        moon.position().airlessAltitude().degrees(), sky.site().extinctionMag()));
            }
        };
    }

    private record Moonlight(Appearance moon, Direction direction, double strengthCdM2) implements Glow {

        @Override
        public double cdM2(Sight sight) {
            return strengthCdM2 * scattering(direction.to(sight.direction()).degrees());
        }

        @Override
        public double groundLx() {
            return GroundLight.moonLx(moon);
        }

        @Override
        public double colourBv() {
            return COLOUR_BV;
        }
    }

    /**
     * Luminance of the sky in nanolamberts by equation 15 for a Moon above the horizon.
     *
     * @param intensity      I*, outside the air, by {@link #intensity}
     * @param separationDeg  angle from the Moon to the target
     * @param moonZenithDeg  the Moon's zenith distance
     * @param zenithDeg      the target's
     * @param extinctionMag  at the zenith
     */
    static double nanolamberts(double intensity, double separationDeg, double moonZenithDeg, double zenithDeg,
                               double extinctionMag) {
        return scattering(separationDeg) * throughAir(intensity, moonZenithDeg, extinctionMag)
                * scattered(zenithDeg, extinctionMag);
    }

    private static double throughAir(double intensity, double moonZenithDeg, double extinctionMag) {
        return intensity * Atmosphere.transmission(extinctionMag,
                Atmosphere.scatteringAirmass(moonZenithDeg));
    }

    /** Share of light that the air of a direction scatters. */
    static double scattered(double zenithDeg, double extinctionMag) {
        return 1 - Atmosphere.transmission(extinctionMag, Atmosphere.scatteringAirmass(zenithDeg));
    }

    /**
     * What a Moon at that airless altitude of its centre brings: times {@link #scattering} and {@link
     * #scattered} the luminance of the sky in cd/m².
     */
    static double strengthCdM2(double intensity, double moonAltitudeDeg, double extinctionMag) {
        return Math.pow(10, -0.4 * lowMoonMag(moonAltitudeDeg)) * NANOLAMBERT_CD_M2
                * throughAir(intensity, 90 - moonAltitudeDeg, extinctionMag);
    }

    /** Equation 20: the Moon's illuminance in foot-candles at its mean distance, without surge. */
    static double meanIntensity(double phaseDeg) {
        return Math.pow(10, -0.4 * (3.84 + 0.026 * Math.abs(phaseDeg) + 4e-9 * Math.pow(phaseDeg, 4)));
    }

    /** The Moon's illuminance in foot-candles at a distance, with the surge within 7° of full. */
    static double intensity(double phaseDeg, double distanceKm) {
        double nearness = MEAN_DISTANCE_KM / distanceKm;
        return meanIntensity(phaseDeg) * surge(phaseDeg) * nearness * nearness;
    }

    /** How much brighter than by its phase a nearly full Moon is. */
    static double surge(double phaseDeg) {
        return Math.max(1, 1.35 - 0.05 * Math.abs(phaseDeg));
    }

    /** Equations 16 to 21: scattering by molecules and by dust at an angle from the Moon. */
    static double scattering(double separationDeg) {
        double apartDeg = Math.max(MOON_RADIUS_DEG, separationDeg);
        double cosine = Math.cos(Math.toRadians(apartDeg));
        double molecules = Math.pow(10, 5.36) * (1.06 + cosine * cosine);
        double dust = Math.pow(10, 6.15 - apartDeg / 40);
        double aureole = apartDeg < 10 ? 6.2e7 / (apartDeg * apartDeg) : 0;
        return molecules + Math.max(dust, aureole);
    }

    /** How much fainter a low or set Moon lights the sky than the paper has it, in mag; 0 from 5° up. */
    private static double lowMoonMag(double moonAltitudeDeg) {
        double low = Math.max(0, Math.min(1, 1 - moonAltitudeDeg / LOW_MOON_DEG));
        double set = TwilightGlow.zenithMagArcsec2(Math.max(0, -moonAltitudeDeg))
                - TwilightGlow.zenithMagArcsec2(0);
        return TOO_BRIGHT_AT_HORIZON_MAG * low * low + set;
    }
}
