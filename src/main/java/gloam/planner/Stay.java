package gloam.planner;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A run of consecutive nights at one site.
 *
 * @param nights its nights in order of date, at least one
 * @param score  mean of their scores, 0 to 1
 */
public record Stay(List<NightRank> nights, double score) {

    /** Copies the list. */
    public Stay {
        nights = List.copyOf(nights);
    }

    /** Of stays in order of rank those of nights in a row that share no date with one before. */
    public static List<Stay> separate(List<Stay> bestFirst) {
        Set<LocalDate> taken = new HashSet<>();
        List<Stay> separate = new ArrayList<>();
        for (Stay stay : bestFirst) {
            List<LocalDate> dates = stay.nights.stream().map(rank -> rank.night().date()).toList();
            boolean unbroken = dates.get(dates.size() - 1).equals(dates.get(0).plusDays(dates.size() - 1L));
            if (unbroken && dates.stream().noneMatch(taken::contains)) {
                taken.addAll(dates);
                separate.add(stay);
            }
        }
        return List.copyOf(separate);
    }

    /** The wishes that its nights serve, each once. */
    public List<Wish> served() {
        return nights.stream().flatMap(rank -> rank.served().stream()).distinct().toList();
    }
}
