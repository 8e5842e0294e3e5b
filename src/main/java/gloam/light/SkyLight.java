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

    /** A direction to be looked at in many moments; below the horizon that of the horizon. */
    public Patch patch(Direction direction) {
        return new Patch(site, direction);
    }

    /** A direction of the sky, with what air and darkness make of it. */
    public static final class Patch {

        private final Direction direction;
        private final SkyBrightness dark;
        private final double scattered;
        private final double twilightPath;

        private Patch(Site site, Direction direction) {
            this.direction = direction;
            double zenithDeg = 90 - direction.altitude().degrees();
            double extinctionMag = site.extinctionMag();
            this.dark = new SkyBrightness(SkyBrightness.ofMagArcsec2(site.darkSkyMagArcsec2()).cdM2()
                    * DarkSky.relativeToZenith(zenithDeg, extinctionMag));
            this.scattered = MoonGlow.scattered(zenithDeg, extinctionMag);
            this.twilightPath = TwilightGlow.path(zenithDeg, extinctionMag);
        }
    }

    /** The whole sky at one instant. */
    public static final class Moment {

        private final Site site;
        private final Direction moon;
        private final double moonCdM2;
        private final Direction airlessSun;
        private final double depressionDeg;
        private final double twilightCdM2;

        private Moment(Site site, SkyPosition sun, SkyPosition moon, double moonIntensity) {
            this.site = site;
            this.moon = moon.apparentDirection();
            this.moonCdM2 = MoonGlow.strengthCdM2(moonIntensity, moon.airlessAltitude().degrees(),
                    site.extinctionMag());
            this.airlessSun = new Direction(sun.azimuth(), sun.airlessAltitude());
            this.depressionDeg = -sun.airlessAltitude().degrees();
            this.twilightCdM2 = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(depressionDeg)).cdM2();
        }

        /** The light of a direction, its parts kept; below the horizon that of the horizon. */
        public Sample at(Direction direction) {
            return at(new Patch(site, direction));
        }

        /** The light of a direction that has been looked at before. */
        public Sample at(Patch patch) {
            double fromMoonDeg = moon.to(patch.direction).degrees();
            double fromSunDeg = airlessSun.to(patch.direction).degrees();
            return new Sample(patch.dark,
                    new SkyBrightness(moonCdM2 * MoonGlow.scattering(fromMoonDeg) * patch.scattered),
                    new SkyBrightness(twilightCdM2 * patch.twilightPath
                            * TwilightGlow.towardSun(fromSunDeg, depressionDeg)));
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
