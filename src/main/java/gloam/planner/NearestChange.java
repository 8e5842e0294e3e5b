package gloam.planner;

import gloam.trail.Trail;
import gloam.units.Interval;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Finds the smallest change of a wish that would open it on a night on which it is closed. */
final class NearestChange {

    private static final Duration TRAIL_STEP = Duration.ofMinutes(5);

    private final Trip trip;
    private final Wish wish;
    private final NightSky sky;
    private final StarField stars;

    /** A wish with one thing given up, and what is then to be had, in words. */
    private record Changed(Wish wish, Function<Shot, String> words) {
    }

    /** Changes of a wish on a night. */
    NearestChange(Trip trip, Wish wish, NightSky sky, StarField stars) {
        this.trip = trip;
        this.wish = wish;
        this.sky = sky;
        this.stars = stars;
    }

    /** The first change that opens the wish, the least painful tried first, such as "it opens at f/16 from 03:10". */
    Optional<String> words() {
        return changes().flatMap(changed -> best(changed.wish).map(shot -> "it opens " + changed.words.apply(shot)
                + " from " + NightTimes.of(sky.night()).time(sky.clock().at(shot.openMin()))).stream()).findFirst();
    }

    private Optional<Shot> best(Wish changed) {
        return new WindowFinder(changed, Kit.of(trip, changed), sky, stars).find().shots().stream()
                .max(Comparator.comparingDouble(Shot::satisfaction));
    }

    private Stream<Changed> changes() {
        Wish.TrailLength anyLength = new Wish.TrailLength(OptionalDouble.empty(), OptionalDouble.empty());
        return Stream.of(
                new Changed(wish.through(List.of()), shot -> "at f/" + Wording.fNumber(shot.fNumber())),
                new Changed(wish.drawing(anyLength), this::lengthMissed),
                new Changed(wish.from(Duration.ofMinutes(1)), shot -> "for " + Wording.duration(shot.durationMin())),
                new Changed(wish.toned(new Wish.Tone.Free()), shot -> "with tone " + Wording.stops(shot.toneStops())),
                new Changed(wish.recording(new Wish.Records.Nothing()), shot -> "if less needs to record"),
                new Changed(wish.under(Wish.SkyKind.ANY), shot -> "under any sky"))
                .filter(changed -> !changed.wish.equals(wish));
    }

    private String lengthMissed(Shot shot) {
        Interval open = sky.clock().span(shot.openMin(), shot.closeMin());
        Aiming aiming = new Aiming(wish.aim(), sky, trip.camera());
        double lengthMm = sky.trails().trail(shot.framing(), aiming.centre(shot.framing(), open), open, TRAIL_STEP)
                .map(Trail::lengthMm).orElse(0.0);
        double lessMm = wish.trail().leastMm().orElse(0) - lengthMm;
        double moreMm = lengthMm - wish.trail().mostMm().orElse(Double.POSITIVE_INFINITY);
        return lessMm > 0 ? String.format(Locale.ROOT, "with %.0f mm less trail", Math.ceil(lessMm))
                : String.format(Locale.ROOT, "with %.0f mm more trail", Math.ceil(Math.max(0, moreMm)));
    }
}
