package gloam.planner;

/**
 * Equally good ways to serve a wish on one night at one site: exposures of one length that open at any minute
 * of a run.
 *
 * @param wish         number of the wish in the trip, from 0
 * @param camera       number of the camera in the trip, from 0
 * @param firstOpenMin the first minute at which the shutter may open, in minutes of the night
 * @param lastOpenMin  the last one
 * @param durationMin  how long the sheet takes, at least a minute
 * @param firstMin     how long it is open first; as long as that unless it is opened again
 * @param gain         what it adds to the trip, see {@link Gain}; more than 0
 */
record Offer(int wish, int camera, int firstOpenMin, int lastOpenMin, int durationMin, int firstMin,
        long gain) {

    /** A single exposure. */
    static Offer at(int wish, int camera, int openMin, int closeMin, long gain) {
        return new Offer(wish, camera, openMin, openMin, closeMin - openMin, closeMin - openMin, gain);
    }

    /** The same opening at fewer minutes. */
    Offer opening(int fromMin, int toMin) {
        return new Offer(wish, camera, fromMin, toMin, durationMin, firstMin, gain);
    }

    /** The same with nothing preferred. */
    Offer ofWorth() {
        return new Offer(wish, camera, firstOpenMin, lastOpenMin, durationMin, firstMin, Gain.ofWorth(gain));
    }

    /** The same of a wish with another number. */
    Offer of(int number) {
        return new Offer(number, camera, firstOpenMin, lastOpenMin, durationMin, firstMin, gain);
    }
}
