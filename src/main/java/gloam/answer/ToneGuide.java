package gloam.answer;

import gloam.film.ToneCurve;
import gloam.journal.ToneWord;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.List;

/**
 * The words for the tone of the sky, each with a grey patch for comparison.
 *
 * @param patches one for each word, darkest first
 */
public record ToneGuide(List<Patch> patches) {

    private static final int BRIGHTEST_LEVEL = 255;

    /** Copies the list. */
    public ToneGuide {
        patches = List.copyOf(patches);
    }

    /**
     * A word and its grey.
     *
     * @param word        the word
     * @param reflectance share of the light that a typical patch of it reflects, 0 to 1, on a generic print
     */
    public record Patch(ToneWord word, double reflectance) {

        private static Patch of(ToneWord word) {
            return new Patch(word, Math.pow(10, -ToneCurve.PRINT.density(Stops.factor(word.typicalStops()))));
        }

        /**
         * The level, 0 to 255, of the grey of IEC 61966-2-1 (sRGB) of that luminance, paper white being 1.
         */
        public int screenLevel() {
            return screenLevel(reflectance);
        }

        static int screenLevel(double luminance) {
            double signal = luminance <= 0.0031308 ? 12.92 * luminance
                    : 1.055 * Math.pow(luminance, 1 / 2.4) - 0.055;
            return (int) Math.round(BRIGHTEST_LEVEL * signal);
        }
    }

    /** The guide. */
    public static ToneGuide all() {
        return new ToneGuide(Arrays.stream(ToneWord.values()).map(Patch::of).toList());
    }
}
