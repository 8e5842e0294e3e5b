package gloam.trail;

import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import java.time.Duration;
import java.util.List;

/** Cameras for the tests of trails. */
final class Cameras {

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
}
