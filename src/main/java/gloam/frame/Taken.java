package gloam.frame;

import gloam.exposure.FilmPlane;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Range;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;

/**
 * How a frame was taken, and what luminance its levels stand for.
 *
 * <p><b>Model.</b> Standard output sensitivity, ISO 12232:2019: level 118 of 255 is an exposure of 10/S lx s
 * on the sensor; luminance from that by f-number, transmittance and fall-off as for film ({@link FilmPlane},
 * {@link Lens}). <b>Valid.</b> Frames coded by the sRGB curve, or levels proportional to light. <b>Error.</b>
 * A third of a stop, by which a recommended index may differ; a sixth where the frame says that its index is
 * the standard output sensitivity, which is stated in thirds; a tenth of the way from level 118 by the
 * camera's own curve, twice that where it says that it laid one over; a tenth of a stop by the lens.
 * <b>Departures.</b> The curve's part is common practice, no source.
 *
 * @param camera      lens and size of the frame
 * @param fNumber     the f-number
 * @param exposure    how long the shutter was open, 1 ms to 1 h
 * @param iso         the ISO setting, 1 to 10 million
 * @param index       what the ISO setting counts
 * @param rendered    whether the camera says that it laid a curve of its own over the levels
 * @param openedAt    when the shutter opened
 * @param calibration what is known of the camera's levels
 */
public record Taken(Camera camera, FNumber fNumber, Duration exposure, double iso, FrameData.Index index,
                    boolean rendered, Instant openedAt, Calibration calibration) {

    /** Allowed ISO settings. */
    public static final Range ISO = new Range("ISO of the frame", 1, 10_000_000, "");
    /** Allowed exposure times in seconds. */
    public static final Range EXPOSURE = new Range("exposure of the frame", 0.001, 3600, "s");

    private static final double LEVEL_118 = SrgbCurve.light(118 / 255.0);
    private static final double LX_S_ISO = 10;
    private static final double OF_RECOMMENDED_STOPS = 1 / 3.0;
    private static final double OF_OUTPUT_STOPS = 1 / 6.0;
    private static final double OF_LENS_STOPS = 0.1;
    private static final double OF_CURVE = 0.1;
    private static final double OF_STRONG_CURVE = 0.2;
    /** Half a level of 255: how far the least levels are off at worst. */
    private static final double HALF_A_LEVEL = 0.5 / 255;
    /** Magnitudes by which a small share of light more is brighter, times that share. */
    private static final double MAG_A_SHARE = 2.5 / Math.log(10);

    /** Refuses numbers outside their ranges with {@link BadInput}. */
    public Taken {
        ISO.check(iso);
        EXPOSURE.check(exposure.toNanos() * 1e-9);
    }

    /** The middle of the exposure, where trails have their middle. */
    public Instant middle() {
        return openedAt.plus(exposure.dividedBy(2));
    }

    /** The lens. */
    public Lens lens() {
        return camera.lens();
    }

    /** Exposure on the sensor in lx s of a share of white. */
    public double exposureLxS(double light) {
        return light / LEVEL_118 * LX_S_ISO / iso;
    }

    /** The luminance that a share of white at an angle off the axis stands for. */
    public SkyBrightness luminance(double light, Angle offAxis) {
        double lx = exposureLxS(light) / (exposure.toNanos() * 1e-9);
        double lxOfOneCdM2 = FilmPlane.illuminanceLx(lens(), fNumber, new SkyBrightness(1))
                * lens().relativeIllumination(offAxis, fNumber);
        return new SkyBrightness(lx / lxOfOneCdM2 * Math.pow(10, -0.4 * calibration.offsetMag()));
    }

    /** The luminance whose light at an angle off the axis is a share of white, the inverse of the other. */
    public double light(SkyBrightness sky, Angle offAxis) {
        return sky.cdM2() / luminance(1, offAxis).cdM2();
    }

    /** One standard deviation in mag that all luminances of a frame share, for a share of white. */
    public double sharedErrorMag(double light) {
        double curve = (rendered ? OF_STRONG_CURVE : OF_CURVE) * Math.abs(Stops.between(LEVEL_118, light));
        double setting = index == FrameData.Index.OUTPUT ? OF_OUTPUT_STOPS : OF_RECOMMENDED_STOPS;
        double least = HALF_A_LEVEL * SrgbCurve.slope(SrgbCurve.level(light)) / light;
        return Math.hypot(MAG_A_SHARE * least, calibration.known() ? calibration.errorMag()
                : Stops.MAG * Math.sqrt(setting * setting + curve * curve + OF_LENS_STOPS * OF_LENS_STOPS));
    }
}
