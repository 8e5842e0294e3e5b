package gloam.view;

import gloam.ephemeris.Night;
import gloam.planner.Plan;
import gloam.planner.Reason;
import gloam.planner.Wish;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A wish that a timetable does not serve as often as wanted.
 *
 * @param wish   its name
 * @param served how often it is served
 * @param wanted how often it is wanted
 * @param night  date of the evening on which it comes nearest to being served
 * @param site   site of that night
 * @param reason why it is not served then, and the nearest change that would serve it
 */
public record Unserved(String wish, int served, int wanted, LocalDate night, String site, String reason) {

    /** A refusal on its night. */
    private record On(Plan.NightPlan night, Plan.Refusal refusal) {

        /**
         * The nearer to being served the less: taken by others, opened by a change or another time, closed.
         */
        int distance() {
            Reason reason = refusal.reason();
            boolean taken = reason instanceof Reason.TimeTaken || reason == Reason.Plain.SHEETS_SPENT
                    || reason == Reason.Plain.BETTER_CHOSEN;
            return taken ? 0 : refusal.remedy().isPresent() ? 1 : 2;
        }

        String words() {
            return new ReasonWords(night.night()).of(refusal)
                    + (refusal.reason() == Reason.Plain.SHEETS_SPENT ? "; it takes another sheet"
                    : distance() < 2 ? "" : "; to give up one thing alone does not serve it");
        }
    }

    /** The wishes of a plan that are not served as often as wanted, in the trip's order. */
    static List<Unserved> of(Plan plan) {
        return plan.trip().wishes().stream().filter(wish -> on(plan, wish).size() < wish.repeat())
                .map(wish -> of(plan, wish)).toList();
    }

    private static Unserved of(Plan plan, Wish wish) {
        List<Plan.NightPlan> served = on(plan, wish);
        Optional<On> nearest = plan.nights().stream().flatMap(night -> night.refused().stream()
                .filter(refusal -> refusal.wish().equals(wish)).map(refusal -> new On(night, refusal)))
                .min(Comparator.comparingInt(On::distance));
        Night night = nearest.map(On::night).orElseGet(() -> served.get(0)).night();
        return new Unserved(wish.name(), served.size(), wish.repeat(), night.date(), night.site().name(),
                nearest.map(On::words).orElse("no sheet or no time is left for one more"));
    }

    /** The nights on which a wish is served, each as often as it is. */
    private static List<Plan.NightPlan> on(Plan plan, Wish wish) {
        return plan.nights().stream().flatMap(night -> night.windows().stream()
                .filter(window -> window.wish().equals(wish)).map(window -> night)).toList();
    }

    /** Such as "Pond: 1 of 2; Tue 2027-02-09: the Moon does not rise; possible under any sky from 21:00". */
    String words(boolean severalSites) {
        return wish + ": " + (served == 0 ? "" : served + " of " + wanted + "; ") + NightTimes.date(night)
                + (severalSites ? " at " + site : "") + ": " + reason;
    }
}
