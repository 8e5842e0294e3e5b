package gloam.answer;

import gloam.film.FilmStock;
import gloam.planner.Trip;
import gloam.units.Stops;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What Gloam understood of a trip.
 *
 * @param trip         the trip
 * @param defaultsUsed each default used, one for every value that its file omits
 * @param journal      the file of its journal, if it names one
 * @param batch        the pack that its film is from, if it names one
 * @param failureStops loss of its film to reciprocity failure at metered times of 1 min, 10 min and 1 h, in
 *                     stops
 */
public record TripCheck(Trip trip, List<String> defaultsUsed, Optional<String> journal,
        Optional<String> batch, List<Double> failureStops) {

    /** Copies the lists. */
    public TripCheck {
        defaultsUsed = List.copyOf(defaultsUsed);
        failureStops = List.copyOf(failureStops);
    }

    /** Checks a trip that was read with some defaults and may name a journal and the pack of its film. */
    public static TripCheck of(Trip trip, List<String> defaultsUsed, Optional<String> journal,
            Optional<String> batch) {
        FilmStock film = trip.film();
        return new TripCheck(trip, defaultsUsed, journal, batch, DoubleStream.of(60, 600, 3600)
                .mapToObj(meteredS -> Stops.between(meteredS, film.reciprocity().correctedS(meteredS)))
                .toList());
    }
}
