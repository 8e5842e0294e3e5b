package gloam.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Chooses from offers the timetable that gains most: one site a night, in each camera one exposure at a time
 * with its changeover between, no wish twice on a night or more often than it repeats, no more sheets
 * than carried, or than are exposed on one night.
 *
 * <p>Branch and bound: {@link GreedyTimetable} gives a first one, {@link Prices} say what no timetable gains
 * more than, and {@link TimetableSearch} follows all that lose less than lies between the two. Where that is
 * more than can be followed, {@link Choice#bound()} says how much any timetable could be worth. Of timetables
 * that gain the same it takes the one that {@link Gain#late} is least of.
 */
final class Timetable {

    private final int[] repeats;
    private final int sheets;
    private final int sheetsPerNight;
    private final int[] changeoverMin;
    private final Optional<Moves> moves;

    /**
     * A timetable's limits.
     *
     * @param repeats       how often each wish may be served, at least once each
     * @param sheets        how many exposures there may be, at least one
     * @param sheetsPerNight how many on one night, at least one
     * @param changeoverMin by camera, least time from closing one exposure to opening the next of the night,
     *                      not negative
     */
    Timetable(int[] repeats, int sheets, int sheetsPerNight, int... changeoverMin) {
        this(repeats, sheets, sheetsPerNight, changeoverMin, Optional.empty());
    }

    private Timetable(int[] repeats, int sheets, int sheetsPerNight, int[] changeoverMin,
            Optional<Moves> moves) {
        this.repeats = Arrays.stream(repeats).map(repeat -> Math.min(repeat, sheets)).toArray();
        this.sheets = sheets;
        this.sheetsPerNight = sheetsPerNight;
        this.changeoverMin = changeoverMin;
        this.moves = moves;
    }

    /** The same where travel limits which nights may follow each other. */
    Timetable moving(Moves between) {
        return new Timetable(repeats, sheets, sheetsPerNight, changeoverMin, Optional.of(between));
    }

    /** The limits of a trip. */
    static Timetable of(Trip trip) {
        return new Timetable(trip.wishes().stream().mapToInt(Wish::repeat).toArray(),
                trip.sheets() - trip.spent(), trip.outings().sheetsPerNight(),
                IntStream.range(0, trip.cameras().size()).map(trip::changeoverMin).toArray());
    }

    /**
     * An exposure.
     *
     * @param wish     number of its wish in the trip, from 0
     * @param camera   number of its camera in the trip, from 0
     * @param openMin  when the shutter opens, in minutes of the night
     * @param closeMin when it closes, the last time of several
     * @param firstMin how long it is open first
     * @param gain     what it adds to the trip, see {@link Gain}
     */
    record Exposed(int wish, int camera, int openMin, int closeMin, int firstMin, long gain) {

        /** By their openings, those at the same minute by camera. */
        static final Comparator<Exposed> IN_TIME =
                Comparator.comparingInt(Exposed::openMin).thenComparingInt(Exposed::camera);

        /** An offer, opened at one of its minutes. */
        static Exposed of(Offer offer, int openMin) {
            return new Exposed(offer.wish(), offer.camera(), openMin, openMin + offer.durationMin(),
                    offer.firstMin(), offer.gain());
        }

        /** Its worth times its chance. */
        double worth() {
            return Gain.worth(gain);
        }
    }

    /**
     * What is exposed on one night.
     *
     * @param site    number of the site in the lists given; 0 where nothing is exposed
     * @param exposed in order of time, empty for none
     */
    record Night(int site, List<Exposed> exposed) {

        /** Where nothing is exposed. */
        static final Night NOTHING = new Night(0, List.of());

        private long gain() {
            return gained() - Gain.NIGHT_OUT;
        }

        /** What all that is exposed adds to the trip. */
        long gained() {
            return exposed.stream().mapToLong(Exposed::gain).sum();
        }
    }

    /**
     * A timetable.
     *
     * @param nights one for each night given
     * @param bound  no timetable is worth more than this; equal to {@link #worth()} when it is exact
     */
    record Choice(List<Night> nights, double bound) {

        /** The summed gain of all that is exposed, less what nights out cost. */
        static long gain(List<Night> nights) {
            return nights.stream().filter(night -> !night.exposed.isEmpty()).mapToLong(Night::gain).sum();
        }

        /** The summed worth of all that is exposed. */
        double worth() {
            return nights.stream().flatMap(night -> night.exposed.stream()).mapToDouble(Exposed::worth).sum();
        }
    }

    /** The best timetable of the offers given for each night and, within it, each site. */
    Choice choose(List<List<List<Offer>>> offers) {
        GreedyTimetable greedy = new GreedyTimetable(this);
        List<Night> first = greedy.nights(offers);
        Prices prices = Prices.of(greedy.most(), repeats, sheets);
        return new TimetableSearch(this, prices, first, 0).choose(offers);
    }

    /**
     * What no timetable of one night's offers gains more than, as far as it is worth; something less than is
     * wanted where none gains that.
     */
    long mostWorth(List<Offer> offers, long leastGain) {
        List<List<List<Offer>>> plain = List.of(List.of(offers.stream().map(Offer::ofWorth).toList()));
        GreedyTimetable greedy = new GreedyTimetable(this);
        List<Night> first = greedy.nights(plain);
        Prices prices = Prices.of(greedy.most(), repeats, sheets);
        if (first.get(0).gained() == prices.bound()) {
            return prices.bound();
        }
        Choice best = new TimetableSearch(this, prices, first, leastGain - Gain.NIGHT_OUT).choose(plain);
        return best.bound() > best.worth() ? prices.bound() : best.nights().get(0).gained();
    }

    int[] repeats() {
        return repeats;
    }

    int sheets() {
        return sheets;
    }

    int sheetsPerNight() {
        return sheetsPerNight;
    }

    /** Which nights may follow each other, if not all. */
    Optional<Moves> moves() {
        return moves;
    }

    /** By camera, the changeover in minutes. */
    int[] changeoverMin() {
        return changeoverMin;
    }

    /** What of an offer still can be had beside exposures in order of time, those of its camera. */
    List<Offer> beside(List<Exposed> exposed, Offer offer) {
        int betweenMin = changeoverMin[offer.camera()];
        List<Offer> fitting = new ArrayList<>();
        int fromMin = offer.firstOpenMin();
        for (Exposed other : exposed) {
            if (other.camera != offer.camera()) {
                continue;
            }
            int toMin = Math.min(offer.lastOpenMin(), other.openMin - betweenMin - offer.durationMin());
            if (fromMin <= toMin) {
                fitting.add(offer.opening(fromMin, toMin));
            }
            fromMin = Math.max(fromMin, other.closeMin + betweenMin);
        }
        if (fromMin <= offer.lastOpenMin()) {
            fitting.add(offer.opening(fromMin, offer.lastOpenMin()));
        }
        return fitting;
    }
}
