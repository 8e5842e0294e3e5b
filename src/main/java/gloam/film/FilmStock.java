package gloam.film;

import gloam.units.BadInput;
import gloam.units.Range;
import gloam.units.Stops;
import java.util.List;

/**
 * A film: how much light makes its mid-tone, how it loses speed in long exposures and how its tones run.
 *
 * @param name             its name
 * @param iso              ISO arithmetic speed it is rated at, 0.1 to 100 000
 * @param kind             whether the sheet itself is the picture
 * @param layers           one for black-and-white; red-, green- and blue-sensitive, in this order, for colour
 * @param tone             how dark it gets
 * @param speedOffsetStops stops by which it is slower than rated, -5 to 5; minus where it is faster
 * @param source           where its numbers come from
 * @param fittedToSheets   how many judged sheets it was fitted to, 0 for a film as published
 */
public record FilmStock(String name, double iso, Kind kind, List<Layer> layers, ToneCurve tone,
                        double speedOffsetStops, String source, int fittedToSheets) {

    /** Allowed film speeds. */
    public static final Range ISO = new Range("film speed", 0.1, 100_000, "ISO");
    /** Allowed offsets from the rated speed. */
    public static final Range SPEED_OFFSET = new Range("speed offset", -5, 5, "stops");

    /**
     * Exposure of the mid-tone times speed, q·K: K = 12.5 cd s/m² (ISO 2720, one of its two values in
     * common use), q = 0.65, what a lens of transmittance 0.9 lets through 10° off axis.
     */
    private static final double MID_TONE_LX_S_ISO = 0.65 * 12.5;

    /** Whether more light makes the sheet lighter or darker. */
    public enum Kind {
        /** A print or transparency: light makes it lighter. */
        POSITIVE,
        /** A negative: light makes it darker. */
        NEGATIVE
    }

    /**
     * One light-sensitive layer.
     *
     * @param name        what it is sensitive to, such as {@code green}
     * @param reciprocity its law
     */
    public record Layer(String name, Reciprocity reciprocity) {
    }

    /** Copies the list; refuses what no film can be with {@link BadInput}. */
    public FilmStock {
        ISO.check(iso);
        SPEED_OFFSET.check(speedOffsetStops);
        layers = List.copyOf(layers);
        if (layers.size() != 1 && layers.size() != 3) {
            throw new BadInput("film \"" + name + "\" has " + layers.size()
                    + " layers; give 1 (black-and-white) or 3 (red, green, blue)");
        }
        if (tone.gamma() < 0 != (kind == Kind.POSITIVE)) {
            throw new BadInput("film \"" + name + "\": gamma " + tone.gamma()
                    + " does not suit its kind; a positive film's is below 0, a negative film's above");
        }
    }

    /** A film as published. */
    public FilmStock(String name, double iso, Kind kind, List<Layer> layers, ToneCurve tone,
            double speedOffsetStops,
                     String source) {
        this(name, iso, kind, layers, tone, speedOffsetStops, source, 0);
    }

    /** Whether it has a layer for each colour. */
    public boolean colour() {
        return layers.size() == 3;
    }

    /** Exposure of the mid-tone in lx s, H0 = q K / S · 2^offset. */
    public double midToneLxS() {
        return midToneLxS(iso) * Stops.factor(speedOffsetStops);
    }

    /** Exposure in lx s that anything of that ISO speed makes its mid-tone with, q K / S. */
    public static double midToneLxS(double iso) {
        return MID_TONE_LX_S_ISO / iso;
    }

    /** The law that sets times: of the single layer, or of the green layer of a colour film. */
    public Reciprocity reciprocity() {
        return layers.get(layers.size() / 2).reciprocity();
    }
}
