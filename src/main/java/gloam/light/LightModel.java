package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;

/**
 * The model of one source of light in the sky: what it gives in a direction at an instant is what the instant
 * brings times what the direction lets through.
 */
interface LightModel {

    /** What of it reaches a site from a direction, whatever the instant: its path through the air. */
    double path(Site site, Direction direction);

    /** The source at an instant. */
    Glow at(Circumstances sky);

    /** A source at one instant, over one site. */
    interface Glow {

        /** Luminance in a direction in cd/m² where the path is 1, not negative. */
        double cdM2(Direction direction);

        /** What it adds to the illuminance of level open ground, in lx. */
        double groundLx();

        /** Colour index B−V of its light. */
        double colourBv();
    }
}
