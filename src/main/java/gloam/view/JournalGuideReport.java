package gloam.view;

import gloam.answer.ToneGuide;
import gloam.journal.ToneWord;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The words for the tone of the sky, each with a grey patch for comparison.
 *
 * @param generatedAt when the report was made
 * @param words       the words, darkest first
 */
public record JournalGuideReport(OffsetDateTime generatedAt, List<WordRow> words) implements Report {

    /** Reports the guide. */
    public static JournalGuideReport of(ToneGuide guide, Instant now) {
        return new JournalGuideReport(new SiteClock(ZoneOffset.UTC).at(now),
                guide.patches().stream().map(WordRow::of).toList());
    }

    @Override
    public Document document() {
        Table table = new Table(Table.words("word"), Table.numbers("", "stops"),
                Table.numbers("reflects", "%").leaving(1), Table.words("how to recognize it"));
        words().forEach(word -> table.row(word.word(), stops(word),
                Wording.number(100 * word.reflectance(), 0), word.guide()));
        Document document = Document.headed("The tone of the sky on the finished picture, in stops from "
                + "the mid-tone")
                .figure("the words as greys", made -> ToneGuideDrawing.of(this, made)).gap();
        document.add(table);
        document.gap();
        document.text("Judge in daylight, dry, away from trails and the frame's edge; a negative by its "
                + "print. A blank sheet is \"black\", and counts too.");
        document.add(new Block.Hint("A grey patch for each word is in svg and html."));
        return document;
    }

    /** Between what stops a word lies. */
    static String stops(WordRow word) {
        if (word.aboveStops().isEmpty()) {
            return "below " + stops(word.upToStops());
        }
        return word.upToStops().isEmpty() ? "above " + stops(word.aboveStops())
                : stops(word.aboveStops()) + " … " + stops(word.upToStops());
    }

    private static String stops(OptionalDouble bound) {
        return Wording.signed(bound.getAsDouble(), 1);
    }

    /**
     * A word.
     *
     * @param word        the word as options write it
     * @param aboveStops  darkest tone it stands for, in stops from the mid-tone; absent for black
     * @param upToStops   lightest tone it stands for; absent for white
     * @param reflectance share of the light that a typical patch of it reflects, 0 to 1, on a generic print
     * @param patch       the patch on a screen, as an sRGB colour such as {@code #767676}
     * @param guide       how to recognize it
     */
    public record WordRow(String word, OptionalDouble aboveStops, OptionalDouble upToStops,
            double reflectance,
                          String patch, String guide) {

        static WordRow of(ToneGuide.Patch patch) {
            ToneWord word = patch.word();
            int level = patch.screenLevel();
            return new WordRow(Label.of(word), Finite.of(word.aboveStops()), Finite.of(word.upToStops()),
                    patch.reflectance(), String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level),
                    word.guide());
        }
    }
}
