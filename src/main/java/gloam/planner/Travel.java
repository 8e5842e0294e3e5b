package gloam.planner;

import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * How long it takes from one site to another.
 *
 * @param usual between any two sites of which nothing else is said
 * @param legs  between some, both ways
 */
public record Travel(Duration usual, List<Leg> legs) {

    /** Allowed times. */
    public static final Range MINUTES = new Range("travel", 0, 10_080, "min");

    /** No time at all. */
    public static final Travel NONE = new Travel(Duration.ZERO, List.of());

    /** Copies the list; refuses a time outside its range with {@link gloam.units.BadInput}. */
    public Travel {
        MINUTES.check(usual.toSeconds() / 60.0);
        legs = List.copyOf(legs);
    }

    /**
     * The way between two sites.
     *
     * @param from  the name of one
     * @param to    the name of the other
     * @param lasts how long it takes
     */
    public record Leg(String from, String to, Duration lasts) {

        /** Refuses a time outside its range with {@link gloam.units.BadInput}. */
        public Leg {
            MINUTES.check(lasts.toSeconds() / 60.0);
        }

        private boolean joins(Site one, Site other) {
            return from.equals(one.name()) && to.equals(other.name())
                    || from.equals(other.name()) && to.equals(one.name());
        }
    }

    /** Whether no way takes any time. */
    boolean none() {
        return usual.isZero() && legs.stream().allMatch(leg -> leg.lasts.isZero());
    }

    /**
     * Whether there is the time to go from one night to a later one: from the Sun's rising to its setting.
     */
    boolean fits(Night earlier, Night later) {
        if (earlier.site().equals(later.site()) || earlier.sunDown().isEmpty() || later.sunDown().isEmpty()) {
            return true;
        }
        Instant leave = earlier.sunDown().get(earlier.sunDown().size() - 1).endExclusive();
        return !leave.plus(between(earlier.site(), later.site())).isAfter(later.sunDown().get(0).start());
    }

    private Duration between(Site one, Site other) {
        return legs.stream().filter(leg -> leg.joins(one, other)).map(Leg::lasts).findFirst().orElse(usual);
    }
}
