package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;

/**
 * The moonless night sky: airglow, zodiacal light, faint stars and whatever artificial light the site has.
 *
 * <p><b>Model.</b> Patat 2003, A&amp;A 400, 1183, appendix C, after Garstang 1989: of the zenith's light
 * 60 % is airglow in a layer and grows with the path through it, the rest does not, and extinction works on
 * all of it. <b>Valid.</b> Zenith distances to about 80°. <b>Error.</b> 0.2 to 0.3 mag from night to night
 * by airglow alone. <b>Departures.</b> No Milky Way, no zodiacal cone and no domes of towns; held at the
 * horizon's value below it.
 */
final class DarkSky implements LightModel {

    private static final double LAYER_SHARE = 0.6;

    /** Sky model of Cerro Paranal: Noll et al. 2012, A&amp;A 543, A92. */
    private static final double COLOUR_BV = 0.95;

    @Override
    public double path(Site site, Direction direction) {
        return relativeToZenith(90 - direction.altitude().degrees(), site.extinctionMag());
    }

    @Override
    public Glow at(Circumstances sky) {
        return new Dark(SkyBrightness.ofMagArcsec2(sky.site().darkSkyMagArcsec2()).cdM2());
    }

    /** The same at every instant. */
    private record Dark(double zenithCdM2) implements Glow {

        @Override
        public double cdM2(Direction direction) {
            return zenithCdM2;
        }

        @Override
        public double groundLx() {
            return Math.PI * zenithCdM2;
        }

        @Override
        public double colourBv() {
            return COLOUR_BV;
        }
    }

    /** Luminance at a zenith distance as a share of the zenith's. */
    static double relativeToZenith(double zenithDeg, double extinctionMag) {
        double airmass = Atmosphere.scatteringAirmass(zenithDeg);
        return (1 - LAYER_SHARE + LAYER_SHARE * airmass)
                * Atmosphere.transmission(extinctionMag, airmass - 1);
    }
}
