package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.planner.Aim;
import gloam.planner.Trip;
import gloam.planner.Wish;
import gloam.units.BadInput;
import java.util.Optional;

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

    /** A sky computed at its aim; refuses, with {@link BadInput}, an aim that moves. */
    public KnownSky at(KnownSky sky) {
        return sky instanceof KnownSky.Computed computed
                ? new KnownSky.Computed(computed.site(), aim(computed.site()), computed.openAt(),
                        computed.steady()) : sky;
    }

    private Direction aim(Site site) {
        double latitudeDeg = site.latitude().degrees();
        return wish.aim() instanceof Aim.Point point ? point.direction()
                : Optional.of(wish.aim()).filter(Aim.Pole.class::isInstance)
                        .map(pole -> Direction.ofDegrees(latitudeDeg < 0 ? 180 : 0, Math.abs(latitudeDeg)))
                        .orElseThrow(() -> new BadInput("wish \"" + wish.name()
                                + "\" follows what moves; give its aim (--azimuth, --altitude)"));
    }
}
