package gloam.store;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.NamedTarget;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.Target;
import gloam.planner.Aim;
import gloam.planner.Between;
import gloam.planner.Sector;
import gloam.planner.Wish;
import gloam.units.Angle;
import gloam.units.Range;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads where the camera of a wish points. */
final class AimSection {

    /** The bodies a camera may be pointed at: never the Sun. */
    static final List<Body> BODIES = Arrays.stream(Body.values()).filter(body -> body != Body.SUN).toList();

    static final Range ROLL = new Range("roll", -180, 180, "deg");

    private AimSection() {
    }

    /** The aim among a wish's keys: a point, what to follow, or the pole. */
    static Value<Aim> aim(Fields fields) {
        return fields.exactlyOneOf(List.of(
                new Fields.Choice<>("point", AimSection::point),
                new Fields.Choice<>("follow", AimSection::follow),
                new Fields.Choice<>("pole", AimSection::pole)));
    }

    private static Aim pole(Item item) {
        Fields fields = item.fields();
        Value<Double> rollDeg = fields.numberOr("roll-deg", 0, ROLL);
        fields.noOthers();
        return new Aim.Pole(Angle.ofDegrees(rollDeg.get()));
    }

    private static Aim point(Item item) {
        Fields fields = item.fields();
        Value<Double> azimuthDeg = fields.number("azimuth-deg", Direction.AZIMUTH);
        Value<Double> altitudeDeg = fields.number("altitude-deg", Direction.ALTITUDE);
        Value<Double> rollDeg = fields.numberOr("roll-deg", 0, ROLL);
        fields.noOthers();
        return new Aim.Point(Direction.ofDegrees(azimuthDeg.get(), altitudeDeg.get()),
                Angle.ofDegrees(rollDeg.get()));
    }

    private static Aim follow(Item item) {
        Fields fields = item.fields();
        Value<Target> target = fields.exactlyOneOf(List.of(
                new Fields.Choice<>("body", value -> value.word(BODIES)),
                new Fields.Choice<>("star", AimSection::star)));
        Value<Optional<Angle>> level = fields.optional("level-within-deg",
                value -> Angle.ofDegrees(value.number(Wish.LEVEL_WITHIN)));
        Value<Between> altitudeDeg = LimitsSection.between(fields, "altitude-deg", Direction.ALTITUDE);
        Value<Optional<Sector>> azimuth = fields.optional("azimuth-deg", AimSection::sector);
        Value<Double> rollDeg = fields.numberOr("roll-deg", 0, ROLL);
        fields.noOthers();
        return new Aim.Follow(target.get(), level.get(), altitudeDeg.get(), azimuth.get(),
                Angle.ofDegrees(rollDeg.get()));
    }

    private static Sector sector(Item item) {
        Fields fields = item.fields();
        Value<Double> fromDeg = fields.number("from", Direction.AZIMUTH);
        Value<Double> toDeg = fields.number("to", Direction.AZIMUTH);
        fields.noOthers();
        return new Sector(fromDeg.get(), toDeg.get());
    }

    /** The bodies and stars that must record: the name of one, or a list. */
    static Wish.Records recorded(Item item) {
        List<Target> targets = item.node() instanceof Node.Scalar ? List.of(recordedOne(item))
                : item.list(Wish.TARGETS, AimSection::recordedOne);
        item.readAs("name of a body or star, or a list of them");
        return new Wish.Records.These(targets);
    }

    private static Target recordedOne(Item item) {
        Target target = named(item);
        if (target instanceof Star star && Double.isNaN(star.magnitude())) {
            throw item.fault("how bright " + Shown.quoted(item.text())
                    + " is, is not known. Name a body or a star " + "of the catalogue.");
        }
        return target;
    }

    private static Target star(Item item) {
        return item.node() instanceof Node.Scalar ? named(item) : starAt(item);
    }

    private static Target named(Item item) {
        item.readAs("name of a star, or section");
        Target target = NamedTarget.of(item.text(), StarCatalogue::builtIn).target();
        if (target == Body.SUN) {
            throw item.fault("the Sun is never to be pointed at. Name something else.");
        }
        return target;
    }

    private static Star starAt(Item item) {
        Fields fields = item.fields();
        Value<Double> raDeg = fields.number("ra-deg", Star.RIGHT_ASCENSION);
        Value<Double> decDeg = fields.number("dec-deg", Star.DECLINATION);
        fields.noOthers();
        String name = "star at " + Shown.number(raDeg.get()) + ", " + Shown.number(decDeg.get());
        return Star.at(name, raDeg.get(), decDeg.get());
    }
}
