package gloam.answer;

import gloam.film.FilmStock;
import gloam.planner.Trip;
import gloam.units.Stops;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How a trip was understood.
 *
 * @param trip         the trip
 * @param defaultsUsed what its file left out and what was taken for it
 * @param failureStops what reciprocity failure costs its film at metered times of 1 min, 10 min and 1 h
 */
public record TripCheck(Trip trip, List<String> defaultsUsed, List<Double> failureStops) {

    /** Copies the lists. */
    public TripCheck {
        defaultsUsed = List.copyOf(defaultsUsed);
        failureStops = List.copyOf(failureStops);
    }

    /** The check of a trip read with some defaults. */
    public static TripCheck of(Trip trip, List<String> defaultsUsed) {
        FilmStock film = trip.film();
        return new TripCheck(trip, defaultsUsed, DoubleStream.of(60, 600, 3600)
                .mapToObj(meteredS -> Stops.between(meteredS, film.reciprocity().correctedS(meteredS)))
                .toList());
    }
}
