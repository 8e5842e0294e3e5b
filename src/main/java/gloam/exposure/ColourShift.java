package gloam.exposure;

import java.util.List;
import java.util.Optional;

/**
 * How far the layers of a colour film come apart when they lose speed unequally.
 *
 * <p><b>Model.</b> Each layer makes progress by its own reciprocity law. <b>Valid.</b> Near the mid-tone.
 * <b>Error.</b> As large as the shift itself outside what the laws' sources cover.
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
     *
     * <p>The filter that takes it away is of the opposite colour and that value.
     */
    public Optional<String> cast() {
        double most = Math.max(redStops, Math.max(greenStops, blueStops));
        double least = Math.min(redStops, Math.min(greenStops, blueStops));
        boolean oneLeads = most >= -least;
        String hue = oneLeads ? word(most, "red", "green", "blue") : word(least, "cyan", "magenta", "yellow");
        double cc = colourCorrection(oneLeads ? most : -least);
        return Optional.of(hue + ", CC " + Math.round(cc)).filter(cast -> cc >= LEAST_CC);
    }

    /** Colour-correction value of a layer's lead over the mean of three, 2/3 of that over the other two. */
    static double colourCorrection(double leadStops) {
        return 1.5 * leadStops * CC_A_STOP;
    }

    private String word(double stops, String red, String green, String blue) {
        return stops == redStops ? red : stops == greenStops ? green : blue;
    }
}
