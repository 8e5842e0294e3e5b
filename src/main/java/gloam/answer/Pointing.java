package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Target;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.LengthSearch;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Instant;
import java.util.Optional;

/**
 * Where a camera is to point.
 *
 * @param camera the camera
 * @param roll   its turn about its axis
 * @param aimed  what it is aimed at
 */
public record Pointing(Camera camera, Angle roll, Aimed aimed) {

    /** How long a trail may be asked for. */
    public static final Range LENGTH = new Range("trail length", 0.01, 1000, "mm");

    /** What a camera is aimed at. */
    public sealed interface Aimed {
    }

    /**
     * A direction.
     *
     * @param direction where the frame's centre looks
     */
    public record Towards(Direction direction) implements Aimed {
    }

    /**
     * Something in the sky.
     *
     * @param target what
     * @param place  where on the frame it stands at mid exposure
     */
    public record Keeping(Target target, Framing.Point place) implements Aimed {
    }

    /**
     * Where the camera stands.
     *
     * @param ephemeris what tells where targets stand
     * @param site      the site
     * @param airless   whether refraction is left out
     */
    public record Standpoint(Ephemeris ephemeris, Site site, boolean airless) {

        private TrailEstimator estimator() {
            TrailEstimator estimator = new TrailEstimator(ephemeris, site);
            return airless ? estimator.airless() : estimator;
        }
    }

    /**
     * The framing.
     *
     * @param from   where it stands
     * @param middle mid exposure
     * @throws BadInput when no aim puts the target at its place
     */
    public Framing framing(Standpoint from, Instant middle) {
        return framing(from.estimator(), middle);
    }

    private Framing framing(TrailEstimator estimator, Instant middle) {
        if (aimed instanceof Towards towards) {
            return new Framing(towards.direction, roll, camera);
        }
        Keeping kept = (Keeping) aimed;
        return new Framing(Direction.ofDegrees(0, 0), roll, camera)
                .placing(estimator.direction(kept.target, middle), kept.place.xMm(), kept.place.yMm())
                .orElseThrow(() ->
                new BadInput("no aim puts it there: it stands too near the zenith for that place "
                        + "of the frame. Choose another"));
    }

    /**
     * The opening in which the trail of what is aimed at, or else of a star at the frame's centre, gets so
     * long; empty where it does not in 16 hours.
     *
     * @param from  where it stands
     * @param opens when the shutter opens
     * @throws BadInput when no aim puts the target at its place
     */
    public Optional<Interval> untilLength(Standpoint from, Instant opens, double lengthMm) {
        TrailEstimator estimator = from.estimator();
        LENGTH.check(lengthMm);
        return new LengthSearch(estimator, opens, lengthMm).find(open -> {
            Framing framing = framing(estimator, open.middle());
            return new LengthSearch.Shot(framing, aimed instanceof Keeping kept ? kept.target
                    : estimator.starAt(framing, 0, 0, open));
        });
    }
}
