package gloam.journal;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.units.Stops;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A film, its packs, nights and a judge drawn at random, and sheets of it judged as people judge them.
 *
 * <p>Written from the model's description, by another formula than the fit: the exponent itself, tones in
 * closed form. The film lies 0.3 stop from its box, a pack 0.35 stop from the film with the tails of a t
 * distribution of four degrees of freedom, a night's light 0.3 stop from what was computed, the judge 0.3
 * stop from the guide, each sheet 0.45 stop from all that, and one note in twenty is anything.
 */
final class Simulation {

    static final double PUBLISHED_EXPONENT = 1.3;
    static final FilmStock PUBLISHED = Films.print(640, Reciprocity.power(PUBLISHED_EXPONENT, 1));

    private static final double[] BOUNDS_STOPS = {-3, -1.5, -0.5, 0.5, 1.5};

    /** Errors of a scan. */
    private static final double SCAN_STOPS = 0.3;
    private static final double SCAN_MAG = 0.3;

    final double exponent;
    private final SplittableRandom random;
    private final double filmStops;
    private final Map<String, Double> packStops = new HashMap<>();
    private final Map<Integer, Double> nightStops = new HashMap<>();
    private double judgeStops;

    Simulation(long seed) {
        random = new SplittableRandom(seed);
        filmStops = 0.3 * gaussian();
        judgeStops = 0.3 * gaussian();
        double drawn;
        do {
            // mean of the failures 1
            drawn = 1 + (PUBLISHED_EXPONENT - 1) * Math.exp(0.35 * gaussian() - 0.35 * 0.35 / 2);
        } while (drawn > 2);
        exponent = drawn;
    }

    SplittableRandom random() {
        return random;
    }

    /** Sets a pack that many stops slower than the film. */
    Simulation withPack(String pack, double stops) {
        packStops.put(pack, stops);
        return this;
    }

    /** Draws two packs as all packs, until they are that many stops apart, to a twentieth. */
    Simulation withPacksApart(String one, String other, double stops) {
        do {
            packStops.remove(one);
            packStops.remove(other);
        } while (Math.abs(Math.abs(offsetStops(one) - offsetStops(other)) - stops) > 0.05);
        return this;
    }

    /** Sets how many stops brighter than computed a night is. */
    Simulation withNight(int night, double stops) {
        nightStops.put(night, stops);
        return this;
    }

    /** Has the judge call everything so many stops lighter. */
    Simulation withJudge(double stops) {
        judgeStops = stops;
        return this;
    }

    /** By how many stops a pack is slower than published. */
    double offsetStops(String pack) {
        return filmStops + packStops.computeIfAbsent(pack, name -> {
            double squares = 0;
            for (int i = 0; i < 4; i++) {
                squares += Math.pow(gaussian(), 2);
            }
            return 0.35 * gaussian() / Math.sqrt(squares / 4);
        });
    }

    private double nightStops(int night) {
        return nightStops.computeIfAbsent(night, number -> 0.3 * gaussian());
    }

    /**
     * Tone after a time in a light that the published film is computed to meter at that many s, both long.
     */
    double toneStops(String pack, int night, double meteredS, double openS) {
        return Stops.between(1, openS)
                - exponent * (Stops.between(1, meteredS) + offsetStops(pack) - nightStops(night));
    }

    /** Time to the mid-tone in s of a pack in light as computed. */
    double midToneS(String pack, double meteredS) {
        return Math.pow(meteredS * Stops.factor(offsetStops(pack)), exponent);
    }

    /** Time to the mid-tone by the published film. */
    static double publishedS(double meteredS) {
        return Math.pow(meteredS, PUBLISHED_EXPONENT);
    }

    /** The word somebody has for a sheet. */
    ToneWord verdict(String pack, int night, double meteredS, double openS) {
        ToneWord[] words = ToneWord.values();
        if (random.nextDouble() < 0.05) {
            return words[random.nextInt(words.length)];
        }
        double seen = toneStops(pack, night, meteredS, openS) + judgeStops + 0.45 * gaussian();
        int word = 0;
        while (word < BOUNDS_STOPS.length && seen > BOUNDS_STOPS[word]) {
            word++;
        }
        return words[word];
    }

    /** A judged sheet, open that many s. */
    Entry sheet(String id, String pack, int night, double meteredS, double openS) {
        return Sheets.moved(Sheets.steady(id, PUBLISHED, meteredS, openS,
                Sheets.judged(verdict(pack, night, meteredS, openS))), pack, night);
    }

    /** A sheet whose tone was measured to 0.3 stop, half the variance of it the light's. */
    Entry measuredSheet(String id, String pack, int night) {
        double meteredS = 20 * Math.pow(100, random.nextDouble());
        double openS = publishedS(meteredS);
        double seen = toneStops(pack, night, meteredS, openS) + 0.3 * Math.sqrt(0.5) * gaussian();
        return Sheets.moved(Sheets.steady(id, PUBLISHED, meteredS, openS, Sheets.measured(seen, 0.3)), pack,
                night);
    }

    /**
     * A sheet of which a scan was read: its tone to 0.3 stop, its faintest trail to 0.3 magnitude; open as
     * those that are judged.
     */
    Entry scannedSheet(String id, String pack, int night) {
        double meteredS = 20 * Math.pow(100, random.nextDouble());
        return scannedSheet(id, pack, night, meteredS,
                publishedS(meteredS) * Stops.factor(random.nextDouble(-2.5, 1.5)));
    }

    private Entry scannedSheet(String id, String pack, int night, double meteredS, double openS) {
        double toneStops = toneStops(pack, night, meteredS, openS);
        double limitMag = limitMag(pack, night, meteredS, toneStops) + SCAN_MAG * gaussian();
        boolean dark = toneStops < -3.5;
        boolean light = toneStops > 2;
        ScanReading.Tone tone = dark ? new ScanReading.Tone(-3.3, 0, ScanReading.Bound.AT_MOST)
                : light ? new ScanReading.Tone(1.8, 0, ScanReading.Bound.AT_LEAST)
                : new ScanReading.Tone(toneStops + SCAN_STOPS * gaussian(), SCAN_STOPS,
                        ScanReading.Bound.NONE);
        Optional<Estimate> limit = Double.isNaN(limitMag) ? Optional.empty()
                : Optional.of(new Estimate(limitMag, SCAN_MAG));
        return Sheets.moved(Sheets.steady(id, PUBLISHED, meteredS, openS, Sheets.scanned(tone, limit)), pack,
                night);
    }

    /**
     * The faintest star whose trail stands a tenth in density over the sky: flux through the pupil over a
     * square spot, which the film works off at the rate of sky and star together; by halving.
     */
    private double limitMag(String pack, int night, double meteredS, double skyStops) {
        double midLxS = PUBLISHED.midToneLxS() * Stops.factor(offsetStops(pack));
        double skyLx = PUBLISHED.midToneLxS() / meteredS * Stops.factor(nightStops(night));
        double sky = Stops.factor(skyStops);
        double spotMm = Math.hypot(0.04, 2.44 * 555e-6 * 8);
        double dwellS = spotMm / 0.00875;
        double brightest = -20;
        double faintest = 20;
        if (density(sky) - density(1e12) < 0.1) {
            return Double.NaN;
        }
        for (int i = 0; i < 60; i++) {
            double mag = (brightest + faintest) / 2;
            double starLx = 0.9 * 2.54e-6 * Math.pow(10, -0.4 * (mag + 0.3)) * Math.PI / 4 * 15 * 15
                    / (spotMm * spotMm);
            double extra = dwellS * (ratePerS((skyLx + starLx) / midLxS) - ratePerS(skyLx / midLxS));
            boolean shows = density(sky) - density(sky + extra) >= 0.1;
            brightest = shows ? mag : brightest;
            faintest = shows ? faintest : mag;
        }
        return brightest;
    }

    /** No failure up to a second; a power law beyond. */
    private double ratePerS(double meteredPerS) {
        return meteredPerS >= 1 ? meteredPerS : Math.pow(meteredPerS, exponent);
    }

    /** A print of 0.12 to 1.8, its mid-tone at 0.74 with a slope of 1.4: logistic in the logarithm. */
    private static double density(double progress) {
        double odds = (0.74 - 0.12) / (1.8 - 0.74);
        double power = 1.4 * (1.8 - 0.12) / ((0.74 - 0.12) * (1.8 - 0.74)) / Math.log(10);
        return 0.12 + (1.8 - 0.12) * odds / (odds + Math.pow(progress, power));
    }

    /** A sheet in a light from dusk to dark, open for about the published time. */
    Entry anySheet(String id, String pack, int night) {
        double meteredS = 20 * Math.pow(100, random.nextDouble());
        return sheet(id, pack, night, meteredS,
                publishedS(meteredS) * Stops.factor(random.nextDouble(-2.5, 1.5)));
    }

    private double gaussian() {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
                * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
