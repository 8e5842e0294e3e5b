package gloam.planner;

import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What an earlier timetable of a trip put into calendars.
 *
 * @param identity  the trip's, see {@link Trip#identity()}
 * @param windows   what it planned
 * @param cancelled what it took back
 */
public record FormerPlan(UUID identity, List<Window> windows, List<Cancelled> cancelled) {

    /** Copies the lists. */
    public FormerPlan {
        windows = List.copyOf(windows);
        cancelled = List.copyOf(cancelled);
    }

    /** Whether it is of a trip, or serves one of its wishes at least. */
    public boolean suits(Trip trip) {
        return identity.equals(trip.identity()) || windows.stream().anyMatch(window ->
                trip.wishes().stream().anyMatch(wish -> wish.name().equals(window.wish)));
    }

    /** The sequence number under which a calendar knows a window; empty where it does not. */
    public Optional<Integer> sequence(UUID window) {
        return Stream.concat(windows.stream().map(Window::event), cancelled.stream().map(Cancelled::event))
                .filter(event -> event.identity.equals(window)).map(Event::sequence).findFirst();
    }

    /**
     * What a calendar keeps of a window through all its changes.
     *
     * @param identity the same in every timetable of the trip for the wish's sheet of that number
     * @param sequence greater after each change
     */
    public record Event(UUID identity, int sequence) {
    }

    /**
     * A window planned.
     *
     * @param event   what a calendar keeps of it
     * @param wish    name of the wish
     * @param details everything else a calendar shows
     */
    public record Window(Event event, String wish, Details details) {
    }

    /**
     * What a calendar shows of a window.
     *
     * @param sheet       number of the sheet
     * @param site        name of the site
     * @param film        name of the film
     * @param prepareAt     when setting up begins
     * @param open        from opening to closing
     * @param azimuthDeg  azimuth of the frame's centre
     * @param altitudeDeg altitude of it
     * @param rollDeg     roll of the camera
     * @param fNumber     f-number as marked
     * @param camera      name of the camera, if known
     */
    public record Details(int sheet, String site, String film, Instant prepareAt, Interval open,
                          double azimuthDeg, double altitudeDeg, double rollDeg, double fNumber,
                          Optional<String> camera) {

        /** A saved timetable tells times to a tenth of a second and angles to the fifth decimal. */
        private static final Duration SAME_TIME = Duration.ofMillis(100);
        private static final double SAME_NUMBER = 1e-5;

        /** Whether a calendar shows the same of another one, as finely as timetables are saved. */
        public boolean shows(Details other) {
            return sheet == other.sheet && site.equals(other.site) && film.equals(other.film)
                    && same(prepareAt, other.prepareAt) && same(open.start(), other.open.start())
                    && same(open.endExclusive(), other.open.endExclusive())
                    && same(azimuthDeg, other.azimuthDeg)
                    && same(altitudeDeg, other.altitudeDeg) && same(rollDeg, other.rollDeg)
                    && same(fNumber, other.fNumber)
                    && (camera.isEmpty() || other.camera.isEmpty() || camera.equals(other.camera));
        }

        private static boolean same(Instant one, Instant other) {
            return Duration.between(one, other).abs().compareTo(SAME_TIME) < 0;
        }

        private static boolean same(double one, double other) {
            return Math.abs(one - other) < SAME_NUMBER;
        }
    }

    /**
     * A window taken back.
     *
     * @param event what a calendar keeps of it
     * @param wish  name of the wish
     * @param site  name of the site
     * @param open  when it would have been open
     */
    public record Cancelled(Event event, String wish, String site, Interval open) {
    }
}
