package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import java.util.List;

/**
 * What a moonless night sky has besides its other sources: airglow, and town light of no known direction.
 *
 * <p><b>Model.</b> Light of a thin layer, which grows with the path through it, less extinction: Garstang
 * 1989, PASP 101, 306, after Patat 2003, A&amp;A 400, 1183, appendix C. In the zenith it is what the site's
 * figure of the moonless zenith holds over the lower quartiles of the other sources, for it is measured away
 * from the Milky Way. <b>Valid.</b> Zenith distances to about 80°. <b>Error.</b> 0.2 to 0.3 mag from night to
 * night, 0.3 to 0.5 mag between the least and the most active Sun. <b>Departures.</b> A fifth of the figure
 * at least, however dark; held at the horizon's value below it.
 */
final class Airglow implements LightModel {

    private static final double LEAST_SHARE = 0.2;

    /** Sky model of Cerro Paranal: Noll et al. 2012, A&amp;A 543, A92. */
    private static final double COLOUR_BV = 0.95;

    private final List<LightModel> others;

    /** The rest beside some other sources. */
    Airglow(List<LightModel> others) {
        this.others = others;
    }

    @Override
    public OverSite over(Site site) {
        double wholeCdM2 = SkyBrightness.ofMagArcsec2(site.darkSkyMagArcsec2()).cdM2();
        double othersCdM2 = others.stream().mapToDouble(other -> other.over(site).zenithCdM2()).sum();
        double ownCdM2 = Math.max(LEAST_SHARE * wholeCdM2, wholeCdM2 - othersCdM2);
        Glow glow = new Layer(ownCdM2);
        // an error of the whole zenith falls to what is left of it
        double spreadStops = site.zenithSpreadStops() * wholeCdM2 / ownCdM2;
        return new OverSite() {

            @Override
            public double path(Direction direction) {
                return relativeToZenith(90 - direction.altitude().degrees(), site.extinctionMag());
            }

            @Override
            public double spreadStops(Instant at) {
                return spreadStops;
            }

            @Override
            public Glow at(Circumstances sky) {
                return glow;
            }
        };
    }

    /** The same at every instant. */
    private record Layer(double zenithCdM2) implements Glow {

        @Override
        public double cdM2(Sight sight) {
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
        return airmass * Atmosphere.transmission(extinctionMag, airmass - 1);
    }
}
