package gloam.trail;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Target;
import gloam.units.Angle;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Finds when a target's trail runs at a wanted angle in a camera that keeps the target at a wanted place of
 * the frame.
 *
 * @param framing   the camera and its roll; its aim does not matter
 * @param place     where on the frame the target is kept
 * @param wanted    the trail's angle from +x towards +y, either way along it; zero for a level trail
 * @param tolerance how far from it the trail may run, 0° to 90°
 */
public record LevelSearch(Framing framing, Framing.Point place, Angle wanted, Angle tolerance) {

    /**
     * The angle runs towards each transit and away from it; that is seen at this step, however fast it swings
     * there.
     */
    private static final double STEP_S = 300;
    private static final double NOWHERE_RAD = Math.PI;

    /**
     * The times inside a span at which the trail runs so, in order; the terrain and the daylight do not
     * matter here.
     */
    public List<Level> find(TrailEstimator estimator, Target target, Interval span) {
        SkyPath path = estimator.path(target, span);
        return aimable(path, span).stream().flatMap(part -> toSpare(path, part).crossings(0).above().stream())
                .map(level -> level(path, path.since(toSpare(path, level).highest()), level)).toList();
    }

    /** When some aim puts the target at the wanted place. */
    private List<Interval> aimable(SkyPath path, Interval span) {
        return FunctionOfTime.ofSeconds(span, STEP_S, sinceS -> aimed(path, sinceS).isPresent() ? 1 : -1)
                .crossings(0).above();
    }

    /** By how much, in radians, the trail runs nearer to the wanted angle than it has to. */
    private FunctionOfTime toSpare(SkyPath path, Interval span) {
        double startS = path.since(span.start());
        return FunctionOfTime.ofSeconds(span, STEP_S,
                sinceS -> tolerance.radians() - Math.abs(offRad(path, startS + sinceS)));
    }

    private Level level(SkyPath path, double bestS, Interval span) {
        Framing best = aimed(path, bestS).orElseThrow();
        return new Level(span, path.instant(bestS), best, Angle.ofRadians(offRad(path, bestS)));
    }

    private Optional<Framing> aimed(SkyPath path, double atS) {
        return framing.placing(Direction.of(path.at(atS)), place.xMm(), place.yMm());
    }

    /**
     * Angle between the trail's line and the wanted one, −π/2 to π/2; π where no aim puts the target there.
     */
    private double offRad(SkyPath path, double atS) {
        return aimed(path, atS).flatMap(aimed -> Track.motion(aimed.axes(), path, atS))
                .map(motion -> Math.IEEEremainder(motion.direction().radians() - wanted.radians(), Math.PI))
                .orElse(NOWHERE_RAD);
    }

    /**
     * A time during which the trail runs as wanted.
     *
     * @param span    when
     * @param best    the instant at which it runs nearest to the wanted angle
     * @param framing the framing that puts the target at the wanted place then
     * @param off     the trail's angle less the wanted one at that instant, −90° to 90°
     */
    public record Level(Interval span, Instant best, Framing framing, Angle off) {

        /**
         * What is left of it in a part of its span: its best moment there is the nearest to the best of all.
         */
        public Level within(Interval part, LevelSearch search, TrailEstimator estimator, Target target) {
            if (!best.isBefore(part.start()) && !best.isAfter(part.endExclusive())) {
                return new Level(part, best, framing, off);
            }
            return search.level(estimator.path(target, part), best.isBefore(part.start()) ? 0
                    : part.seconds(), part);
        }
    }
}
