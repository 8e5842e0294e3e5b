package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.ephemeris.Target;
import gloam.gear.FNumber;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Why a wish is not served on a night. */
public sealed interface Reason {

    /** Reasons without numbers. */
    enum Plain implements Reason {
        /** All sheets are spent on wishes that are worth more. */
        SHEETS_SPENT,
        /** As many sheets as wanted on one night go to wishes that are worth more. */
        NIGHT_FULL,
        /** The night is needed for the way between sites. */
        TRAVEL,
        /** There is the time for it, but wishes worth more were chosen. */
        BETTER_CHOSEN,
        /** No minute at which it could be opened leaves time for it. */
        NO_START
    }

    /** It is served as often as wanted on other nights. */
    record Served(List<LocalDate> on) implements Reason { }

    /** Other wishes, by their names, use the time. */
    record TimeTaken(List<String> by) implements Reason { }

    /**
     * The forecast leaves too little chance of a clear sky.
     *
     * @param cloud        the cloud over the exposure with the best chance
     * @param open         that exposure
     * @param leastPercent the chance in percent for which the trip exposes a sheet
     */
    record Overcast(CloudCover cloud, Interval open, double leastPercent) implements Reason { }

    /** Something required holds at no minute of the night. */
    record Never(Requirement what) implements Reason { }

    /**
     * It may be taken only where the night is not spent, and could not be taken there either.
     *
     * @param night  the night there
     * @param reason why not
     */
    record There(Night night, Reason reason) implements Reason { }

    /**
     * None of several cameras can take it.
     *
     * @param camera name of the first of them
     * @param reason why not with that one
     */
    record With(String camera, Reason reason) implements Reason { }

    /**
     * What is required holds at different times.
     *
     * @param what       what is required; empty for everything else together
     * @param holds      when it holds
     * @param other      what is required beside
     * @param otherHolds when that holds
     */
    record Exclusive(Optional<Requirement> what, List<Interval> holds, Requirement other,
            List<Interval> otherHolds) implements Reason { }

    /**
     * An exposure considered.
     *
     * @param fNumber   its f-number
     * @param minutes   how long it is
     * @param toneStops the sky's tone that it makes
     * @param openAt    when the shutter opens
     * @param aim       where the frame's centre looks
     */
    record Exposure(FNumber fNumber, int minutes, double toneStops, Instant openAt, Direction aim) { }

    /**
     * Neither a trail nor a tone would show.
     *
     * @param nearest    the exposure that comes nearest to showing something
     * @param boundStops the darkest tone that shows, where the sky is darker, else the lightest
     * @param atFNumber  the nearest f-number in whole stops that shows something in the same time, if any
     */
    record NothingShows(Exposure nearest, double boundStops,
            Optional<FNumber> atFNumber) implements Reason { }

    /** No exposure keeps the limit of the tone, or comes near the tone aimed at. */
    record ToneMissed(Exposure nearest, Wish.Tone wanted) implements Reason { }

    /**
     * The same, and what must record does not either in the exposure that comes nearest to both.
     *
     * @param faintest     what of that is faintest, where it goes by names
     * @param shortfallMag by how many magnitudes it is too faint
     */
    record ToneAndTrailsMissed(Exposure nearest, Wish.Tone wanted, Optional<Target> faintest,
            double shortfallMag) implements Reason { }

    /**
     * No exposure has the share of twilight wanted.
     *
     * @param nearest the exposure that comes nearest to it
     * @param minutes how many minutes of it lie in twilight
     * @param percent the share of its tone that is made in twilight
     */
    record TwilightMissed(Exposure nearest, int minutes, double percent) implements Reason { }

    /**
     * A later opening of its sheet cannot be made.
     *
     * @param opening its number, from 2
     * @param reason  why not
     */
    record LaterClosed(int opening, Reason reason) implements Reason { }

    /** Fewer stars record than must, in the exposure in which most do. */
    record TooFewStars(int wanted, int recorded, Exposure nearest) implements Reason { }

    /**
     * A body or star that must record is too faint by some magnitudes, in the exposure that comes nearest.
     */
    record TooFaint(Target target, double shortfallMag, Exposure nearest) implements Reason { }

    /**
     * No duration is left.
     *
     * @param wish    the wish
     * @param leastBy what needs it to be long
     * @param leastMin how long, in minutes
     * @param mostBy  what ends it
     * @param mostMin after how long, in minutes
     * @param fNumber at which f-number
     */
    record NoDuration(Wish wish, DurationLimit leastBy, int leastMin, DurationLimit mostBy, int mostMin,
            FNumber fNumber) implements Reason { }
}
