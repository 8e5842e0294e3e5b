package gloam.store;

import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.units.BadInput;
import gloam.units.Range;
import java.util.List;

/** Reads a reciprocity law from a short text, as an option gives it, or from a CSV table. */
final class ReciprocityText {

    private static final String FORM = "Write none, power:P, power:P,FROM_S or table:FILE.";
    private static final List<String> HEADER = List.of("metered_s", "corrected_s");

    private ReciprocityText() {
    }

    /** The law a text means: {@code none}, {@code power:P[,FROM_S]} or {@code table:FILE}. */
    static Reciprocity law(String text, Input option) {
        String model = text.replaceFirst(":.*", "");
        String rest = text.substring(Math.min(text.length(), model.length() + 1));
        return switch (model) {
            case "none" -> none(text, rest);
            case "power" -> power(text, rest.split(",", -1));
            case "table" -> table(text, rest, option);
            default -> throw unreadable(text);
        };
    }

    private static Reciprocity none(String text, String rest) {
        if (!rest.isEmpty()) {
            throw unreadable(text);
        }
        return Reciprocity.none();
    }

    private static Reciprocity power(String text, String[] numbers) {
        if (numbers.length > 2) {
            throw unreadable(text);
        }
        double exponent = number(text, numbers[0], Reciprocity.EXPONENT);
        double fromS = numbers.length == 1
                ? ReciprocitySection.ONSET_S : number(text, numbers[1], Reciprocity.ONSET);
        return Reciprocity.power(exponent, fromS);
    }

    private static double number(String text, String number, Range range) {
        return Item.parsed(number).map(range::check).orElseThrow(() -> unreadable(text));
    }

    private static Reciprocity table(String text, String file, Input option) {
        if (file.isEmpty()) {
            throw unreadable(text);
        }
        Findings findings = new Findings();
        return findings.result(() -> table(Source.of(option.naming(file), findings)));
    }

    private static Reciprocity table(Source source) {
        List<ReciprocityTable.Point> points = Csv.read(source, HEADER, ReciprocityText::point);
        try {
            return Reciprocity.table(points);
        } catch (BadInput refused) {
            throw refused.from(source.name());
        }
    }

    private static ReciprocityTable.Point point(List<Item> cells) {
        Value<Double> meteredS = cells.get(0).value(cell -> cell.number(ReciprocityTable.TIME));
        Value<Double> correctedS = cells.get(1).value(cell -> cell.number(ReciprocityTable.TIME));
        return new ReciprocityTable.Point(meteredS.get(), correctedS.get());
    }

    private static BadInput unreadable(String text) {
        return new BadInput("reciprocity " + Shown.quoted(text) + " is not understood. " + FORM);
    }
}
