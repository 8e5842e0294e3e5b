package gloam.view;

import gloam.film.ToneCurve;
import gloam.journal.ToneWord;
import gloam.units.Finite;
import gloam.units.Stops;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The words for the tone of the sky, each with a grey to compare with.
 *
 * @param generatedAt when the report was made
 * @param words       the words, darkest first
 */
public record JournalGuideReport(OffsetDateTime generatedAt, List<WordRow> words) implements JournalReport {

    /** The guide. */
    public static JournalGuideReport of(Instant now) {
        return new JournalGuideReport(new SiteClock(ZoneOffset.UTC).asked(now),
                Arrays.stream(ToneWord.values()).map(WordRow::of).toList());
    }

    /**
     * A word.
     *
     * @param word        the word as options write it
     * @param aboveStops  the darkest tone it stands for, from the mid-tone; none for black
     * @param upToStops   the lightest; none for white
     * @param reflectance share of light that a typical patch of it sends back, 0 to 1, on the generic print
     * @param patch       the patch on a screen, as a colour of sRGB
     * @param guide       how to tell it
     */
    public record WordRow(String word, OptionalDouble aboveStops, OptionalDouble upToStops, double reflectance,
                          String patch, String guide) {

        static WordRow of(ToneWord word) {
            double reflectance = Math.pow(10, -ToneCurve.PRINT.density(Stops.factor(word.typicalStops())));
            return new WordRow(SheetRow.label(word), Finite.of(word.aboveStops()), Finite.of(word.upToStops()),
                    reflectance, patch(reflectance), word.guide());
        }

        /** The grey of IEC 61966-2-1 (sRGB) of that luminance, paper white being 1. */
        static String patch(double reflectance) {
            double signal = reflectance <= 0.0031308 ? 12.92 * reflectance
                    : 1.055 * Math.pow(reflectance, 1 / 2.4) - 0.055;
            long level = Math.round(255 * signal);
            return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level);
        }
    }
}
