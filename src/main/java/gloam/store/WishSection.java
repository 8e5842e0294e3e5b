package gloam.store;

import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Site;
import gloam.planner.Aim;
import gloam.planner.CarriedCamera;
import gloam.planner.Limits;
import gloam.planner.SkyKind;
import gloam.planner.TrailLength;
import gloam.planner.Wish;
import gloam.units.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads the wishes of a trip from their keys. */
final class WishSection {

    private static final Range WISHES = new Range("number of wishes", 0, 200, "");
    private static final int BRACKET_SHEETS = 3;

    private final Value<List<CarriedCamera>> cameras;
    private final Value<List<SiteSection>> sites;
    private final UniqueName names = new UniqueName();

    private WishSection(Value<List<CarriedCamera>> cameras, Value<List<SiteSection>> sites) {
        this.cameras = cameras;
        this.sites = sites;
    }

    /** The wishes in a list, for some cameras at some sites. */
    static List<Wish> wishes(Item item, Value<List<CarriedCamera>> cameras,
            Value<List<SiteSection>> sites) {
        WishSection section = new WishSection(cameras, sites);
        return item.list(WISHES, section::wish).stream().flatMap(List::stream).toList();
    }

    /** The wish at an item, or those of its bracket. */
    private List<Wish> wish(Item item) {
        Fields fields = item.fields();
        Value<String> name = fields.required("name", names);
        Value<Optional<List<String>>> by = fields.optional("camera",
                value -> CameraSection.named(value, cameras));
        Function<Item, FNumber> fNumber = value -> fNumberOfLens(value, takers(by));
        Value<Optional<OpeningsSection>> openings = fields.optional("openings",
                value -> OpeningsSection.of(value, fNumber));
        Optional<Value<OpeningsSection.Opening>> first = OpeningsSection.first(fields, openings);
        Value<Aim> aim = first.map(own -> own.map(OpeningsSection.Opening::aim))
                .orElseGet(() -> AimSection.aim(fields));
        Value<SkyKind> sky = first.map(own -> own.map(OpeningsSection.Opening::sky))
                .orElseGet(() -> OpeningsSection.sky(fields));
        Value<Wish.Tone> tone = tone(fields);
        Value<Wish.Records> records = records(fields);
        Value<Optional<TrailLength>> trail = fields.optional("trail-mm", WishSection::trail);
        Value<OpeningsSection.Times> times = first.map(own -> own.map(OpeningsSection.Opening::times))
                .orElseGet(() -> OpeningsSection.times(item, fields, fNumber));
        Value<Double> worth = fields.numberOr("worth", 1, Wish.WORTH);
        int once = fields.has("bracket-stops") ? BRACKET_SHEETS : 1;
        Value<Integer> repeat = fields.orDefault("repeat", once, String.valueOf(once),
                value -> value.whole(Wish.REPEAT));
        fields.defaultRule("repeat", "1, or " + BRACKET_SHEETS + " with bracket-stops");
        Value<Optional<Double>> bracketStops = fields.optional("bracket-stops",
                value -> value.number(Wish.BRACKET));
        Value<Limits> limits = LimitsSection.limits(fields, sites,
                by.content().flatMap(Function.identity()).orElse(List.of()));
        Value<Optional<FilmStock>> film = fields.optional("film", FilmFile::film);
        fields.noOthers();
        Wish wish = new Wish(name.get(), aim.get(), sky.get(), tone.get(), records.get(),
                trail.get().orElse(new TrailLength(OptionalDouble.empty(), OptionalDouble.empty())),
                times.get().shortest(), times.get().longest(), times.get().fNumbers(), worth.get(),
                repeat.get(),
                film.get(), limits.get(), openings.get().map(OpeningsSection::later).orElse(List.of()));
        if (wish.ofMoon() && limits.get().moonFrame().equals(Optional.of(Limits.MoonFrame.OUT_OF_FRAME))) {
            throw limits.place().fault("the Moon is followed or must record, so it cannot be out of the "
                    + "frame." + " Take one of the two away.");
        }
        if (!takers(by).isEmpty() && takers(by).stream().noneMatch(one -> one.takes(wish))) {
            throw item.fault("no camera has all of its f-numbers. Name those of one.");
        }
        return bracketStops.get().map(stops -> bracket(wish, stops, bracketStops.place()))
                .orElse(List.of(wish));
    }

    private List<Wish> bracket(Wish wish, double stops, Item item) {
        if (wish.repeat() == 1) {
            throw item.fault("a bracket of one sheet is none. Make repeat 2 or more, or leave it out for "
                    + BRACKET_SHEETS + ".");
        }
        if (!(wish.tone() instanceof Wish.Tone.Near)) {
            throw item.fault("needs a tone to aim for. Add the key tone-stops.");
        }
        List<Wish> bracket = wish.bracketed(stops);
        bracket.stream().skip(1).forEach(one -> names.unique(one.name(), item));
        return bracket;
    }

    private static Value<Wish.Tone> tone(Fields fields) {
        return fields.<Wish.Tone>oneOf(List.of(
                new Fields.Choice<>("tone-stops", value -> new Wish.Tone.Near(value.number(Wish.TONE))),
                new Fields.Choice<>("tone-at-most-stops",
                value -> new Wish.Tone.AtMost(value.number(Wish.TONE)))))
                .map(tone -> tone.orElse(new Wish.Tone.Free()));
    }

    private static Value<Wish.Records> records(Fields fields) {
        return fields.<Wish.Records>oneOf(List.of(
                new Fields.Choice<>("records-at-least",
                value -> new Wish.Records.AtLeast(value.whole(Wish.RECORDS))),
                new Fields.Choice<>("records", AimSection::recorded)))
                .map(records -> records.orElse(new Wish.Records.Nothing()));
    }

    private static TrailLength trail(Item item) {
        Fields fields = item.fields();
        Value<Optional<Double>> least = fields.optional("least", value -> value.number(TrailLength.TRAIL));
        Value<Optional<Double>> most = fields.optional("most",
                value -> notBelow(value, TrailLength.TRAIL, least.content().flatMap(Function.identity())));
        fields.noOthers();
        return new TrailLength(optional(least.get()), optional(most.get()));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    static double notBelow(Item item, Range range, Optional<Double> least) {
        double most = item.number(range);
        least.filter(number -> number > most).ifPresent(number -> {
            throw item.fault(Shown.number(most) + " " + range.unit() + " is below the lower limit of "
                    + Shown.number(number) + " " + range.unit() + ". Put them in order.");
        });
        return most;
    }

    /** The cameras that may take a wish, all where it names none; empty where they could not be read. */
    private List<CarriedCamera> takers(Value<Optional<List<String>>> by) {
        Optional<List<String>> names = by.content().flatMap(Function.identity());
        return cameras.content().orElse(List.of()).stream().filter(one ->
                names.map(some -> some.contains(one.camera().name())).orElse(true)).toList();
    }

    private static FNumber fNumberOfLens(Item item, List<CarriedCamera> takers) {
        FNumber fNumber = CameraSection.fNumber(item);
        List<FNumber> all = takers.stream().flatMap(one -> one.camera().lens().fNumbers().stream()).distinct()
                .sorted().toList();
        if (!all.isEmpty() && !all.contains(fNumber)) {
            throw item.fault((takers.size() > 1 ? "no lens has " : "the lens has no ") + fNumber
                    + (takers.size() > 1 ? ". They have " : ". It has ")
                    + String.join(", ", all.stream().map(FNumber::number).toList()) + ".");
        }
        return fNumber;
    }
}
