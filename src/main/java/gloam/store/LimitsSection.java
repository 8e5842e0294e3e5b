package gloam.store;

import gloam.gear.Site;
import gloam.planner.Between;
import gloam.planner.Limits;
import gloam.units.Label;
import gloam.units.Range;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what narrows a wish from its keys. */
final class LimitsSection {

    private static final Range SITES = new Range("number of sites", 1, 50, "");

    private static final String MOON_FRAME = "out-of-frame, unless the Moon is followed or must record";

    private LimitsSection() {
    }

    /** The limits among the keys of a wish of a trip to some sites, for some of its cameras. */
    static Value<Limits> limits(Fields fields, Value<List<SiteSection>> sites, List<String> cameras) {
        Value<Moon> moon = fields.optional("moon", LimitsSection::moon).map(said -> said.orElse(Moon.ANY));
        fields.defaultRule("moon", MOON_FRAME);
        Value<Between> sunDepthDeg = between(fields, "sun-depth-deg", Limits.SUN_DEPTH);
        Value<Optional<Limits.TimeOfNight>> time = fields.optional("time-of-night", LimitsSection::time);
        Value<Between> twilightMin = between(fields, "twilight-min", Limits.TWILIGHT);
        Value<Between> twilightPercent = between(fields, "twilight-percent", Limits.PERCENT);
        Value<Between> arcDeg = between(fields, "arc-deg", Limits.ARC);
        Value<Optional<List<String>>> at = fields.optional("site", value -> names(value, sites));
        return moon.map(wanted -> new Limits(wanted.altitudeDeg, wanted.litPercent, wanted.side,
                sunDepthDeg.get(), time.get(), twilightMin.get(), twilightPercent.get(), arcDeg.get(),
                at.get().orElse(List.of()), cameras, wanted.frame));
    }

    /** The names of some of the trip's sites: one, or a list. */
    private static List<String> names(Item item, Value<List<SiteSection>> sites) {
        List<String> names = item.node() instanceof Node.Scalar ? List.of(SiteSection.named(item, sites))
                : item.list(SITES, one -> SiteSection.named(one, sites));
        item.readAs("name of a site, or a list of them");
        return names;
    }

    private record Moon(Optional<Limits.MoonFrame> frame, Between altitudeDeg, Between litPercent,
            Optional<Limits.Side> side) {

        static final Moon ANY = framed(Optional.empty());

        static Moon framed(Optional<Limits.MoonFrame> frame) {
            return new Moon(frame, Between.ANY, Between.ANY, Optional.empty());
        }
    }

    /** A word about the frame alone, or a section. */
    private static Moon moon(Item item) {
        if (item.node() instanceof Node.Scalar) {
            Limits.MoonFrame frame = moonFrame(item);
            item.readAs(Shown.oneOf(Label.all(List.of(Limits.MoonFrame.values()))) + ", or section");
            return Moon.framed(Optional.of(frame));
        }
        Fields fields = item.fields();
        Value<Optional<Limits.MoonFrame>> frame = fields.optional("frame", LimitsSection::moonFrame);
        fields.defaultRule("frame", MOON_FRAME);
        Value<Between> altitudeDeg = between(fields, "altitude-deg", Limits.MOON_ALTITUDE);
        Value<Between> litPercent = between(fields, "lit-percent", Limits.PERCENT);
        Value<Optional<Limits.Side>> side = fields.optional("side",
                value -> value.word(List.of(Limits.Side.values())));
        fields.noOthers();
        return new Moon(frame.get(), altitudeDeg.get(), litPercent.get(), side.get());
    }

    /** The bounds of a number, any number where the key is not there. */
    static Value<Between> between(Fields fields, String key, Range range) {
        return fields.optional(key, item -> between(item, range)).map(bounds -> bounds.orElse(Between.ANY));
    }

    private static Limits.MoonFrame moonFrame(Item item) {
        return item.word(List.of(Limits.MoonFrame.values()));
    }

    private static Between between(Item item, Range range) {
        Fields fields = item.fields();
        Value<Optional<Double>> least = fields.optional("least", value -> value.number(range));
        Value<Optional<Double>> most = fields.optional("most", value -> value.number(range));
        fields.noOthers();
        if (least.get().isPresent() && most.get().isPresent() && least.get().get() > most.get().get()) {
            throw item.fault("most, " + Shown.number(most.get().get()) + ", is below least, "
                    + Shown.number(least.get().get()) + ". Put them in order.");
        }
        return new Between(optional(least.get()), optional(most.get()));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Limits.TimeOfNight time(Item item) {
        Fields fields = item.fields();
        Value<LocalTime> from = fields.required("from", ItemTimes::time);
        Value<LocalTime> to = fields.required("to", ItemTimes::time);
        fields.noOthers();
        return new Limits.TimeOfNight(from.get(), to.get());
    }
}
