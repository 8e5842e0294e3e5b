package gloam.planner;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says of every wish not served on a night why it is not, given the timetable of all nights. */
final class Refusals {

    private final Trip trip;
    private final int changeoverMin;
    private final List<List<Evening>> evenings;
    private final List<Timetable.Night<Shot>> chosen;

    /** The refusals of a timetable; lists go by night, and evenings in each by site. */
    Refusals(Trip trip, int changeoverMin, List<List<Evening>> evenings, List<Timetable.Night<Shot>> chosen) {
        this.trip = trip;
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
                refusals.add(new Plan.Refusal(trip.wishes().get(wish), reason(night, site, wish)));
            }
        }
        return refusals;
    }

    private String reason(int night, int site, int wish) {
        List<LocalDate> served = IntStream.range(0, chosen.size()).boxed().flatMap(number -> chosen.get(number).exposed()
                .stream().filter(candidate -> candidate.wish() == wish).map(candidate -> trip.dates().get(number))).toList();
        if (served.size() == trip.wishes().get(wish).repeat()) {
            return "served on " + new TreeSet<>(served).stream().map(LocalDate::toString)
                    .collect(Collectors.joining(" and "));
        }
        WindowFinder.Finding finding = evenings.get(night).get(site).findings().get(wish);
        return finding.shots().isEmpty() ? finding.closedBy() + elsewhere(night, site, wish) : outbid(night, wish, finding);
    }

    private String elsewhere(int night, int site, int wish) {
        Optional<Evening> other = evenings.get(night).stream()
                .filter(evening -> !evening.findings().get(wish).shots().isEmpty()).findFirst();
        return other.map(evening -> "; it could be had at " + evening.night().site().name()).orElse("");
    }

    private String outbid(int night, int wish, WindowFinder.Finding finding) {
        List<Candidate<Shot>> exposed = chosen.get(night).exposed();
        boolean timeLeft = finding.shots().stream().anyMatch(shot -> exposed.stream().allMatch(other ->
                other.clears(new Candidate<>(shot, wish, shot.openMin(), shot.closeMin(), 0), changeoverMin)));
        if (timeLeft) {
            return sheetsUsed() == trip.sheets() ? "the sheets are spent on better pictures"
                    : "better pictures take its place";
        }
        return "lost the time to " + exposed.stream().map(candidate -> trip.wishes().get(candidate.wish()).name())
                .distinct().collect(Collectors.joining(" and "));
    }

    private int sheetsUsed() {
        return chosen.stream().mapToInt(night -> night.exposed().size()).sum();
    }
}
