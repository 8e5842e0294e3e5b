package gloam.store;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.List;

/** Reads a film from its keys. */
final class FilmSection {

    private static final Range DENSITY_MID = new Range("mid-tone density", 0, 4.5, "");
    private static final List<String> COLOURS = List.of("red", "green", "blue");

    private enum Layers { MONO, THREE }

    private FilmSection() {
    }

    /** The film at an item: a section of keys. */
    static FilmStock film(Item item) {
        Fields fields = item.fields();
        Value<String> name = fields.required("name", Item::text);
        Value<Double> iso = fields.number("iso", FilmStock.ISO);
        Value<FilmStock.Kind> kind = fields.required("kind",
                value -> value.word(List.of(FilmStock.Kind.values())));
        Value<Layers> layering = fields.orDefault("layers", Layers.MONO, "mono",
                value -> value.word(List.of(Layers.values())));
        Value<List<FilmStock.Layer>> layers = fields.required("reciprocity",
                value -> layers(value, layering.get()));
        Value<ToneCurve> tone = fields.orElse("tone", kind.map(FilmSection::usualTone),
                "as is usual for its kind", value -> tone(value, kind));
        Value<Double> offset = fields.numberOr("speed-offset-stops", 0, FilmStock.SPEED_OFFSET);
        Value<String> source = fields.orDefault("source", "not stated", "not stated", Item::text);
        fields.noOthers();
        return new FilmStock(name.get(), iso.get(), kind.get(), layers.get(), tone.get(), offset.get(),
                source.get());
    }

    private static ToneCurve usualTone(FilmStock.Kind kind) {
        return kind == FilmStock.Kind.POSITIVE ? ToneCurve.PRINT : ToneCurve.NEGATIVE;
    }

    private static ToneCurve tone(Item item, Value<FilmStock.Kind> kind) {
        Fields fields = item.fields();
        Value<Double> least = fields.number("density-min", ToneCurve.DENSITY_MIN);
        Value<Double> most = fields.number("density-max", ToneCurve.DENSITY_MAX);
        Value<Double> middle = fields.number("density-mid", DENSITY_MID);
        Value<Double> gamma = fields.number("gamma", ToneCurve.GAMMA);
        fields.noOthers();
        double sign = kind.get() == FilmStock.Kind.POSITIVE ? -1 : 1;
        return new ToneCurve(least.get(), most.get(), middle.get(), sign * gamma.get());
    }

    private static List<FilmStock.Layer> layers(Item item, Layers layering) {
        Fields fields = item.fields();
        if (layering == Layers.MONO) {
            return List.of(new FilmStock.Layer("mono", ReciprocitySection.law(fields)));
        }
        if (COLOURS.stream().noneMatch(fields::has)) {
            Reciprocity shared = ReciprocitySection.law(fields);
            return COLOURS.stream().map(colour -> new FilmStock.Layer(colour, shared)).toList();
        }
        List<Value<FilmStock.Layer>> layers = new ArrayList<>();
        for (String colour : COLOURS) {
            layers.add(fields.required(colour, value -> new FilmStock.Layer(colour,
                    ReciprocitySection.law(value.fields()))));
        }
        fields.noOthers();
        return layers.stream().map(Value::get).toList();
    }
}
