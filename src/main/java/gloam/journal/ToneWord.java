package gloam.journal;

/**
 * The tone of the sky on the finished picture in one word, darkest first.
 *
 * <p>A negative is judged by the tone of its print. The bounds divide the four stops or so between near-black
 * and near-white of a print; common sense, no source.
 */
public enum ToneWord {
    /** A blank sheet: it says only that the sky was below the first bound. */
    BLACK(Double.NEGATIVE_INFINITY, -3, "no tone at all in the sky: it looks like the sheet's own black"),
    /** A tone can just be seen. */
    VERY_DARK(-3, -1.5, "a first trace of tone, seen beside the black of the sheet's edge"),
    /** Clearly a tone. */
    DARK(-1.5, -0.5, "clearly grey, clearly darker than a grey card"),
    /** The film's mid-tone. */
    MIDDLE(-0.5, 0.5, "about as grey as a grey card of 18 %"),
    /** Lighter than that. */
    LIGHT(0.5, 1.5, "clearly lighter than a grey card, still a tone"),
    /** Burnt out. */
    WHITE(1.5, Double.POSITIVE_INFINITY, "white or nearly so: hardly a trail stands out");

    private static final double OPEN_END_STOPS = 0.75;

    private final double aboveStops;
    private final double upToStops;
    private final String guide;

    ToneWord(double aboveStops, double upToStops, String guide) {
        this.aboveStops = aboveStops;
        this.upToStops = upToStops;
        this.guide = guide;
    }

    /** The darkest tone it stands for, in stops from the mid-tone; negative infinity for black. */
    public double aboveStops() {
        return aboveStops;
    }

    /** The lightest tone it stands for, in stops from the mid-tone; infinite for white. */
    public double upToStops() {
        return upToStops;
    }

    /** A tone in the middle of what it stands for, in stops from the mid-tone. */
    public double typicalStops() {
        if (this == BLACK) {
            return upToStops - OPEN_END_STOPS;
        }
        return this == WHITE ? aboveStops + OPEN_END_STOPS : (aboveStops + upToStops) / 2;
    }

    /** How to recognize it. */
    public String guide() {
        return guide;
    }
}
