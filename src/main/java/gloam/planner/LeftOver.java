package gloam.planner;

import gloam.ephemeris.Night;
import gloam.planner.Alternatives.IfClears;
import gloam.planner.Alternatives.Instead;
import gloam.planner.Alternatives.SecondChoice;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds what is left for wishes that cloud takes their windows from. */
final class LeftOver {

    private final Trip trip;
    private final Timetable timetable;
    private final List<List<EveningOffers>> evenings;
    private final List<Timetable.Night> chosen;

    /** What is left beside a timetable; lists go by night, and evenings in each by site. */
    LeftOver(Trip trip, List<List<EveningOffers>> evenings, List<Timetable.Night> chosen) {
        this.trip = trip;
        this.timetable = Timetable.of(trip);
        this.evenings = evenings;
        this.chosen = chosen;
    }

    /** An offer of an evening, and whether nothing is planned on it. */
    private record Open(EveningOffers evening, boolean free, Offer offer) {

        /** When the shutter would open: on a free evening as in a plan of it alone. */
        Instant at(Function<Night, SiteNight> met) {
            int openMin = offer.firstOpenMin();
            if (!free) {
                return clock(evening.night()).at(openMin);
            }
            SiteNight night = met.apply(evening.night());
            return night.sky().clock().at(night.made(List.of(Timetable.Exposed.of(offer, openMin))).get(0)
                    .exposure().openMin());
        }
    }

    /** All of it. */
    Alternatives alternatives(Function<Night, SiteNight> met) {
        return new Alternatives(cloudedOut(met), evenings.size() == 1 ? ifClears(met) : List.of());
    }

    /** For every wish served the best window on a night on which it is not; the earliest of equals. */
    private List<SecondChoice> cloudedOut(Function<Night, SiteNight> met) {
        return IntStream.range(0, trip.wishes().size()).parallel()
                .filter(wish -> chosen.stream().anyMatch(night -> serves(night, wish))).boxed()
                .flatMap(wish -> elsewhere(wish)
                .max(Comparator.comparingLong((Open open) -> open.offer.gain())
                        .thenComparing(open -> open.evening.night().date(), Comparator.reverseOrder())
                        .thenComparing(open -> open.offer.firstOpenMin(), Comparator.reverseOrder()))
                        .stream())
                .map(open -> new SecondChoice(trip.wishes().get(open.offer.wish()),
                        trip.cameras().get(open.offer.camera()).camera(), open.evening.night(),
                        open.at(met))).toList();
    }

    private Stream<Open> elsewhere(int wish) {
        return IntStream.range(0, evenings.size()).boxed()
                .filter(night -> !serves(chosen.get(night), wish))
                .flatMap(night -> there(night)
                .flatMap(evening -> evening.toWishes().get(wish).offers().stream()
                .flatMap(offer -> timetable.beside(chosen.get(night).exposed(), offer)
                .stream()).map(offer -> new Open(evening, chosen.get(night).exposed().isEmpty(), offer))));
    }

    /** The sites at which a night may still be spent. */
    private Stream<EveningOffers> there(int night) {
        return chosen.get(night).exposed().isEmpty() ? evenings.get(night).stream()
                : Stream.of(evenings.get(night).get(chosen.get(night).site()));
    }

    private static boolean serves(Timetable.Night night, int wish) {
        return night.exposed().stream().anyMatch(exposed -> exposed.wish() == wish);
    }

    /**
     * What is left of the only night of a trip if the sky clears at one full hour or another after the first
     * window opens; hours that leave the same are one, and the last leaves nothing.
     *
     * @param met the night at a site
     */
    private List<IfClears> ifClears(Function<Night, SiteNight> met) {
        Timetable.Night planned = chosen.get(0);
        if (planned.exposed().isEmpty()) {
            return List.of();
        }
        EveningOffers evening = evenings.get(0).get(planned.site());
        NightClock clock = clock(evening.night());
        SiteNight there = met.apply(evening.night());
        List<IfClears> left = new ArrayList<>();
        boolean more = true;
        for (Instant hour = after(clock.at(planned.exposed().get(0).openMin()), evening.night().site()
                .zone());
                more; hour = hour.plus(Duration.ofHours(1))) {
            IfClears later = new IfClears(hour, evening.night(),
                    instead(there, from(evening.all(), clock.minuteOf(hour))));
            if (!left.isEmpty() && left.get(left.size() - 1).instead().equals(later.instead())) {
                left.remove(left.size() - 1);
            }
            left.add(later);
            more = !later.instead().isEmpty();
        }
        return left;
    }

    private static List<Offer> from(List<Offer> offers, int minute) {
        return offers.stream().filter(offer -> offer.lastOpenMin() >= minute)
                .map(offer -> offer.opening(Math.max(minute, offer.firstOpenMin()), offer.lastOpenMin()))
                .toList();
    }

    private List<Instead> instead(SiteNight there, List<Offer> offers) {
        List<Timetable.Exposed> exposed = timetable.choose(List.of(List.of(offers))).nights().get(0)
                .exposed();
        return there.made(exposed).stream().map(made -> {
            ExposureChoice exposure = made.exposure();
            return new Instead(trip.wishes().get(made.chosen().wish()),
                    trip.cameras().get(made.chosen().camera()).camera(),
                    there.sky().clock().span(exposure.openMin(), exposure.lastMin()), exposure.fNumber());
        }).toList();
    }

    private static Instant after(Instant at, ZoneId zone) {
        return at.atZone(zone).truncatedTo(ChronoUnit.HOURS).plusHours(1).toInstant();
    }

    private static NightClock clock(Night night) {
        return NightClock.of(night.span());
    }
}
