package gloam.planner;

import gloam.ephemeris.Night;
import java.util.List;
import java.util.Optional;

/**
 * What one night at one site offers to the wishes of a trip.
 *
 * @param night    the night
 * @param toWishes one for each wish, in the trip's order
 */
record EveningOffers(Night night, List<ToWish> toWishes) {

    /**
     * What it offers to a wish.
     *
     * @param offers    exposures to choose from
     * @param noneSince why there are none, where that came out already
     */
    record ToWish(List<Offer> offers, Optional<Reason> noneSince) {

        static ToWish of(List<Offer> offers) {
            return new ToWish(offers, Optional.empty());
        }

        static ToWish none(Reason since) {
            return new ToWish(List.of(), Optional.of(since));
        }

        /** What several cameras are offered. */
        static ToWish together(List<ToWish> byCamera) {
            if (byCamera.size() == 1) {
                return byCamera.get(0);
            }
            List<Offer> offers = byCamera.stream().flatMap(one -> one.offers.stream()).toList();
            return new ToWish(offers, offers.isEmpty() ? byCamera.get(0).noneSince : Optional.empty());
        }

        boolean none() {
            return offers.isEmpty();
        }

        /** The most that one of them gains, 0 for none. */
        long most() {
            return offers.stream().mapToLong(Offer::gain).max().orElse(0);
        }

        /** The first opening that gains most. */
        Offer best() {
            long most = most();
            return offers.stream().filter(offer -> offer.gain() == most)
                    .min((one, other) -> Integer.compare(one.firstOpenMin(), other.firstOpenMin()))
                    .orElseThrow();
        }
    }

    /** Everything that could be exposed. */
    List<Offer> all() {
        return toWishes.stream().flatMap(wish -> wish.offers.stream()).toList();
    }

    /** What the night gains at most, wishes not standing in each other's way. */
    long promise() {
        return toWishes.stream().mapToLong(ToWish::most).sum();
    }
}
