package gloam.cli;

import gloam.gear.Camera;
import gloam.gear.FNumbers;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.units.BadInput;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
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
    private Optional<Double> focalLengthMm;

    @Option(names = "--frame", paramLabel = "WxH",
            description = "Width and height of the frame in mm (default: the trip's).")
    private Optional<Frame> frame;

    @Option(names = "--focus", paramLabel = "M",
            description = "Focus distance in metres (default: the trip's, else infinity).")
    private Optional<Double> focusM;

    @Option(names = "--transmittance", paramLabel = "SHARE",
            description = "Share of light the glass passes, 0.2 to 1 (default: the trip's, else " + TRANSMITTANCE + ").")
    private Optional<Double> transmittance;

    @Option(names = "--spot", paramLabel = "UM",
            description = "Width of a star's spot by lens and film in µm (default: the trip's, else " + SPOT_UM + ").")
    private Optional<Double> spotUm;

    @Option(names = "--projection", paramLabel = "NAME",
            description = "How the lens maps angles: rectilinear, equidistant "
            + "or equisolid (default: the trip's, else rectilinear).")
    private Optional<Projection> projection;

    @Option(names = "--filter", paramLabel = "STOPS",
            description = "Light taken by a filter in stops (default: the trip's, else 0).")
    private Optional<Double> filterStops;

    /** The lens, its f-numbers those asked for. */
    Lens lens(Optional<Camera> trips) {
        Lens base = trips.map(Camera::lens).orElse(new Lens(FOCAL_LENGTH_MM, F_NUMBERS, TRANSMITTANCE,
                Double.POSITIVE_INFINITY, SPOT_UM, 0, Projection.RECTILINEAR));
        return new Lens(
                focalLengthMm.map(mm -> FromOption.checked("--focal-length", Lens.FOCAL_LENGTH, mm))
                        .orElse(base.focalLengthMm()),
                fNumbers.isEmpty() ? base.fNumbers() : fNumbers,
                transmittance.map(share -> FromOption.checked("--transmittance", Lens.TRANSMITTANCE, share))
                        .orElse(base.transmittance()),
                focusM.map(m -> FromOption.checked("--focus", Lens.FOCUS, m)).orElse(base.focusM()),
                spotUm.map(um -> FromOption.checked("--spot", Lens.SPOT, um)).orElse(base.spotUm()),
                filterStops.map(stops -> FromOption.checked("--filter", Lens.FILTER, stops))
                        .orElse(base.filterStops()),
                projection.orElse(base.projection()));
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
