package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.planner.Aim;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.trail.TrailEstimator;
import gloam.units.BadInput;
import java.time.Duration;
import java.util.function.Supplier;

/**
 * What a wish says of the next sheet that is to serve it.
 *
 * @param wish the wish
 */
public record NextOfWish(Wish wish) {

    /** The wish of that name; refuses, with {@link BadInput}, a name that the trip does not have. */
    public static NextOfWish of(Trip trip, String name) {
        return trip.wishes().stream().filter(wish -> wish.name().equalsIgnoreCase(name)).findFirst()
                .map(NextOfWish::new).orElseThrow(() -> new BadInput("no wish is named \"" + name
                        + "\"; the trip has "
                        + String.join(", ", trip.wishes().stream().map(Wish::name).toList())));
    }

    /** The tone aimed at, in stops; 0 where any will do. Refuses, with {@link BadInput}, a mere limit. */
    public double toneStops() {
        if (wish.tone() instanceof Wish.Tone.AtMost) {
            throw new BadInput("wish \"" + wish.name()
                    + "\" limits its tone and aims at none; give the one to aim at (--tone)");
        }
        return wish.tone() instanceof Wish.Tone.Near near ? near.stops() : 0;
    }

    /** Whether its aim hangs on when the middle of the exposure is. */
    boolean moves() {
        return wish.aim() instanceof Aim.Follow;
    }

    /**
     * A sky, where it is computed at the wish's aim.
     *
     * @param half half the time that the shutter is open; a sky that stays is taken in the middle of it
     * @throws BadInput if what the wish follows is below the horizon
     */
    KnownSky at(Supplier<Ephemeris> ephemeris, KnownSky sky, Duration half) {
        if (!(sky instanceof KnownSky.Computed computed)) {
            return sky;
        }
        Direction aim = wish.aim().at(new TrailEstimator(ephemeris.get(), computed.site()),
                computed.steady() ? computed.openAt() : computed.openAt().plus(half));
        if (moves() && aim.altitude().radians() < 0) {
            throw new BadInput("what wish \"" + wish.name() + "\" follows is below the horizon in the middle "
                    + "of the exposure; choose another time (" + (computed.steady() ? "--at" : "--from")
                    + ")");
        }
        return new KnownSky.Computed(computed.site(), aim, computed.openAt(), computed.steady());
    }
}
