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
 * The aim of a camera.
 *
 * @param camera the camera
 * @param roll   its turn about its axis
 * @param aimed  what it points at
 */
public record Pointing(Camera camera, Angle roll, Aimed aimed) {

    /** Allowed lengths of a wanted trail. */
    public static final Range LENGTH = new Range("trail length", 0.01, 1000, "mm");

    /** What a camera points at. */
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
     * @param target the target
     * @param place  where on the frame it is at mid-exposure
     */
    public record Keeping(Target target, Framing.Point place) implements Aimed {
    }

    /**
     * Where the camera stands.
     *
     * @param ephemeris source of positions
     * @param site      the site
     * @param airless   whether to ignore refraction
     */
    public record Standpoint(Ephemeris ephemeris, Site site, boolean airless) {

        private TrailEstimator estimator() {
            TrailEstimator estimator = new TrailEstimator(ephemeris, site);
            return airless ? estimator.airless() : estimator;
        }
    }

    /**
     * The framing at mid-exposure.
     *
     * @param from   where the camera stands
     * @param middle mid-exposure
     * @throws BadInput if no aim puts the target at its place
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
     * The opening in which the target's trail, or else that of a star at the frame's centre, reaches a
     * length; empty if it does not within 16 hours.
     *
     * @param from     where the camera stands
     * @param opens    when the shutter opens
     * @param lengthMm the length on the sheet, in mm
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
