package gloam.store;

import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.units.Range;
import java.util.List;

/** Reads a reciprocity law from its keys. */
final class ReciprocitySection {

    private static final Range TABLE_POINTS = new Range("number of points", 2, 200, "");

    /** Where a power law begins unless it says otherwise: makers print tc = tm^P for more than one second. */
    static final double ONSET_S = 1;

    private enum Model { NONE, POWER, SCHWARZSCHILD, ADDED_POWER, CATENARY, TABLE }

    private ReciprocitySection() {
    }

    /** The law of a section: its model and the numbers of that model. */
    static Reciprocity law(Fields fields) {
        return switch (fields.deciding("model", value -> value.word(List.of(Model.values())))) {
            case NONE -> none(fields);
            case POWER -> power(fields);
            case SCHWARZSCHILD -> schwarzschild(fields);
            case ADDED_POWER -> addedPower(fields);
            case CATENARY -> catenary(fields);
            case TABLE -> table(fields);
        };
    }

    private static Reciprocity none(Fields fields) {
        fields.noOthers();
        return Reciprocity.none();
    }

    private static Reciprocity power(Fields fields) {
        Value<Double> exponent = fields.number("exponent", Reciprocity.EXPONENT);
        Value<Double> fromS = onset(fields);
        fields.noOthers();
        return Reciprocity.power(exponent.get(), fromS.get());
    }

    private static Reciprocity schwarzschild(Fields fields) {
        Value<Double> p = fields.number("schwarzschild-p", Reciprocity.SCHWARZSCHILD_P);
        Value<Double> fromS = onset(fields);
        fields.noOthers();
        return Reciprocity.schwarzschild(p.get(), fromS.get());
    }

    private static Value<Double> onset(Fields fields) {
        return fields.numberOr("from-s", ONSET_S, Reciprocity.ONSET);
    }

    private static Reciprocity addedPower(Fields fields) {
        Value<Double> addedS = fields.number("added-at-one-second-s", Reciprocity.ADDED);
        Value<Double> exponent = fields.number("exponent", Reciprocity.EXPONENT);
        fields.noOthers();
        return new Reciprocity.AddedPower(addedS.get(), exponent.get());
    }

    private static Reciprocity catenary(Fields fields) {
        Value<Double> bend = fields.number("bend", Reciprocity.BEND);
        Value<Double> bestS = fields.number("best-s", Reciprocity.BEST_TIME);
        Value<Double> referenceS = fields.orElse("reference-s", bestS, "as best-s",
                value -> value.number(Reciprocity.BEST_TIME));
        fields.noOthers();
        return new Reciprocity.Catenary(bend.get(), bestS.get(), referenceS.get());
    }

    private static Reciprocity table(Fields fields) {
        Value<List<ReciprocityTable.Point>> points = fields.required("points",
                value -> value.list(TABLE_POINTS, ReciprocitySection::point));
        fields.noOthers();
        return Reciprocity.table(points.get());
    }

    private static ReciprocityTable.Point point(Item item) {
        Fields fields = item.fields();
        Value<Double> meteredS = fields.number("metered-s", ReciprocityTable.TIME);
        Value<Double> correctedS = fields.number("corrected-s", ReciprocityTable.TIME);
        fields.noOthers();
        return new ReciprocityTable.Point(meteredS.get(), correctedS.get());
    }
}
