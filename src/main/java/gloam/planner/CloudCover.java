package gloam.planner;

/**
 * The cloud forecast over a span.
 *
 * <p><b>Model.</b> The chance that a picture exposed over the span comes out clear is (1 − m)(1 − s): m the
 * mean cloud fraction, s the share of the span that its longest covered stretch takes, which leaves a gap in
 * every trail. Covered is a sky of seven oktas or more. <b>Valid.</b> Spans of minutes to a night. Total
 * overcast leaves no chance, and a sky without a cloud is certain. <b>Error.</b> Common practice, no source;
 * good for weighing one window against another. <b>Departures.</b> None.
 *
 * @param meanFraction mean share of the sky that is cloudy, 0 to 1
 * @param mostFraction its largest share, 0 to 1
 * @param coveredMin   length of the longest covered stretch in minutes
 * @param clearChance  chance that the sky stays clear, 0 to 1
 */
public record CloudCover(double meanFraction, double mostFraction, int coveredMin, double clearChance) {

    /** From this cloud fraction on the sky is covered: seven oktas. */
    public static final double COVERED_FRACTION = 7.0 / 8;

    /**
     * The chance that the sky stays clear, 0 to 1.
     *
     * @param meanFraction mean cloud fraction of the span, 0 to 1
     * @param coveredShare share of the span that its longest covered stretch takes, 0 to 1
     */
    public static double clearChance(double meanFraction, double coveredShare) {
        return (1 - meanFraction) * (1 - coveredShare);
    }
}
