package gloam.planner;

import gloam.exposure.FilmPlane;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.units.Range;
import java.time.Duration;

/**
 * A frame from a digital camera that looked right.
 *
 * @param fNumber  its f-number
 * @param iso      its ISO setting
 * @param exposure its exposure time
 */
public record Preview(FNumber fNumber, double iso, Duration exposure) {

    /** Allowed ISO settings and film speeds. */
    public static final Range ISO = new Range("ISO", 0.1, 1_000_000, "");
    /** Allowed exposure times. */
    public static final Range EXPOSURE = new Range("preview exposure", 1e-4, 86_400, "s");

    /** The sky that it shows, its light taken through a lens as {@link FilmPlane#luminanceOfFrame} has it. */
    public SkyBrightness sky(Lens lens) {
        return FilmPlane.luminanceOfFrame(lens, fNumber, iso, exposure.toNanos() * 1e-9);
    }

    /** Refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
    public Preview {
        ISO.check(iso);
        EXPOSURE.check(exposure.toNanos() * 1e-9);
    }
}
