package gloam.planner;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds of every wish not served on a night why it is not, given the timetable of all nights. */
final class Refusals {

    private final Trip trip;
    private final StarField stars;
    private final int changeoverMin;
    private final List<List<Evening>> evenings;
    private final List<Timetable.Night<Shot>> chosen;

    /** The refusals of a timetable; lists go by night, and evenings in each by site. */
    Refusals(Trip trip, StarField stars, int changeoverMin, List<List<Evening>> evenings, List<Timetable.Night<Shot>> chosen) {
        this.trip = trip;
        this.stars = stars;
        this.changeoverMin = changeoverMin;
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
        List<LocalDate> served = IntStream.range(0, chosen.size()).boxed().flatMap(other -> chosen.get(other).exposed()
                .stream().filter(candidate -> candidate.wish() == number).map(candidate -> trip.dates().get(other))).toList();
        if (served.size() == wish.repeat()) {
            return new Plan.Refusal(wish, new Reason.Served(served.stream().distinct().sorted().toList()), Optional.empty());
        }
        WindowFinder.Finding finding = evenings.get(night).get(site).findings().get(number);
        return finding.closedBy().map(reason -> new Plan.Refusal(wish, reason, remedy(night, finding, number)))
                .orElseGet(() -> new Plan.Refusal(wish, outbid(night, number, finding), Optional.empty()));
    }

    /** The nearest change that opens a closed wish: another site or night, or else something it gives up. */
    private Optional<Remedy> remedy(int night, WindowFinder.Finding finding, int wish) {
        Optional<Evening> other = IntStream.range(0, evenings.size()).boxed()
                .sorted(Comparator.comparingInt(number -> Math.abs(number - night)))
                .flatMap(number -> evenings.get(number).stream())
                .filter(evening -> !evening.findings().get(wish).shots().isEmpty()).findFirst();
        return other.map(evening -> elsewhere(evening, wish))
                .or(() -> new NearestChange(trip, finding.wish(), finding.sky(), stars).remedy());
    }

    private Remedy elsewhere(Evening evening, int wish) {
        WindowFinder.Finding finding = evening.findings().get(wish);
        Shot best = finding.shots().stream().max(Comparator.comparingDouble(Shot::satisfaction)).orElseThrow();
        return new Remedy.Elsewhere(evening.night(),
                Optional.of(evening.night().site()).filter(site -> trip.sites().size() > 1),
                finding.sky().clock().at(best.openMin()));
    }

    private Reason outbid(int night, int wish, WindowFinder.Finding finding) {
        List<Candidate<Shot>> exposed = chosen.get(night).exposed();
        boolean timeLeft = finding.shots().stream().anyMatch(shot -> exposed.stream().allMatch(other ->
                other.clears(new Candidate<>(shot, wish, shot.openMin(), shot.closeMin(), 0), changeoverMin)));
        if (timeLeft) {
            return sheetsUsed() == trip.sheets() - trip.spent() ? Reason.Plain.SHEETS_SPENT : Reason.Plain.BETTER_CHOSEN;
        }
        return new Reason.TimeTaken(exposed.stream().map(candidate -> trip.wishes().get(candidate.wish()).name())
                .distinct().toList());
    }

    private int sheetsUsed() {
        return chosen.stream().mapToInt(night -> night.exposed().size()).sum();
    }
}
