package gloam.cli;

import gloam.gear.Camera;
import gloam.gear.FNumbers;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The camera: the trip's, with whatever is given changed. */
final class CameraOptions {

    private static final double FOCAL_LENGTH_MM = 150;
    private static final double TRANSMITTANCE = 0.9;
    private static final double SPOT_UM = 40;
    private static final List<Double> F_NUMBERS =
            DoubleStream.of(5.6, 8, 11, 16, 22, 32, 45, 64, 90).map(FNumbers::exact).boxed().toList();

    @Option(names = "--f-number", paramLabel = "N", split = ",", converter = Converters.FNumber.class,
            description = "F-number, or several with commas between (default: the trip's, else 5.6 to 90).")
    private List<Double> fNumbers = new ArrayList<>();

    @Option(names = "--focal-length", paramLabel = "MM",
            description = "Focal length in mm (default: the trip's, else " + FOCAL_LENGTH_MM + ").")
    private Optional<Quantity> focalLengthMm;

    @Option(names = "--frame", paramLabel = "WxH",
            description = "Width and height of the frame in mm (default: the trip's).")
    private Optional<Frame> frame;

    @Option(names = "--focus", paramLabel = "M",
            description = "Focus distance in metres (default: the trip's, else infinity).")
    private Optional<Quantity> focusM;

    @Option(names = "--transmittance", paramLabel = "SHARE",
            description = "Share of light the glass passes, 0.2 to 1 (default: the trip's, else " + TRANSMITTANCE + ").")
    private Optional<Double> transmittance;

    @Option(names = "--t-stop", paramLabel = "N/T", converter = Converters.TStop.class,
            description = "Instead of --transmittance: an f-number and the T-number there, such as 11/12.3.")
    private Optional<Double> tStopTransmittance;

    @Option(names = "--corner-stops", paramLabel = "STOPS",
            description = "Light lost to the lens's mount in the frame's corner at the widest f-number, beyond the "
            + "projection's fall-off, 0 to 4; gone two stops below (default: the trip's, else 0).")
    private Optional<Quantity> cornerStops;

    @Option(names = "--spot", paramLabel = "UM",
            description = "Width of a star's spot by lens and film in µm (default: the trip's, else " + SPOT_UM + ").")
    private Optional<Quantity> spotUm;

    @Option(names = "--projection", paramLabel = "NAME", completionCandidates = Candidates.Projections.class,
            description = "How the lens maps angles: rectilinear, equidistant "
            + "or equisolid (default: the trip's, else rectilinear).")
    private Optional<Projection> projection;

    @Option(names = "--filter", paramLabel = "STOPS",
            description = "Light taken by a filter in stops (default: the trip's, else 0).")
    private Optional<Quantity> filterStops;

    /** The lens, its f-numbers those asked for. */
    Lens lens(Optional<Camera> trips) {
        Lens base = trips.map(Camera::lens).orElse(new Lens(FOCAL_LENGTH_MM, F_NUMBERS, TRANSMITTANCE,
                Double.POSITIVE_INFINITY, SPOT_UM, 0, Projection.RECTILINEAR, Vignetting.NONE));
        return new Lens(
                focalLengthMm.map(mm -> FromOption.checked("--focal-length", Lens.FOCAL_LENGTH, mm))
                        .orElse(base.focalLengthMm()),
                fNumbers.isEmpty() ? base.fNumbers() : fNumbers,
                transmittance(base),
                focusM.map(m -> FromOption.checked("--focus", Lens.FOCUS, m)).orElse(base.focusM()),
                spotUm.map(um -> FromOption.checked("--spot", Lens.SPOT, um)).orElse(base.spotUm()),
                filterStops.map(stops -> FromOption.checked("--filter", Lens.FILTER, stops))
                        .orElse(base.filterStops()),
                projection.orElse(base.projection()), vignetting(base, trips));
    }

    private double transmittance(Lens base) {
        if (transmittance.isPresent() && tStopTransmittance.isPresent()) {
            throw new BadInput("--transmittance SHARE and --t-stop N/T say the same; give one of the two");
        }
        return transmittance.map(share -> FromOption.checked("--transmittance", Lens.TRANSMITTANCE, share))
                .or(() -> tStopTransmittance).orElse(base.transmittance());
    }

    private Vignetting vignetting(Lens base, Optional<Camera> trips) {
        if (cornerStops.isEmpty()) {
            return base.vignetting();
        }
        Frame whole = frame(trips).orElseThrow(() ->
                new BadInput("--corner-stops needs the frame; add --frame WxH or --trip FILE"));
        List<Double> all = trips.isPresent() || fNumbers.isEmpty() ? base.fNumbers() : fNumbers;
        return new Vignetting(FromOption.checked("--corner-stops", Vignetting.CORNER, cornerStops.get()),
                whole.halfDiagonalMm(), Collections.min(all));
    }

    /** Whether anything of a camera is said. */
    boolean given() {
        return !fNumbers.isEmpty() || Stream.of(focalLengthMm, frame, focusM, transmittance, tStopTransmittance, cornerStops,
                spotUm, projection, filterStops).anyMatch(Optional::isPresent);
    }

    /** The frame, if it is said. */
    Optional<Frame> frame(Optional<Camera> trips) {
        return frame.or(() -> trips.map(Camera::frame));
    }

    /** The camera whose frame is looked at. */
    Camera camera(Optional<Camera> trips) {
        if (trips.isEmpty() && (focalLengthMm.isEmpty() || frame.isEmpty())) {
            throw new BadInput("the camera is not said; give --trip FILE, or --focal-length MM and --frame WxH");
        }
        return new Camera(trips.map(Camera::name).orElse("camera"), lens(trips),
                frame(trips).orElseThrow(),
                trips.map(Camera::changeover).orElse(Duration.ZERO));
    }
}
