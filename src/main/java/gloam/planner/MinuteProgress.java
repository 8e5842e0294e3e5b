package gloam.planner;

/**
 * Progress of the film's mid-tone layer, added up by the minute.
 *
 * @param firstMin minute from which on it is added up
 * @param byMinute the sum up to each minute from then on
 */
record MinuteProgress(int firstMin, double[] byMinute) {

    /** Progress made between two minutes. */
    double progress(int openMin, int closeMin) {
        return byMinute[closeMin - firstMin] - byMinute[openMin - firstMin];
    }
}
