package gloam.planner;

import java.util.List;

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
}
