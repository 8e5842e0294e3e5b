package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.units.Stops;
import java.util.Locale;
import java.util.Optional;

/**
 * How far the layers of a colour film come apart when they lose speed unequally.
 *
 * <p><b>Model.</b> Each layer's exposure falls short by its own reciprocity law. <b>Valid.</b> Near the
 * mid-tone. <b>Error.</b> As large as the shift itself outside what the laws' sources cover.
 * <b>Departures.</b> Layers do not act on each other; the colour of the light itself is left out.
 *
 * @param redStops   how much the red-sensitive layer gets over the mean of the three, in stops
 * @param greenStops the same of the green-sensitive one
 * @param blueStops  the same of the blue-sensitive one
 */
public record ColourShift(double redStops, double greenStops, double blueStops) {

    /** Smallest colour-correction value worth a word: 10, a third of a stop; common practice, no source. */
    private static final double LEAST_CC = 10;
    private static final double CC_A_STOP = 100 * Math.log10(2);

    /** The shift under steady light told by the metered time of the mid-tone in s; none for one layer. */
    public static ColourShift of(FilmStock film, double meteredS) {
        if (!film.colour()) {
            return new ColourShift(0, 0, 0);
        }
        double red = gainStops(film, 0, meteredS);
        double green = gainStops(film, 1, meteredS);
        double blue = gainStops(film, 2, meteredS);
        double mean = (red + green + blue) / 3;
        return new ColourShift(red - mean, green - mean, blue - mean);
    }

    /** The shift in an exposure that finishes, its light taken as steady. */
    public static ColourShift of(FilmStock film, Exposure exposure) {
        double midToneS = exposure.correctedS() / Stops.factor(exposure.skyToneStops());
        return of(film, film.reciprocity().meteredS(midToneS));
    }

    /**
     * The cast in words with its colour-correction value, such as {@code green, CC 12}; empty below 10.
     *
     * <p>The filter that takes it away is of the opposite colour and that value.
     */
    public Optional<String> cast() {
        double most = Math.max(redStops, Math.max(greenStops, blueStops));
        double least = Math.min(redStops, Math.min(greenStops, blueStops));
        boolean oneLeads = most >= -least;
        String hue = oneLeads ? word(most, "red", "green", "blue") : word(least, "cyan", "magenta", "yellow");
        double cc = colourCorrection(oneLeads ? most : -least);
        return Optional.of(String.format(Locale.ROOT, "%s, CC %.0f", hue, cc)).filter(cast -> cc >= LEAST_CC);
    }

    /** Colour-correction value of a layer's lead over the mean of three, 2/3 of that over the other two. */
    static double colourCorrection(double leadStops) {
        return 1.5 * leadStops * CC_A_STOP;
    }

    private String word(double stops, String red, String green, String blue) {
        return stops == redStops ? red : stops == greenStops ? green : blue;
    }

    private static double gainStops(FilmStock film, int layer, double meteredS) {
        Reciprocity law = film.layers().get(layer).reciprocity();
        return Stops.between(law.correctedS(meteredS), meteredS);
    }
}
