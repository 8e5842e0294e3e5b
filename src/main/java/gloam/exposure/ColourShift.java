package gloam.exposure;

import java.util.List;
import java.util.Optional;

/**
 * How far the layers of a colour film come apart, by the colour of the light and since they lose speed
 * unequally.
 *
 * <p><b>Model.</b> Each layer makes progress by its own reciprocity law under its {@link Band} of the light.
 * <b>Valid.</b> Near the mid-tone. <b>Error.</b> As large as the shift itself outside what the laws' sources
 * cover. <b>Departures.</b> Layers do not act on each other; light of unknown colour is white.
 *
 * @param redStops   how much the red-sensitive layer gets over the mean of the three, in stops
 * @param greenStops the same of the green-sensitive one
 * @param blueStops  the same of the blue-sensitive one
 */
public record ColourShift(double redStops, double greenStops, double blueStops) {

    private static final List<String> HUES = List.of("red", "green", "blue");
    private static final List<String> OPPOSITE_HUES = List.of("cyan", "magenta", "yellow");
    /** Smallest colour-correction value worth a word: 10, a third of a stop; common practice, no source. */
    private static final double LEAST_CC = 10;
    private static final double CC_A_STOP = 100 * Math.log10(2);

    /** The shift of layers that came to those tones in stops: red, green, blue, or one alone and no shift. */
    public static ColourShift ofTones(List<Double> layerToneStops) {
        if (layerToneStops.size() != 3) {
            return new ColourShift(0, 0, 0);
        }
        double mean = layerToneStops.stream().mapToDouble(Double::doubleValue).sum() / 3;
        return Double.isFinite(mean)
                ? new ColourShift(layerToneStops.get(0) - mean, layerToneStops.get(1) - mean,
                layerToneStops.get(2) - mean) : new ColourShift(0, 0, 0);
    }

    /**
     * The cast in words with its colour-correction value, such as {@code green, CC 12}; empty below 10.
     */
    public Optional<String> cast() {
        int odd = odd();
        double cc = colourCorrection(Math.abs(ofLayer(odd)));
        return Optional.of((ofLayer(odd) > 0 ? HUES : OPPOSITE_HUES).get(odd) + ", CC " + Math.round(cc))
                .filter(cast -> cc >= LEAST_CC);
    }

    /** The layer that stands apart from the other two: 0 red, 1 green, 2 blue. */
    int odd() {
        double most = Math.max(redStops, Math.max(greenStops, blueStops));
        double least = Math.min(redStops, Math.min(greenStops, blueStops));
        double apart = most >= -least ? most : least;
        return apart == redStops ? 0 : apart == greenStops ? 1 : 2;
    }

    /** How much a layer gets over the mean of the three. */
    double ofLayer(int layer) {
        return layer == 0 ? redStops : layer == 1 ? greenStops : blueStops;
    }

    /** The hue of a filter that holds back the light of a layer, or that of the two others. */
    static String opposite(int layer, boolean holdsItBack) {
        return (holdsItBack ? OPPOSITE_HUES : HUES).get(layer);
    }

    /** Colour-correction value of a layer's lead over the mean of three, 2/3 of that over the other two. */
    static double colourCorrection(double leadStops) {
        return 1.5 * leadStops * CC_A_STOP;
    }
}
