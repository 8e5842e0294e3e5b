package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The model of one source of light in the sky. */
@FunctionalInterface
interface LightModel {

    /** The source over a site. */
    OverSite over(Site site);

    /**
     * A source over one site: what it gives in a direction at an instant is what the instant brings times
     * what the direction lets through.
     */
    interface OverSite {

        /** What of it reaches the site from a direction, whatever the instant: its path through the air. */
        double path(Direction direction);

        /** The source at an instant. */
        Glow at(Circumstances sky);

        /**
         * What of it is in the figure of a moonless zenith, in cd/m²: what a quarter of a year's midnights
         * stay below.
         */
        default double zenithCdM2() {
            return 0;
        }

        /** Standard deviation of its light at an instant, in stops. */
        double spreadStops(Instant at);
    }

    /**
     * A line of sight.
     *
     * @param direction over the horizon
     * @param vector    the same as a unit vector
     */
    record Sight(Direction direction, Vector3D vector) {
    }

    /** A source at one instant, over one site. */
    interface Glow {

        /** Luminance along a line of sight in cd/m² where the path is 1, not negative. */
        double cdM2(Sight sight);

        /** What it adds to the illuminance of level open ground, in lx. */
        double groundLx();

        /** Colour index B−V of its light. */
        double colourBv();
    }
}
