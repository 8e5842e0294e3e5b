package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.Angle;
import java.time.Duration;
import java.util.List;

/** Cameras for the tests of trails, and what they look for. */
public final class Cameras {

    private Cameras() {
    }

    static Camera of(double focalLengthMm, double widthMm, double heightMm, Projection projection) {
        Lens lens = new Lens(focalLengthMm, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                projection,
                Vignetting.NONE);
        return new Camera("camera", lens, new Frame(widthMm, heightMm), Duration.ofMinutes(5));
    }

    static Camera rectilinear(double focalLengthMm, double widthMm, double heightMm) {
        return of(focalLengthMm, widthMm, heightMm, Projection.RECTILINEAR);
    }

    /** The search for level trails at the centre of a level camera. */
    public static LevelSearch levelTrails(Camera camera, double withinDeg) {
        return new LevelSearch(Framing.level(Direction.ofDegrees(0, 0), camera), new Framing.Point(0, 0),
                Angle.ZERO, Angle.ofDegrees(withinDeg));
    }
}
