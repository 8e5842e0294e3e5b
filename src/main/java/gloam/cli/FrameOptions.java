package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.frame.Calibration;
import gloam.frame.FrameSettings;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.store.CalibrationFile;
import gloam.store.Input;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

/** How frames were taken, where they do not say it themselves or say it wrong. */
final class FrameOptions extends OptionGroup {

    private final Option<Moment> at = option("--at", "INSTANT", Moment.class,
            "When the shutter opened (default: as the frame states, by the site's clocks).");

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "Where the camera pointed, to 20° (default: found from the stars alone).");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "How high it pointed.");

    private final Option<Quantity> rollDeg = option("--roll", "DEG", Quantity.class,
            "Camera turned clockwise, as seen from behind, if no stars show it (default: 0).");

    private final Option<FNumber> fNumber = option("--f-number", "N", FNumber.class,
            "F-number (default: the frame's, as the next ones).").readBy(FNumber::of);

    private final Option<Duration> exposure = option("--exposure", "DURATION", Duration.class,
            "Exposure time, such as 15s.");

    private final Option<Quantity> iso = option("--iso", "N", Quantity.class, "ISO setting.");

    private final Option<Quantity> focalLengthMm = option("--focal-length", "MM", Quantity.class,
            "Focal length in mm.");

    private final Option<Frame> frame = option("--frame", "WxH", Frame.class,
            "Width and height of the sensor in mm, such as 36x24.");

    private final Option<Double> transmittance = option("--transmittance", "SHARE", Double.class,
            "Share of light the glass passes, 0.2 to 1 (default: " + FrameSettings.USUAL_TRANSMITTANCE
            + ").");

    private final Option<Quantity> cornerStops = option("--corner-stops", "STOPS", Quantity.class,
            "Light lost in the corners at that f-number beyond the projection's, 0 to 4 (default: 0).");

    private final Option<Projection> projection = option("--projection", "NAME", Projection.class,
            "How the lens maps angles: rectilinear, equidistant or equisolid (default: rectilinear).")
            .completedBy(new Candidates.Projections());

    private final Option<Input> calibration = input("--calibration", "FILE",
            "The camera's calibration, as --calibrate wrote it.");

    /** What is said of frames taken where clocks keep a zone. */
    FrameSettings settings(ZoneId zone) {
        if (azimuthDeg.given() != altitudeDeg.given() || rollDeg.given() && !azimuthDeg.given()) {
            throw new BadInput("--azimuth DEG and --altitude DEG go together, and --roll with both; give "
                    + "them, or leave them out");
        }
        return new FrameSettings(fNumber.value(), exposure.value(), number(iso, "--iso", FrameSettings.ISO),
                number(focalLengthMm, "--focal-length", Lens.FOCAL_LENGTH), frame.value(),
                transmittance.value().map(share ->
                        FromOption.checked("--transmittance", Lens.TRANSMITTANCE, share))
                        .orElse(FrameSettings.USUAL_TRANSMITTANCE),
                number(cornerStops, "--corner-stops", Vignetting.CORNER).orElse(0),
                projection.value().orElse(Projection.RECTILINEAR),
                at.value().map(moment -> FromOption.of("--at", () -> moment.in(zone))),
                azimuthDeg.value().map(azimuth -> FrameSettings.pointed(Direction.ofDegrees(
                        FromOption.checked("--azimuth", Direction.AZIMUTH, azimuth),
                        FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.get())),
                        Angle.ofDegrees(number(rollDeg, "--roll", ShotOptions.ROLL).orElse(0)))),
                calibration.value().map(file -> FromOption.of("--calibration",
                        () -> CalibrationFile.read(file))).orElse(Calibration.NONE));
    }

    private static OptionalDouble number(Option<Quantity> option, String name, Range range) {
        Optional<Double> given = option.value().map(number -> FromOption.checked(name, range, number));
        return given.isPresent() ? OptionalDouble.of(given.get()) : OptionalDouble.empty();
    }
}
