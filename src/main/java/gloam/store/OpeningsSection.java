package gloam.store;

import gloam.gear.FNumber;
import gloam.planner.Aim;
import gloam.planner.LaterOpening;
import gloam.planner.SkyKind;
import gloam.planner.Wish;
import gloam.units.Range;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The openings of a wish that has several on one sheet, as read from their keys.
 *
 * @param first the first, which has the keys that a wish of one opening has itself
 * @param later the others
 */
record OpeningsSection(Opening first, List<LaterOpening> later) {

    private static final Range OPENINGS = new Range("number of openings", 2, 10, "");
    private static final Range F_NUMBERS = new Range("number of f-numbers", 1, 60, "");
    private static final double SHORTEST_MIN = 1;
    private static final double LONGEST_MIN = 240;

    /** How a sheet is exposed at first. */
    record Opening(Aim aim, SkyKind sky, Times times) {
    }

    /** The exposure times and f-numbers to choose from, all of the lens where there is none. */
    record Times(Duration shortest, Duration longest, List<FNumber> fNumbers) {
    }

    private record Open(double shortestMin, double longestMin) {
    }

    /** One of the two. */
    private record Either(Optional<Opening> first, Optional<LaterOpening> later) {
    }

    /** The openings in a list, through f-numbers that are read so. */
    static OpeningsSection of(Item item, Function<Item, FNumber> fNumber) {
        List<Either> all = item.list(OPENINGS, one -> {
            Fields fields = one.fields();
            if (one.path().endsWith("[0]")) {
                Value<Aim> aim = AimSection.aim(fields);
                Value<SkyKind> sky = sky(fields);
                Value<Times> times = times(one, fields, fNumber);
                fields.noOthers();
                return new Either(Optional.of(new Opening(aim.get(), sky.get(), times.get())),
                        Optional.empty());
            }
            return new Either(Optional.empty(), Optional.of(later(fields, fNumber)));
        });
        return new OpeningsSection(all.get(0).first.orElseThrow(),
                all.stream().flatMap(one -> one.later.stream()).toList());
    }

    /**
     * The first of several openings of a wish, which then has none of its keys itself; empty for one alone.
     */
    static Optional<Value<Opening>> first(Fields wish, Value<Optional<OpeningsSection>> openings) {
        if (!wish.has("openings")) {
            return Optional.empty();
        }
        List.of("point", "follow", "pole", "sky", "exposure-min", "f-numbers").forEach(key ->
                wish.refuse(key, "stands beside openings, each of which has its own. Move it into one."));
        return Optional.of(openings.map(all -> all.orElseThrow().first));
    }

    /** The exposure times and f-numbers among the keys of a section. */
    static Value<Times> times(Item item, Fields fields, Function<Item, FNumber> fNumber) {
        Value<Open> open = fields.orDefault("exposure-min", new Open(SHORTEST_MIN, LONGEST_MIN),
                "shortest " + Shown.number(SHORTEST_MIN) + ", longest " + Shown.number(LONGEST_MIN),
                OpeningsSection::open);
        Value<Optional<List<FNumber>>> fNumbers = fields.optional("f-numbers",
                value -> value.list(F_NUMBERS, fNumber));
        return item.value(here -> new Times(CameraSection.minutes(open.get().shortestMin),
                CameraSection.minutes(open.get().longestMin), fNumbers.get().orElse(List.of())));
    }

    private static LaterOpening later(Fields fields, Function<Item, FNumber> fNumber) {
        Value<Aim> aim = AimSection.aim(fields);
        Value<SkyKind> sky = sky(fields);
        Value<Integer> lastsMin = fields.required("exposure-min",
                value -> value.whole(LaterOpening.EXPOSURE));
        Value<Optional<FNumber>> own = fields.optional("f-number", fNumber);
        Value<Integer> gapMin = fields.orDefault("gap-min", 0, "0", value -> value.whole(LaterOpening.GAP));
        fields.noOthers();
        return new LaterOpening(aim.get(), sky.get(), Duration.ofMinutes(lastsMin.get()), own.get(),
                Duration.ofMinutes(gapMin.get()));
    }

    /** The kind of sky among them. */
    static Value<SkyKind> sky(Fields fields) {
        return fields.orDefault("sky", SkyKind.ANY, "any",
                value -> value.word(List.of(SkyKind.values())));
    }

    private static Open open(Item item) {
        Fields fields = item.fields();
        Value<Double> shortest = fields.numberOr("shortest", SHORTEST_MIN, Wish.EXPOSURE);
        Value<Double> longest = fields.orElse("longest", shortest.map(min -> Math.max(min, LONGEST_MIN)),
                Shown.number(LONGEST_MIN) + ", or the shortest where that is more",
                value -> WishSection.notBelow(value, Wish.EXPOSURE, shortest.content()));
        fields.noOthers();
        return new Open(shortest.get(), longest.get());
    }
}
