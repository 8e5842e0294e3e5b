package gloam.planner;

import gloam.ephemeris.Night;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Finds of every wish not served on a night why it is not, given the timetable of all nights. */
final class Refusals {

    private final Trip trip;
    private final Function<Night, SiteNight> nights;
    private final List<List<EveningOffers>> evenings;
    private final List<Timetable.Night> chosen;

    /** The refusals of a timetable; lists go by night, and evenings in each by site. */
    Refusals(Trip trip, Function<Night, SiteNight> nights, List<List<EveningOffers>> evenings,
            List<Timetable.Night> chosen) {
        this.trip = trip;
        this.nights = nights;
        this.evenings = evenings;
        this.chosen = chosen;
    }

    /** The wishes not served on a night at the site where it is spent, in the trip's order. */
    List<Plan.Refusal> of(int night, int site) {
        List<Plan.Refusal> refusals = new ArrayList<>();
        for (int number = 0; number < trip.wishes().size(); number++) {
            int wish = number;
            if (chosen.get(night).exposed().stream().noneMatch(candidate -> candidate.wish() == wish)) {
                refusals.add(refusal(night, site, wish));
            }
        }
        return refusals;
    }

    private Plan.Refusal refusal(int night, int site, int number) {
        Wish wish = trip.wishes().get(number);
        List<LocalDate> served = IntStream.range(0, chosen.size()).boxed()
                .flatMap(other -> chosen.get(other).exposed()
                .stream().filter(candidate -> candidate.wish() == number)
                .map(candidate -> trip.dates().get(other))).toList();
        if (served.size() == wish.repeat()) {
            return new Plan.Refusal(wish, new Reason.Served(served.stream().distinct().sorted().toList()),
                    Optional.empty());
        }
        EveningOffers.ToWish found = evenings.get(night).get(site).toWishes().get(number);
        return found.closedBy().map(reason -> counted(reason, wish, night, site))
                .map(reason -> new Plan.Refusal(wish, reason, remedy(night, site, number, reason)))
                .orElseGet(() -> new Plan.Refusal(wish, outbid(night, found), Optional.empty()));
    }

    /** A reason whose stars are those that the sheet would show. */
    private Reason counted(Reason reason, Wish wish, int night, int site) {
        return reason instanceof Reason.TooFewStars few ? new Reason.TooFewStars(few.wanted(),
                nights.apply(evenings.get(night).get(site).night()).recorded(wish, few.nearest()),
                few.nearest()) : reason;
    }

    /**
     * The nearest change that opens a closed wish: another site or night, or else something it gives up,
     * which is looked for once in a trip.
     */
    private Optional<Remedy> remedy(int night, int site, int wish, Reason reason) {
        Optional<EveningOffers> other = IntStream.range(0, evenings.size()).boxed()
                .sorted(Comparator.comparingInt(number -> Math.abs(number - night)))
                .flatMap(number -> evenings.get(number).stream())
                .filter(evening -> !evening.toWishes().get(wish).offers().isEmpty()).findFirst();
        return other.isPresent() ? other.map(evening -> elsewhere(evening, wish))
                : night != nearestNight(wish) ? Optional.empty() : changed(
                nights.apply(evenings.get(night).get(site).night()), trip.wishes().get(wish), reason);
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
                .map(evening -> evening.toWishes().get(wish).closedBy().orElseThrow())
                .anyMatch(reason -> !(reason instanceof Reason.Never || reason instanceof Reason.Exclusive)))
                .findFirst().orElse(0);
    }

    private Remedy elsewhere(EveningOffers evening, int wish) {
        NightClock clock = NightClock.of(evening.night().span(), NightClock.NODE_MIN);
        return new Remedy.Elsewhere(evening.night(),
                Optional.of(evening.night().site()).filter(site -> trip.sites().size() > 1),
                clock.at(evening.toWishes().get(wish).best().firstOpenMin()));
    }

    private Reason outbid(int night, EveningOffers.ToWish found) {
        List<Timetable.Exposed> exposed = chosen.get(night).exposed();
        boolean timeLeft = found.offers().stream().anyMatch(offer ->
                !Timetable.beside(exposed, offer, trip.changeoverMin()).isEmpty());
        if (timeLeft) {
            return sheetsUsed() == trip.sheets() - trip.spent() ? Reason.Plain.SHEETS_SPENT
                    : Reason.Plain.BETTER_CHOSEN;
        }
        return new Reason.TimeTaken(exposed.stream().map(one -> trip.wishes().get(one.wish()).name())
                .distinct().toList());
    }

    private int sheetsUsed() {
        return chosen.stream().mapToInt(night -> night.exposed().size()).sum();
    }
}
