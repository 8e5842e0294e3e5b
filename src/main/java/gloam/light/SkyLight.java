package gloam.light;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import java.time.Instant;

/** How bright the sky over a site is: all its sources of light added, without steps in time. */
public final class SkyLight {

    /** Moonlight that still leaves a sky dark: a fifth of a magnitude; common practice, no source. */
    public static final double DARK_MOONLIGHT_MAG = 0.2;

    private static final LightSource[] SOURCES = LightSource.values();

    private final Ephemeris ephemeris;
    private final Site site;
    private final LightModel.OverSite[] sources = new LightModel.OverSite[SOURCES.length];

    /** The sky over a site; its measured darkness at the zenith and its extinction set the scale. */
    public SkyLight(Ephemeris ephemeris, Site site) {
        this.ephemeris = ephemeris;
        this.site = site;
        for (int source = 0; source < sources.length; source++) {
            sources[source] = SOURCES[source].model().over(site);
        }
    }

    /** The light of a direction at an instant, its parts kept. */
    public Sample at(Direction direction, Instant at) {
        return moment(at).at(direction);
    }

    /** The whole sky at an instant, with Sun and Moon looked up once for all directions. */
    public Moment moment(Instant at) {
        return new Moment(sources, Circumstances.of(ephemeris, site, at));
    }

    /** A direction to be looked at in many moments; below the horizon that of the horizon. */
    public Patch patch(Direction direction) {
        return new Patch(sources, direction);
    }

    /** A direction of the sky, with what air and darkness make of it. */
    public static final class Patch {

        private final LightModel.Sight sight;
        private final double[] paths = new double[SOURCES.length];

        private Patch(LightModel.OverSite[] sources, Direction direction) {
            this.sight = new LightModel.Sight(direction, direction.vector());
            for (int source = 0; source < paths.length; source++) {
                paths[source] = sources[source].path(direction);
            }
        }
    }

    /** The whole sky at one instant. */
    public static final class Moment {

        private final LightModel.OverSite[] sources;
        private final LightModel.Glow[] glows = new LightModel.Glow[SOURCES.length];
        private final double[] blueShares = new double[SOURCES.length];
        private final double[] spreadsStops = new double[SOURCES.length];

        private Moment(LightModel.OverSite[] sources, Circumstances sky) {
            this.sources = sources;
            for (int source = 0; source < glows.length; source++) {
                glows[source] = sources[source].at(sky);
                blueShares[source] = SkyColour.blueShare(glows[source].colourBv());
                spreadsStops[source] = sources[source].spreadStops(sky.at());
            }
        }

        /** The light of a direction, its parts kept; below the horizon that of the horizon. */
        public Sample at(Direction direction) {
            return at(new Patch(sources, direction));
        }

        /** The light of a direction that has been looked at before. */
        public Sample at(Patch patch) {
            double[] cdM2 = new double[glows.length];
            for (int source = 0; source < cdM2.length; source++) {
                cdM2[source] = glows[source].cdM2(patch.sight) * patch.paths[source];
            }
            return new Sample(cdM2, blueShares, spreadsStops);
        }

        /** What level matt ground throws back of all that falls on it, by its sources. */
        Sample ground(double reflectance) {
            double[] cdM2 = new double[glows.length];
            for (int source = 0; source < cdM2.length; source++) {
                cdM2[source] = reflectance * glows[source].groundLx() / Math.PI;
            }
            return new Sample(cdM2, blueShares, spreadsStops);
        }
    }

    /** The light of one direction by its sources. */
    public static final class Sample {

        private final double[] cdM2;
        private final double[] blueShares;
        private final double[] spreadsStops;

        private Sample(double[] cdM2, double[] blueShares, double[] spreadsStops) {
            this.cdM2 = cdM2;
            this.blueShares = blueShares;
            this.spreadsStops = spreadsStops;
        }

        /** That of one source. */
        public SkyBrightness of(LightSource source) {
            return new SkyBrightness(cdM2[source.ordinal()]);
        }

        /** All sources together. */
        public SkyBrightness total() {
            return without();
        }

        /** All sources but some together. */
        public SkyBrightness without(LightSource... left) {
            double sum = 0;
            for (int source = 0; source < cdM2.length; source++) {
                sum += contains(left, source) ? 0 : cdM2[source];
            }
            return new SkyBrightness(sum);
        }

        /** How many magnitudes moonlight makes the night sky brighter, twilight left out. */
        public double moonlightMag() {
            return without(LightSource.MOON, LightSource.TWILIGHT).magArcsec2()
                    - without(LightSource.TWILIGHT).magArcsec2();
        }

        /** Colour index B−V of all sources together: below about 0.4 it comes out blue on daylight film. */
        public double colourBv() {
            return SkyColour.bv(cdM2, blueShares);
        }

        /** Standard deviation of all in stops: each source's own, in quadrature of their shares. */
        public double spreadStops() {
            return spreadStopsWithout();
        }

        /** What all sources but some have of it. */
        double spreadStopsWithout(LightSource... known) {
            double square = 0;
            double sum = 0;
            for (int source = 0; source < cdM2.length; source++) {
                double deviation = contains(known, source) ? 0 : cdM2[source] * spreadsStops[source];
                square += deviation * deviation;
                sum += cdM2[source];
            }
            return Math.sqrt(square) / sum;
        }

        private static boolean contains(LightSource[] sources, int index) {
            for (LightSource source : sources) {
                if (source.ordinal() == index) {
                    return true;
                }
            }
            return false;
        }
    }
}
