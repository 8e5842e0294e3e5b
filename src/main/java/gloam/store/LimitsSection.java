package gloam.store;

import gloam.planner.Between;
import gloam.planner.Limits;
import gloam.units.Range;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what narrows a wish from its keys. */
final class LimitsSection {

    private LimitsSection() {
    }

    /** The limits among a wish's keys. */
    static Value<Limits> limits(Fields fields) {
        Value<Optional<Moon>> moon = fields.optional("moon", LimitsSection::moon);
        Value<Between> sunDepthDeg = between(fields, "sun-depth-deg", Limits.SUN_DEPTH);
        Value<Optional<Limits.TimeOfNight>> time = fields.optional("time-of-night", LimitsSection::time);
        Value<Between> twilightMin = between(fields, "twilight-min", Limits.TWILIGHT);
        Value<Between> twilightPercent = between(fields, "twilight-percent", Limits.PERCENT);
        Value<Between> arcDeg = between(fields, "arc-deg", Limits.ARC);
        return moon.map(wanted -> {
            Moon limits = wanted.orElse(new Moon(Between.ANY, Between.ANY, Optional.empty()));
            return new Limits(limits.altitudeDeg, limits.litPercent, limits.side, sunDepthDeg.get(),
                    time.get(), twilightMin.get(), twilightPercent.get(), arcDeg.get());
        });
    }

    private record Moon(Between altitudeDeg, Between litPercent, Optional<Limits.Side> side) {
    }

    private static Moon moon(Item item) {
        Fields fields = item.fields();
        Value<Between> altitudeDeg = between(fields, "altitude-deg", Limits.MOON_ALTITUDE);
        Value<Between> litPercent = between(fields, "lit-percent", Limits.PERCENT);
        Value<Optional<Limits.Side>> side = fields.optional("side",
                value -> value.word(List.of(Limits.Side.values())));
        fields.noOthers();
        return new Moon(altitudeDeg.get(), litPercent.get(), side.get());
    }

    private static Value<Between> between(Fields fields, String key, Range range) {
        return fields.optional(key, item -> between(item, range)).map(bounds -> bounds.orElse(Between.ANY));
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
        Value<LocalTime> from = fields.required("from", Item::time);
        Value<LocalTime> to = fields.required("to", Item::time);
        fields.noOthers();
        return new Limits.TimeOfNight(from.get(), to.get());
    }
}
