package gloam.light;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import java.time.Instant;

/** How bright the sky over a site is: dark sky, moonlight and twilight added, without steps in time. */
public final class SkyLight {

    private final Ephemeris ephemeris;
    private final Site site;

    /** The sky over a site; its measured darkness at the zenith and its extinction set the scale. */
    public SkyLight(Ephemeris ephemeris, Site site) {
        this.ephemeris = ephemeris;
        this.site = site;
    }

    /** The light of a direction at an instant, its parts kept. */
    public Sample at(Direction direction, Instant at) {
        return moment(at).at(direction);
    }

    /** The whole sky at an instant, with Sun and Moon looked up once for all directions. */
    public Moment moment(Instant at) {
        Appearance moon = ephemeris.appearance(Body.MOON, site, at);
        return new Moment(site, ephemeris.position(Body.SUN, site, at), moon.position(),
                MoonGlow.intensity(moon.phaseAngle().degrees(), moon.position().distanceKm()));
    }

    /** The whole sky at one instant. */
    public static final class Moment {

        private final Site site;
        private final SkyPosition sun;
        private final SkyPosition moon;
        private final double moonIntensity;

        private Moment(Site site, SkyPosition sun, SkyPosition moon, double moonIntensity) {
            this.site = site;
            this.sun = sun;
            this.moon = moon;
            this.moonIntensity = moonIntensity;
        }

        /** The light of a direction, its parts kept; below the horizon that of the horizon. */
        public Sample at(Direction direction) {
            double zenithDeg = 90 - direction.altitude().degrees();
            return new Sample(dark(zenithDeg), moonlight(direction, zenithDeg),
                    twilight(direction, zenithDeg));
        }

        private SkyBrightness dark(double zenithDeg) {
            double zenithCdM2 = SkyBrightness.ofMagArcsec2(site.darkSkyMagArcsec2()).cdM2();
            return new SkyBrightness(zenithCdM2 * DarkSky.relativeToZenith(zenithDeg, site.extinctionMag()));
        }

        private SkyBrightness moonlight(Direction direction, double zenithDeg) {
            double separationDeg = moon.apparentDirection().to(direction).degrees();
            return new SkyBrightness(MoonGlow.luminanceCdM2(moonIntensity, separationDeg,
                    moon.airlessAltitude().degrees(), zenithDeg, site.extinctionMag()));
        }

        private SkyBrightness twilight(Direction direction, double zenithDeg) {
            double depressionDeg = -sun.airlessAltitude().degrees();
            Direction airlessSun = new Direction(sun.azimuth(), sun.airlessAltitude());
            double zenithMag = TwilightGlow.zenithMagArcsec2(depressionDeg);
            double relative = TwilightGlow.relativeToZenith(zenithDeg, airlessSun.to(direction).degrees(),
                    depressionDeg, site.extinctionMag());
            return new SkyBrightness(SkyBrightness.ofMagArcsec2(zenithMag).cdM2() * relative);
        }
    }

    /**
     * The light of one direction by its parts.
     *
     * @param dark     moonless night sky of the site
     * @param moon     scattered moonlight
     * @param twilight scattered sunlight
     */
    public record Sample(SkyBrightness dark, SkyBrightness moon, SkyBrightness twilight) {

        /** All parts together. */
        public SkyBrightness total() {
            return dark.plus(moon).plus(twilight);
        }

        /** Colour index B−V of all parts together: below about 0.4 it comes out blue on daylight film. */
        public double colourBv() {
            return SkyColour.bv(dark.cdM2(), moon.cdM2(), twilight.cdM2());
        }
    }
}
