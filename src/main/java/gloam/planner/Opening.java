package gloam.planner;

/**
 * Exposures of every duration that share their opening, or their middle where the camera follows a target;
 * each longer one holds the shorter ones.
 *
 * @param anchorMin the minute they share
 * @param centred   whether that is the middle
 * @param mostMin   the longest there is time for
 */
record Opening(int anchorMin, boolean centred, int mostMin) {

    /** From one duration to the next, such that both ends are whole minutes. */
    int stepMin() {
        return centred ? 2 : 1;
    }

    int openAt(int durationMin) {
        return centred ? anchorMin - durationMin / 2 : anchorMin;
    }

    int closeAt(int durationMin) {
        return openAt(durationMin) + durationMin;
    }

    int middleAt(int durationMin) {
        return openAt(durationMin) + durationMin / 2;
    }

    /** The minute of a moment of an exposure, its opening for all of it. */
    int at(Condition.When when, int durationMin) {
        return switch (when) {
            case THROUGHOUT, AT_OPENING -> openAt(durationMin);
            case AT_MIDDLE -> middleAt(durationMin);
            case AT_CLOSING -> closeAt(durationMin);
        };
    }
}
