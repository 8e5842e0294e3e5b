package gloam.planner;

import gloam.ephemeris.Night;
import gloam.gear.Site;
import java.time.Instant;
import java.util.Optional;

/** What would serve a wish that a night refuses. */
public sealed interface Remedy {

    /** When the shutter could open then. */
    Instant from();

    /**
     * Another night, or another site.
     *
     * @param night the night at which it can be served
     * @param site  its site, where the trip has several
     */
    record Elsewhere(Night night, Optional<Site> site, Instant from) implements Remedy { }

    /**
     * The wish with one thing given up.
     *
     * @param change what is given up
     * @param amount what is then to be had, see {@link Change}
     */
    record Changed(Change change, double amount, Instant from) implements Remedy { }

    /** What a wish, or its trip, can give up, the least painful first. */
    enum Change {
        /** The f-numbers wanted; the amount is the f-number. */
        F_NUMBERS,
        /** The trail's length; the amount is how many mm longer than wanted it gets, negative for shorter. */
        TRAIL_LENGTH,
        /** The shortest exposure; the amount is in minutes. */
        SHORTEST,
        /** The tone; the amount is the tone in stops. */
        TONE,
        /** What must record; there is no amount. */
        RECORDS,
        /** The kind of sky; there is no amount. */
        SKY,
        /** The chance of a clear sky for which the trip exposes a sheet; the amount is in percent. */
        CLEAR
    }
}
