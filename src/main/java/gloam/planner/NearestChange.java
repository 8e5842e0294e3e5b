package gloam.planner;

import gloam.trail.Trail;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Finds the smallest change of a wish that would open it on a night on which it is closed. */
final class NearestChange {

    /** Texts show tones to a tenth. */
    private static final double TENTH = 0.1;
    private static final Duration TRAIL_STEP = Duration.ofMinutes(5);

    private final SiteNight night;
    private final Wish wish;
    private final NightSky sky;
    private final Reason reason;

    /** A wish with one thing given up, and how much of it is then to be had. */
    private record Changed(Remedy.Change change, Wish wish, ToDoubleFunction<ExposureChoice> amount) {
    }

    /** Changes of a wish on a night that refuses it for a reason. */
    NearestChange(SiteNight night, Wish wish, Reason reason) {
        this.reason = reason;
        this.night = night;
        this.wish = wish;
        this.sky = night.sky();
    }

    /** The first change that opens the wish, the least painful tried first. */
    Optional<Remedy> remedy() {
        return changes().flatMap(changed -> best(changed.wish)
                .map(shot -> (Remedy) new Remedy.Changed(changed.change,
                changed.amount.applyAsDouble(shot), sky.clock().at(shot.openMin()))).stream()).findFirst();
    }

    private Optional<ExposureChoice> best(Wish changed) {
        return night.best(changed);
    }

    private Stream<Changed> changes() {
        TrailLength anyLength = new TrailLength(OptionalDouble.empty(), OptionalDouble.empty());
        return Stream.of(
                new Changed(Remedy.Change.F_NUMBERS, wish.through(List.of()), shot -> shot.fNumber()
                .marked()), new Changed(Remedy.Change.TRAIL_LENGTH, wish.drawing(anyLength), this::longerMm),
                new Changed(Remedy.Change.SHORTEST, wish.from(Duration.ofMinutes(1)),
                choice -> choice.closeMin() - choice.openMin()),
                new Changed(Remedy.Change.TONE, wish.toned(nearest()), shot -> stops(nearest())),
                new Changed(Remedy.Change.RECORDS, wish.recording(new Wish.Records.Nothing()), shot -> 0),
                new Changed(Remedy.Change.SKY, wish.under(SkyKind.ANY), shot -> 0))
                .filter(changed -> !changed.wish.equals(wish));
    }

    /**
     * The tone that comes nearest to the one wanted, a tenth of a stop lighter at most; none where that is
     * not it.
     */
    private Wish.Tone nearest() {
        if (!(reason instanceof Reason.ToneMissed missed)) {
            return wish.tone();
        }
        double stops = Math.ceil(missed.nearest().toneStops() / TENTH) * TENTH;
        return wish.tone() instanceof Wish.Tone.AtMost ? new Wish.Tone.AtMost(stops)
                : new Wish.Tone.Near(stops);
    }

    private static double stops(Wish.Tone tone) {
        return tone instanceof Wish.Tone.Near near ? near.stops()
                : tone instanceof Wish.Tone.AtMost most ? most.stops() : Double.POSITIVE_INFINITY;
    }

    private double longerMm(ExposureChoice shot) {
        Interval open = sky.clock().span(shot.openMin(), shot.closeMin());
        Aiming aiming = new Aiming(wish.aim(), sky, shot.framing().camera());
        double lengthMm = sky.trails().trail(shot.framing(), aiming.centre(shot.framing(), open), open,
                TRAIL_STEP)
                .map(Trail::lengthMm).orElse(0.0);
        double lessMm = wish.trail().leastMm().orElse(0) - lengthMm;
        return lessMm > 0 ? -lessMm
                : Math.max(0, lengthMm - wish.trail().mostMm().orElse(Double.POSITIVE_INFINITY));
    }
}
