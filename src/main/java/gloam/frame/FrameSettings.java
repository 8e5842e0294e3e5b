package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is said of how frames were taken, before what they say themselves.
 *
 * @param fNumber       the f-number
 * @param exposure      the exposure time
 * @param iso           the ISO setting
 * @param focalLengthMm the focal length
 * @param frame         width and height of what takes the picture
 * @param transmittance share of light that the lens passes
 * @param cornerStops   light that the lens loses in the corners at that f-number, beyond its projection's
 * @param projection    how the lens maps angles
 * @param openedAt      when the shutter opened
 * @param said          where the camera pointed
 * @param calibration   what is known of the camera's levels
 */
public record FrameSettings(Optional<FNumber> fNumber, Optional<Duration> exposure, OptionalDouble iso,
                            OptionalDouble focalLengthMm, Optional<Frame> frame, double transmittance,
                            double cornerStops, Projection projection, Optional<Instant> openedAt,
                            Optional<FrameSky.Said> said, Calibration calibration) {

    /** Allowed ISO settings. */
    public static final Range ISO = Taken.ISO;
    /** A lens of which nothing else is said; common practice, no source. */
    public static final double USUAL_TRANSMITTANCE = 0.9;
    /** Diagonal of a frame of 36 × 24 mm (CIPA DC-008, FocalLengthIn35mmFilm). */
    private static final double DIAGONAL_35_MM = Math.hypot(36, 24);
    private static final double SPOT_UM = 20;

    /** Where a camera is said to have pointed, with its turn about its axis. */
    public static FrameSky.Said pointed(Direction aim, Angle roll) {
        return new FrameSky.Said(aim, roll);
    }

    /**
     * How a frame was taken; its clock shows the time of a zone where it does not say of which.
     *
     * @throws BadInput when something is missing, with what to give
     */
    public Taken of(LightImage image, FrameData data, ZoneId zone) {
        FNumber open = fNumber.or(data::fNumber).orElseThrow(() -> missing("f-number", "--f-number N"));
        data.camera().filter(camera -> calibration.known() && !calibration.camera().isEmpty()
                && !camera.equals(calibration.camera())).ifPresent(camera -> {
                    throw new BadInput("the calibration is that of another camera, " + calibration.camera()
                            + ", and the frame is of " + camera
                            + "; leave out --calibration, or calibrate this camera");
                });
        return new Taken(camera(image, data, open), open,
                exposure.or(data::exposure)
                .orElseThrow(() -> missing("exposure time", "--exposure DURATION")),
                either(iso, data.iso()).orElseThrow(() -> missing("ISO setting", "--iso N")), data.index(),
                data.rendered(), openedAt.or(() -> data.openedAt().map(clock -> clock.atZone(
                data.offset().map(ZoneId.class::cast).orElse(zone)).toInstant()))
                .orElseThrow(() -> missing("time", "--at INSTANT")), calibration);
    }

    private static OptionalDouble either(OptionalDouble first, OptionalDouble other) {
        return first.isPresent() ? first : other;
    }

    private static BadInput missing(String what, String option) {
        return new BadInput("the frame does not state its " + what + "; add " + option);
    }

    private Camera camera(LightImage image, FrameData data, FNumber open) {
        double lengthMm = either(either(focalLengthMm, data.focalLengthMm()), data.sameAs35Mm())
                .orElseThrow(FrameSettings::unknownField);
        double longestPx = Math.hypot(image.width(), image.height());
        double widthMm = widthMm(image, data);
        double heightMm = widthMm * image.height() / image.width();
        // the sensor of a telephone is smaller than a frame may be: what is as wide and longer sees the same
        double larger = Math.max(1, Math.max(Lens.FOCAL_LENGTH.least() / lengthMm,
                Frame.SIDE.least() / Math.min(widthMm, heightMm)) * 1.01);
        Vignetting vignetting = cornerStops == 0 ? Vignetting.NONE
                : new Vignetting(cornerStops, larger * widthMm * longestPx / image.width() / 2, open);
        return new Camera("frame", new Lens(larger * lengthMm, List.of(open), transmittance,
                Double.POSITIVE_INFINITY, SPOT_UM, 0, projection, vignetting),
                new Frame(larger * widthMm, larger * heightMm), Duration.ZERO);
    }

    /** Width of what took the picture, the longer side where the picture lies. */
    private double widthMm(LightImage image, FrameData data) {
        if (frame.isPresent()) {
            double longMm = Math.max(frame.get().widthMm(), frame.get().heightMm());
            double shortMm = Math.min(frame.get().widthMm(), frame.get().heightMm());
            return image.width() >= image.height() ? longMm : shortMm;
        }
        double share = image.width() / Math.hypot(image.width(), image.height());
        double sameMm = data.sameAs35Mm().orElseThrow(FrameSettings::unknownField);
        double crop = data.focalLengthMm().isPresent() ? sameMm / data.focalLengthMm().getAsDouble() : 1;
        return share * DIAGONAL_35_MM / crop;
    }

    private static BadInput unknownField() {
        return new BadInput("the frame does not state how much it sees; add --focal-length MM and --frame "
                + "WxH, the size of the sensor");
    }
}
