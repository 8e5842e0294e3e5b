package gloam.store;

import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.planner.CarriedCamera;
import gloam.units.Nearest;
import gloam.units.Range;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Reads the camera from its keys. */
final class CameraSection {

    private static final Range F_NUMBERS = new Range("number of f-numbers", 1, 60, "");

    /**
     * Stand-ins for what is left out: a coated lens, a sharp one, hands in the dark; common practice, no
     * source.
     */
    private static final double TRANSMITTANCE = 0.9;
    private static final double SPOT_UM = 40;
    private static final double CHANGEOVER_MIN = 5;

    private CameraSection() {
    }

    /** The camera at an item. */
    static Camera camera(Item item) {
        Fields fields = item.fields();
        return camera(item, fields, fields.orDefault("name", "camera", "camera", Item::text));
    }

    private static Camera camera(Item item, Fields fields, Value<String> name) {
        Value<Frame> frame = fields.required("frame-mm", CameraSection::frame);
        Value<Double> changeoverMin = fields.numberOr("changeover-min", CHANGEOVER_MIN, Camera.CHANGEOVER);
        Value<Lens> lens = lens(item, fields, frame);
        fields.noOthers();
        return new Camera(name.get(), lens.get(), frame.get(), minutes(changeoverMin.get()));
    }

    /** The cameras in a list, each with a name. */
    static List<CarriedCamera> cameras(Item item) {
        UniqueName names = new UniqueName();
        return item.list(CarriedCamera.CAMERAS, one -> {
            Fields fields = one.fields();
            Value<String> name = fields.required("name", names);
            Value<Optional<FilmStock>> film = fields.optional("film", FilmFile::film);
            return new CarriedCamera(camera(one, fields, name), film.get());
        });
    }

    /** The names of some of the cameras: one, or a list. */
    static List<String> named(Item item, Value<List<CarriedCamera>> cameras) {
        List<String> names = item.node() instanceof Node.Scalar ? List.of(oneNamed(item, cameras))
                : item.list(CarriedCamera.CAMERAS, one -> oneNamed(one, cameras));
        item.readAs("name of a camera, or a list of them");
        return names;
    }

    private static String oneNamed(Item item, Value<List<CarriedCamera>> cameras) {
        String name = item.text();
        List<String> known = cameras.get().stream().map(one -> one.camera().name()).toList();
        if (!known.contains(name)) {
            throw item.fault("no camera is named " + Shown.quoted(name) + ". " + Nearest.hint(name, known));
        }
        return name;
    }

    private static Value<Lens> lens(Item item, Fields fields, Value<Frame> frame) {
        Value<Double> focalLengthMm = fields.number("focal-length-mm", Lens.FOCAL_LENGTH);
        Value<List<FNumber>> fNumbers = fields.exactlyOneOf(List.of(
                new Fields.Choice<>("f-numbers", value -> value.list(F_NUMBERS, CameraSection::fNumber)),
                new Fields.Choice<>("pinhole-mm", value -> List.of(pinhole(value, focalLengthMm)))));
        boolean pinhole = fields.has("pinhole-mm");
        double clearShare = pinhole ? 1 : TRANSMITTANCE;
        double sharpUm = pinhole ? pinholeUm(fNumbers, focalLengthMm) : SPOT_UM;
        Value<Double> transmittance = fields.oneOf(List.of(
                new Fields.Choice<>("transmittance", value -> value.number(Lens.TRANSMITTANCE)),
                new Fields.Choice<>("t-stop", CameraSection::tStop)), clearShare, Shown.number(clearShare));
        fields.defaultRule("transmittance", Shown.number(TRANSMITTANCE) + ", or 1 of a pinhole");
        Value<Double> focusM = fields.orDefault("focus-m", Double.POSITIVE_INFINITY, "infinity",
                value -> focus(value, focalLengthMm, pinhole));
        Value<Double> spotUm = fields.numberOr("spot-um", sharpUm, Lens.SPOT);
        fields.defaultRule("spot-um", Shown.number(SPOT_UM) + ", or the width of a pinhole");
        if (pinhole) {
            fields.refuse("t-stop", "a pinhole has no glass. Take t-stop away.");
        }
        Value<Double> filterStops = fields.numberOr("filter-stops", 0, Lens.FILTER);
        Value<Projection> projection = fields.orDefault("projection", Projection.RECTILINEAR, "rectilinear",
                value -> value.word(List.of(Projection.values())));
        Value<Double> cornerStops = fields.numberOr("corner-stops", 0, Vignetting.CORNER);
        return item.value(here -> new Lens(focalLengthMm.get(), fNumbers.get(), transmittance.get(),
                focusM.get(), spotUm.get(), filterStops.get(), projection.get(),
                new Vignetting(cornerStops.get(),
                        frame.get().halfDiagonalMm(), Collections.min(fNumbers.get()))));
    }

    /** The transmittance of a lens known by its T-number: an f-number and the T-number there. */
    private static double tStop(Item item) {
        Fields fields = item.fields();
        Value<FNumber> fNumber = fields.required("f-number", CameraSection::fNumber);
        Value<Double> tNumber = fields.required("t-number",
                value -> FNumber.exactOf(value.number(Lens.T_NUMBER)));
        fields.noOthers();
        return Lens.transmittanceOf(fNumber.get(), tNumber.get());
    }

    /** The f-number that an item is marked with. */
    static FNumber fNumber(Item item) {
        return FNumber.marked(item.number(FNumber.RANGE, text -> FNumber.of(text).marked()));
    }

    /** A length of time given in minutes, to a thousandth of a second. */
    static Duration minutes(double minutes) {
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }

    /** The f-number of a pinhole, focal length over diameter, to a hundredth. */
    private static FNumber pinhole(Item item, Value<Double> focalLengthMm) {
        double number = Math.round(focalLengthMm.get() / item.number(Lens.PINHOLE) * 100) / 100.0;
        if (number < FNumber.RANGE.least() || number > FNumber.RANGE.most()) {
            throw item.fault("is f/" + Shown.number(number) + " with a focal length of "
                    + Shown.number(focalLengthMm.get()) + " mm; give one from f/0.7 to f/512.");
        }
        return FNumber.marked(number);
    }

    /** The width of the image that a pinhole makes of a star, that of the pinhole, in µm. */
    private static double pinholeUm(Value<List<FNumber>> fNumbers, Value<Double> focalLengthMm) {
        return fNumbers.content().flatMap(all -> focalLengthMm.content()
                .map(mm -> (double) Math.round(1000 * mm / all.get(0).exact()))).orElse(SPOT_UM);
    }

    private static double focus(Item item, Value<Double> focalLengthMm, boolean pinhole) {
        double focusM = item.number(focalLengthMm.content().map(Lens::focus).orElse(Lens.FOCUS));
        item.readAs(Lens.FOCUS);
        if (pinhole && !Double.isInfinite(focusM)) {
            throw item.fault("a pinhole is not focused. Take focus-m away.");
        }
        return focusM;
    }

    private static Frame frame(Item item) {
        if (item.node() instanceof Node.Scalar scalar && Frame.written(scalar.text())) {
            return Frame.of(scalar.text());
        }
        Fields fields = item.fields();
        item.readAs("width x height, or section");
        Value<Double> widthMm = fields.number("width", Frame.SIDE);
        Value<Double> heightMm = fields.number("height", Frame.SIDE);
        fields.noOthers();
        return new Frame(widthMm.get(), heightMm.get());
    }
}
