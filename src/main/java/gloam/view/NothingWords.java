package gloam.view;

import gloam.planner.Plan;
import gloam.planner.Reason;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Says of nights with no exposure why they have none. */
final class NothingWords {

    private static final List<String> MONTHS = List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug",
            "Sep", "Oct", "Nov", "Dec");

    private NothingWords() {
    }

    /** Why a night has none; nothing where it has some. */
    static Optional<String> of(Plan.NightPlan night) {
        if (!night.windows().isEmpty()) {
            return Optional.empty();
        }
        List<Reason> wanted = night.refused().stream().map(Plan.Refusal::reason)
                .filter(reason -> !(reason instanceof Reason.Served)).toList();
        if (wanted.isEmpty()) {
            return Optional.of("the wishes are served on other nights");
        } else if (any(wanted, reason -> reason == Reason.Plain.SHEETS_SPENT)) {
            return Optional.of("all sheets are spent on other nights");
        } else if (any(wanted, reason -> reason == Reason.Plain.BETTER_CHOSEN)) {
            return Optional.of("wishes worth more were chosen on other nights");
        } else if (any(wanted, reason -> reason instanceof Reason.Overcast)) {
            return Optional.of("the sky will hardly be clear");
        }
        return Optional.of(wanted.size() < night.refused().size()
                ? "the wishes are served on other nights or cannot be had" : "no wish can be had");
    }

    private static boolean any(List<Reason> reasons, Predicate<Reason> which) {
        return reasons.stream().anyMatch(which);
    }

    /** Dates in order, such as "9-11, 13 Feb, 2 Mar 2027", with dashes of print. */
    static String dates(List<LocalDate> dates) {
        StringBuilder words = new StringBuilder();
        for (int first = 0; first < dates.size();) {
            int last = first;
            while (last + 1 < dates.size() && dates.get(last + 1).equals(dates.get(last).plusDays(1))
                    && sameMonth(dates.get(first), dates.get(last + 1))) {
                last++;
            }
            LocalDate from = dates.get(first);
            LocalDate to = dates.get(last);
            Optional<LocalDate> next = last + 1 < dates.size() ? Optional.of(dates.get(last + 1))
                    : Optional.empty();
            words.append(words.isEmpty() ? "" : ", ").append(from.getDayOfMonth())
                    .append(from.equals(to) ? "" : "\u2013" + to.getDayOfMonth());
            if (next.isEmpty() || !sameMonth(to, next.get())) {
                words.append(' ').append(MONTHS.get(to.getMonthValue() - 1));
            }
            if (next.isEmpty() || to.getYear() != next.get().getYear()) {
                words.append(' ').append(to.getYear());
            }
            first = last + 1;
        }
        return words.toString();
    }

    private static boolean sameMonth(LocalDate one, LocalDate other) {
        return one.getYear() == other.getYear() && one.getMonth() == other.getMonth();
    }
}
