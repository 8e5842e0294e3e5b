package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.light.SkyBrightness;
import gloam.planner.Preview;
import java.time.Instant;

/** A reading of the brightness of the sky. */
public sealed interface KnownSky {

    /**
     * Measured with a sky-quality meter or taken from a map.
     *
     * @param brightness the sky at the frame's centre
     */
    record Measured(SkyBrightness brightness) implements KnownSky {
    }

    /**
     * Metered with a digital camera.
     *
     * @param preview a frame of the same sky that looked right
     */
    record Metered(Preview preview) implements KnownSky {

        /** Exposure time of that frame, in seconds. */
        public double exposureS() {
            return preview.exposure().toNanos() * 1e-9;
        }
    }

    /**
     * Computed for a place and a time.
     *
     * @param site   where
     * @param aim    where the camera points
     * @param openAt when the shutter opens
     * @param steady whether to treat the light as steady
     */
    record Computed(Site site, Direction aim, Instant openAt, boolean steady) implements KnownSky {
    }
}
