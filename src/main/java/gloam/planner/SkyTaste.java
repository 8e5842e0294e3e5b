package gloam.planner;

/** What a night's sky is wanted for, where no wishes are asked of it; common practice, no source. */
public enum SkyTaste {
    /** Hours of true darkness count. */
    DARK,
    /** Dark hours with the Moon's light count. */
    MOONLIT,
    /** Dark hours count by the share of the bright planets that stand high. */
    PLANETS;

    /**
     * The hours that a night counts for.
     *
     * @param darkHours hours with the Sun's centre below -18°
     * @param trueHours those of them in which the Moon adds hardly any light
     * @param high      share of the bright planets that stand high while it is dark, 0 to 1
     */
    double hours(double darkHours, double trueHours, double high) {
        return switch (this) {
            case DARK -> trueHours;
            case MOONLIT -> darkHours - trueHours;
            case PLANETS -> darkHours * high;
        };
    }
}
