package gloam.planner;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says of every wish not served on a night why it is not, given the timetable of all nights. */
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
        return finding.shots().isEmpty() ? finding.closedBy() + opened(night, finding, wish) : outbid(night, wish, finding);
    }

    /** The nearest change that opens a closed wish: another site or night, or else something it gives up. */
    private String opened(int night, WindowFinder.Finding finding, int wish) {
        Optional<Evening> other = IntStream.range(0, evenings.size()).boxed()
                .sorted(Comparator.comparingInt(number -> Math.abs(number - night)))
                .flatMap(number -> evenings.get(number).stream())
                .filter(evening -> !evening.findings().get(wish).shots().isEmpty()).findFirst();
        return other.map(evening -> "; it opens " + opening(night, evening, wish))
                .or(() -> new NearestChange(trip, finding.wish(), finding.sky(), stars).words().map(words -> "; " + words))
                .orElse("");
    }

    private String opening(int night, Evening evening, int wish) {
        WindowFinder.Finding finding = evening.findings().get(wish);
        Shot best = finding.shots().stream().max(Comparator.comparingDouble(Shot::satisfaction)).orElseThrow();
        NightTimes times = NightTimes.of(evening.night());
        Instant open = finding.sky().clock().at(best.openMin());
        boolean sameNight = evening.night().date().equals(trip.dates().get(night));
        return (trip.sites().size() == 1 ? "" : "at " + evening.night().site().name() + " ") + "from "
                + (sameNight ? times.time(open) : times.dated(open));
    }

    private String outbid(int night, int wish, WindowFinder.Finding finding) {
        List<Candidate<Shot>> exposed = chosen.get(night).exposed();
        boolean timeLeft = finding.shots().stream().anyMatch(shot -> exposed.stream().allMatch(other ->
                other.clears(new Candidate<>(shot, wish, shot.openMin(), shot.closeMin(), 0), changeoverMin)));
        if (timeLeft) {
            return sheetsUsed() == trip.sheets() - trip.spent() ? "the sheets are spent on better pictures"
                    : "better pictures take its place";
        }
        return "lost the time to " + exposed.stream().map(candidate -> trip.wishes().get(candidate.wish()).name())
                .distinct().collect(Collectors.joining(" and "));
    }

    private int sheetsUsed() {
        return chosen.stream().mapToInt(night -> night.exposed().size()).sum();
    }
}
