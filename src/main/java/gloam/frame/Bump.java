package gloam.frame;

import gloam.trail.Framing;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A camera that was moved while its sheet was exposed.
 *
 * <p><b>Model.</b> The trails are cut in two, in the middle and where those of one aim leave the lines, and
 * each part is laid on the lines by itself, within a degree and a half of that aim. The cut is moved to where
 * most of both lies on lines, and believed where each part has more of its trails on lines than the other's
 * aim gives it by chance ({@link OnLines}). <b>Valid.</b> One move, by 0.15° to 1.5°, with an eighth of the
 * exposure on both sides of it. <b>Error.</b> Aims as those of a whole sheet, two minutes.
 * <b>Departures.</b> A move along the trails looks like a cloud.
 *
 * @param at     when it was moved
 * @param before where it pointed until then
 * @param after  where it pointed from then on
 */
public record Bump(Instant at, TrailAim before, TrailAim after) {

    private static final double WITHIN_DEG = 1.5;
    private static final int ROUNDS = 2;

    /** Where the camera pointed from then on, its focal length as found. */
    public Framing framing() {
        return after.map().axes().framing();
    }

    /** Finds a move, by an aim that lays much of the trails on lines. */
    static Optional<Bump> of(Ridges ridges, TrailAim one, List<PredictedTrail> trails, Vector3D pole) {
        List<PredictedTrail> finer = trails.stream().map(PredictedTrail::finer).toList();
        Optional<Halves> found = Stream.of(middle(trails), step(ridges, one, finer)).distinct()
                .map(cut -> Halves.of(ridges, one.map(), finer, pole, cut))
                .max(Comparator.comparingInt(halves -> halves.bump.onLines(ridges, finer)));
        for (int round = 0; round < ROUNDS && found.filter(Halves::believed).isPresent(); round++) {
            found = Optional.of(Halves.of(ridges, one.map(), finer, pole,
                    found.get().bump.sharpest(ridges, finer)));
        }
        return found.filter(Halves::believed).map(Halves::bump);
    }

    /** The moment in the middle of what was drawn. */
    static Instant middle(List<PredictedTrail> trails) {
        List<Instant> moments = trails.stream().flatMap(trail -> trail.open().stream())
                .map(PredictedTrail.Moment::at).distinct().sorted().toList();
        return moments.get(moments.size() / 2);
    }

    /** The moment at which trails step most on or off the lines by an aim. */
    private static Instant step(Ridges ridges, TrailAim aim, List<PredictedTrail> trails) {
        double mean = trails.stream().flatMap(trail -> trail.open().stream())
                .mapToInt(moment -> on(ridges, aim, moment)).average().orElse(0);
        return turn(trails, moment -> on(ridges, aim, moment) - mean, Math::abs);
    }

    /** The moment at which a cut would have most on lines. */
    private Instant sharpest(Ridges ridges, List<PredictedTrail> trails) {
        return turn(trails, moment -> on(ridges, before, moment) - on(ridges, after, moment), sum -> sum);
    }

    /** The moment until which the gains of all moments of the trails sum up to most. */
    private static Instant turn(List<PredictedTrail> trails, ToDoubleFunction<PredictedTrail.Moment> gain,
            ToDoubleFunction<Double> worth) {
        SortedMap<Instant, Double> gains = new TreeMap<>();
        trails.stream().flatMap(trail -> trail.open().stream()).forEach(moment ->
                gains.merge(moment.at(), gain.applyAsDouble(moment), Double::sum));
        Instant best = gains.firstKey();
        double most = 0;
        double sum = 0;
        for (Map.Entry<Instant, Double> moment : gains.entrySet()) {
            if (worth.applyAsDouble(sum) > most) {
                most = worth.applyAsDouble(sum);
                best = moment.getKey();
            }
            sum += moment.getValue();
        }
        return best;
    }

    private int onLines(Ridges ridges, List<PredictedTrail> trails) {
        return trails.stream().flatMap(trail -> trail.open().stream()).mapToInt(moment ->
                on(ridges, moment.at().isBefore(at) ? before : after, moment)).sum();
    }

    private static int on(Ridges ridges, TrailAim aim, PredictedTrail.Moment moment) {
        return aim.map().toImage(moment.direction()).filter(aim.map()::contains).filter(place ->
                ridges.awayPx(place[0], place[1]) <= TrailAim.NEAR_PX).isPresent() ? 1 : 0;
    }

    /** What was drawn before a moment and from then on, each laid on the lines by itself. */
    private record Halves(Bump bump, TrailAim.Search early, TrailAim.Search late) {

        static Halves of(Ridges ridges, ImageMap map, List<PredictedTrail> trails, Vector3D pole,
                Instant cut) {
            TrailAim.Search early = new TrailAim.Search(ridges, map, trails.stream()
                    .map(trail -> trail.before(cut)).toList(), pole, WITHIN_DEG);
            TrailAim.Search late = new TrailAim.Search(ridges, map, trails.stream()
                    .map(trail -> trail.from(cut)).toList(), pole, WITHIN_DEG);
            return new Halves(new Bump(cut, early.best(), late.best()), early, late);
        }

        boolean believed() {
            return early.better(bump.before.map(), bump.after.map())
                    && late.better(bump.after.map(), bump.before.map());
        }
    }
}
