package gloam.cli;

import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The camera: the trip's, with whatever is given changed. */
class CameraOptions extends OptionGroup {

    private static final double FOCAL_LENGTH_MM = 150;
    private static final double TRANSMITTANCE = 0.9;
    private static final double SPOT_UM = 40;
    private static final List<FNumber> F_NUMBERS = FNumber.series(5.6, 8, 11, 16, 22, 32, 45, 64, 90);

    private final Option<List<FNumber>> fNumbers = repeated("--f-number", "N", FNumber.class,
            "F-number, or several with commas between (default: the trip's, else 5.6 to 90).")
            .readBy(FNumber::of).withCommas();

    private final Option<Quantity> focalLengthMm = option("--focal-length", "MM", Quantity.class,
            "Focal length in mm (default: the trip's, else " + FOCAL_LENGTH_MM + ").");

    private final Option<Frame> frame = option("--frame", "WxH", Frame.class,
            "Width and height of the frame in mm (default: the trip's).");

    private final Option<Quantity> focusM = option("--focus", "M", Quantity.class,
            "Focus distance in metres (default: the trip's, else infinity).");

    private final Option<Double> transmittance = option("--transmittance", "SHARE", Double.class,
            "Share of light the glass passes, 0.2 to 1 (default: the trip's, else " + TRANSMITTANCE + ").");

    private final Option<Double> tStopTransmittance = option("--t-stop", "N/T", Double.class,
            "Instead of --transmittance: an f-number and the T-number there, such as 11/12.3.")
            .readBy(new Converters.TStop());

    private final Option<Quantity> cornerStops = option("--corner-stops", "STOPS", Quantity.class,
            "Light lost to the lens's mount in the frame's corner at the widest f-number, beyond the "
            + "projection's fall-off, 0 to 4; gone two stops below (default: the trip's, else 0).");

    private final Option<Quantity> spotUm = option("--spot", "UM", Quantity.class,
            "Width of a star's spot by lens and film in µm (default: the trip's, else " + SPOT_UM + ").");

    private final Option<Projection> projection = option("--projection", "NAME", Projection.class,
            "How the lens maps angles: rectilinear, equidistant "
            + "or equisolid (default: the trip's, else rectilinear).")
            .completedBy(new Candidates.Projections());

    private final Option<Quantity> filterStops = option("--filter", "STOPS", Quantity.class,
            "Light taken by a filter in stops (default: the trip's, else 0).");

    /** The lens, its f-numbers those asked for. */
    Lens lens(Optional<Camera> trips) {
        Lens base = trips.map(Camera::lens).orElse(new Lens(FOCAL_LENGTH_MM, F_NUMBERS, TRANSMITTANCE,
                Double.POSITIVE_INFINITY, SPOT_UM, 0, Projection.RECTILINEAR, Vignetting.NONE));
        return over(base, vignetting(base, trips));
    }

    /** A lens with whatever is given changed. */
    Lens over(Lens base, Vignetting vignetting) {
        double lengthMm = focalLengthMm.value()
                .map(mm -> FromOption.checked("--focal-length", Lens.FOCAL_LENGTH, mm))
                .orElse(base.focalLengthMm());
        return new Lens(lengthMm,
                fNumbers.get().isEmpty() ? base.fNumbers() : fNumbers.get(),
                transmittance(base),
                focusM.value().map(m -> FromOption.checked("--focus", Lens.focus(lengthMm), m))
                        .orElse(base.focusM()),
                spotUm.value().map(um -> FromOption.checked("--spot", Lens.SPOT, um)).orElse(base.spotUm()),
                filterStops.value().map(stops -> FromOption.checked("--filter", Lens.FILTER, stops))
                        .orElse(base.filterStops()),
                projection.value().orElse(base.projection()), vignetting);
    }

    private double transmittance(Lens base) {
        if (transmittance.given() && tStopTransmittance.given()) {
            throw new BadInput("--transmittance SHARE and --t-stop N/T say the same; give one of the two");
        }
        return transmittance.value()
                .map(share -> FromOption.checked("--transmittance", Lens.TRANSMITTANCE, share))
                .or(tStopTransmittance::value).orElse(base.transmittance());
    }

    private Vignetting vignetting(Lens base, Optional<Camera> trips) {
        if (!cornerStops.given()) {
            return base.vignetting();
        }
        Frame whole = frame(trips).orElseThrow(() ->
                new BadInput("--corner-stops needs the frame; add --frame WxH or --trip FILE"));
        List<FNumber> all = trips.isPresent() || fNumbers.get().isEmpty() ? base.fNumbers() : fNumbers.get();
        return new Vignetting(FromOption.checked("--corner-stops", Vignetting.CORNER, cornerStops.get()),
                whole.halfDiagonalMm(), Collections.min(all));
    }

    /** Whether anything of a camera is said. */
    boolean given() {
        return Stream.of(fNumbers, focalLengthMm, frame, focusM, transmittance, tStopTransmittance,
                cornerStops, spotUm, projection, filterStops).anyMatch(Option::given);
    }

    /** The frame, if it is said. */
    Optional<Frame> frame(Optional<Camera> trips) {
        return frame.value().or(() -> trips.map(Camera::frame));
    }

    /** The camera whose frame is looked at. */
    Camera camera(Optional<Camera> trips) {
        if (trips.isEmpty() && (!focalLengthMm.given() || !frame.given())) {
            throw new BadInput("no camera given; use --trip FILE, or --focal-length MM and --frame WxH");
        }
        return new Camera(trips.map(Camera::name).orElse("camera"), lens(trips),
                frame(trips).orElseThrow(),
                trips.map(Camera::changeover).orElse(Duration.ZERO));
    }
}
