package gloam.exposure;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;

/** Illuminance of a point of the sheet over time. */
@FunctionalInterface
public interface LightCurve {

    /** Illuminance in lx at an instant, not negative. */
    double illuminanceLx(Instant at);

    /** The same light weakened or strengthened by a factor, such as another f-number's. */
    default LightCurve times(double factor) {
        return at -> factor * illuminanceLx(at);
    }

    /** Light that never changes. */
    static LightCurve constant(double illuminanceLx) {
        return at -> illuminanceLx;
    }

    /**
     * This light asked for once at every step of a span and interpolated smoothly from then on.
     *
     * <p>For light that is dear to compute. Outside the span it stays as at its ends.
     */
    default LightCurve sampled(Interval span, Duration step) {
        return new SampledLight(this, span, step);
    }
}
