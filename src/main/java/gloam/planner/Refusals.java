package gloam.planner;

import gloam.ephemeris.Night;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Finds of every wish not served on a night why it is not, given the timetable of all nights. */
final class Refusals {

    private final Trip trip;
    private final Function<Night, SiteNight> nights;
    private final List<List<EveningOffers>> evenings;
    private final List<Timetable.Night> chosen;
    private final Map<Counted, Boolean> counted = new ConcurrentHashMap<>();

    /** A wish on a night. */
    private record Counted(String site, LocalDate date, int wish) {
    }

    /** The refusals of a timetable; lists go by night, and evenings in each by site. */
    Refusals(Trip trip, Function<Night, SiteNight> nights, List<List<EveningOffers>> evenings,
            List<Timetable.Night> chosen) {
        this.trip = trip;
        this.nights = nights;
        this.evenings = evenings;
        this.chosen = chosen;
    }

    /** The wishes not served on a night where it is spent, at a site by its number, in the trip's order. */
    List<Plan.Refusal> of(int night, int site, SiteNight spent) {
        List<Plan.Refusal> refusals = new ArrayList<>();
        for (int number = 0; number < trip.wishes().size(); number++) {
            int wish = number;
            if (chosen.get(night).exposed().stream().noneMatch(candidate -> candidate.wish() == wish)) {
                refusals.add(refusal(night, site, wish, spent));
            }
        }
        return refusals;
    }

    private Plan.Refusal refusal(int night, int site, int number, SiteNight spent) {
        Wish wish = trip.wishes().get(number);
        List<LocalDate> served = IntStream.range(0, chosen.size()).boxed()
                .flatMap(other -> chosen.get(other).exposed()
                .stream().filter(candidate -> candidate.wish() == number)
                .map(candidate -> trip.dates().get(other))).toList();
        if (served.size() == wish.repeat()) {
            return new Plan.Refusal(wish, new Reason.Served(served.stream().distinct().sorted().toList()),
                    Optional.empty());
        }
        EveningOffers here = evenings.get(night).get(site);
        EveningOffers.ToWish found = here.toWishes().get(number);
        if (!found.none()) {
            return new Plan.Refusal(wish, outbid(night, found), Optional.empty());
        }
        EveningOffers there = closedWhereWanted(night, here, number);
        if (there == here && !wish.limits().allow(here.night().site()) && onTheWay(night)) {
            return new Plan.Refusal(wish, Reason.Plain.TRAVEL, Optional.empty());
        }
        SiteNight tried = there == here ? spent : nights.apply(there.night());
        Reason reason = there.toWishes().get(number).noneSince().orElseGet(() -> tried.reason(number));
        Reason told = with(reason, wish);
        return new Plan.Refusal(wish, there == here ? told : new Reason.There(there.night(), told),
                remedy(night, tried, number, reason));
    }

    /** A reason whose figures are those of one of several cameras. */
    private Reason with(Reason reason, Wish wish) {
        boolean ofSky = reason instanceof Reason.Never || reason instanceof Reason.Exclusive
                || reason instanceof Reason.Overcast || reason instanceof Reason.LaterClosed;
        return trip.cameras().size() == 1 || ofSky ? reason
                : new Reason.With(trip.cameras().get(trip.takers(wish).get(0)).camera().name(), reason);
    }

    /** The evening here, or where alone a wish may be taken if it cannot be taken there either. */
    private EveningOffers closedWhereWanted(int night, EveningOffers here, int number) {
        Limits limits = trip.wishes().get(number).limits();
        List<EveningOffers> wanted = limits.allow(here.night().site()) ? List.of() : evenings.get(night)
                .stream().filter(evening -> limits.allow(evening.night().site())).toList();
        boolean open = wanted.stream().anyMatch(evening ->
                !evening.toWishes().get(number).none());
        return open || wanted.isEmpty() ? here : wanted.get(0);
    }

    /**
     * The nearest change that opens a wish closed on an evening: another site or night, or else something it
     * gives up, which is looked for once in a trip.
     */
    private Optional<Remedy> remedy(int night, SiteNight tried, int wish, Reason reason) {
        Optional<EveningOffers> other = IntStream.range(0, evenings.size()).boxed()
                .sorted(Comparator.comparingInt(number -> Math.abs(number - night)))
                .flatMap(number -> evenings.get(number).stream())
                .filter(evening -> !evening.toWishes().get(wish).none() && enough(evening, wish)).findFirst();
        return other.isPresent() ? other.map(evening -> elsewhere(evening, wish))
                : night != nearestNight(wish) ? Optional.empty() : changed(
                tried, trip.wishes().get(wish), reason);
    }

    /** Whether an evening that offers something to a wish has one in which a count finds enough stars. */
    private boolean enough(EveningOffers evening, int number) {
        Wish wish = trip.wishes().get(number);
        return !(wish.records() instanceof Wish.Records.AtLeast) || counted.computeIfAbsent(
                new Counted(evening.night().site().name(), evening.night().date(), number),
                there -> nights.apply(evening.night()).best(wish).isPresent());
    }

    private static Optional<Remedy> changed(SiteNight night, Wish wish, Reason reason) {
        return reason instanceof Reason.Overcast ? night.underCloud(wish)
                : new NearestChange(night, wish, reason).remedy();
    }

    /**
     * Of nights that are closed to a wish the first on which it is not the sky that closes it, else the
     * first.
     */
    private int nearestNight(int wish) {
        return IntStream.range(0, evenings.size()).filter(night -> evenings.get(night).stream()
                .map(evening -> evening.toWishes().get(wish).noneSince())
                .anyMatch(since -> since.filter(reason ->
                reason instanceof Reason.Never || reason instanceof Reason.Exclusive).isEmpty()))
                .findFirst().orElse(0);
    }

    private Remedy elsewhere(EveningOffers evening, int wish) {
        NightClock clock = NightClock.of(evening.night().span());
        return new Remedy.Elsewhere(evening.night(),
                Optional.of(evening.night().site()).filter(site -> trip.sites().size() > 1),
                clock.at(evening.toWishes().get(wish).best().firstOpenMin()));
    }

    private Reason outbid(int night, EveningOffers.ToWish found) {
        List<Timetable.Exposed> exposed = chosen.get(night).exposed();
        Timetable timetable = Timetable.of(trip);
        boolean timeLeft = found.offers().stream().anyMatch(offer ->
                !timetable.beside(exposed, offer).isEmpty());
        if (timeLeft) {
            return sheetsLeft() == 0 ? Reason.Plain.SHEETS_SPENT
                    : exposed.size() == trip.outings().sheetsPerNight() ? Reason.Plain.NIGHT_FULL
                    : onTheWay(night) ? Reason.Plain.TRAVEL : Reason.Plain.BETTER_CHOSEN;
        }
        return new Reason.TimeTaken(exposed.stream().map(one -> trip.wishes().get(one.wish()).name())
                .distinct().toList());
    }

    /** Whether nothing but the way to other nights keeps a night empty that could serve something. */
    private boolean onTheWay(int night) {
        return chosen.get(night).exposed().isEmpty() && !trip.outings().travel().none() && sheetsLeft() > 0;
    }

    private int sheetsLeft() {
        return trip.sheets() - trip.spent()
                - chosen.stream().mapToInt(night -> night.exposed().size()).sum();
    }
}
