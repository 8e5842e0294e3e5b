package gloam.journal;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A film drawn at random about a published one, and sheets of it judged as people judge them.
 *
 * <p>Written from the model's description, by another formula than the fit: the exponent itself, tones in
 * closed form.
 */
final class Simulation {

    static final double PUBLISHED_EXPONENT = 1.3;
    static final FilmStock PUBLISHED = Films.print(640, Reciprocity.power(PUBLISHED_EXPONENT, 1));

    private static final double[] BOUNDS_STOPS = {-3, -1.5, -0.5, 0.5, 1.5};

    final double offsetStops;
    final double exponent;
    private final SplittableRandom random;

    Simulation(long seed) {
        random = new SplittableRandom(seed);
        offsetStops = 0.5 * gaussian();
        double drawn;
        do {
            drawn = 1 + (PUBLISHED_EXPONENT - 1) * Math.exp(0.35 * gaussian());
        } while (drawn > 2);
        exponent = drawn;
    }

    SplittableRandom random() {
        return random;
    }

    /** Tone after a time in a light that the published film meters at that many s, both long. */
    double toneStops(double meteredS, double openS) {
        return Stops.between(1, openS) - exponent * (Stops.between(1, meteredS) + offsetStops);
    }

    /** Time to the mid-tone by the published film. */
    static double publishedS(double meteredS) {
        return Math.pow(meteredS, PUBLISHED_EXPONENT);
    }

    /** The word somebody has for a sheet: off by 0.6 stop at random, one in twenty anything. */
    ToneWord verdict(double meteredS, double openS) {
        ToneWord[] words = ToneWord.values();
        if (random.nextDouble() < 0.05) {
            return words[random.nextInt(words.length)];
        }
        double seen = toneStops(meteredS, openS) + 0.6 * gaussian();
        int word = 0;
        while (word < BOUNDS_STOPS.length && seen > BOUNDS_STOPS[word]) {
            word++;
        }
        return words[word];
    }

    /** A journal of so many sheets in lights from dusk to dark, each open for about the published time. */
    List<Entry> journal(int sheets) {
        List<Entry> journal = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            double meteredS = 20 * Math.pow(100, random.nextDouble());
            double openS = publishedS(meteredS) * Stops.factor(random.nextDouble(-2.5, 1.5));
            journal.add(Sheets.steady(String.valueOf(i + 1), PUBLISHED, meteredS, openS,
                    Sheets.judged(verdict(meteredS, openS))));
        }
        return journal;
    }

    private double gaussian() {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
                * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
