package gloam.planner;

import gloam.trail.Framing;
import gloam.units.Angle;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/**
 * How bright the stars are that run over the frame of a wish during exposures on a night. For one thread at a
 * time.
 *
 * <p>In a camera that stands still they are those of its {@link FixedFrame}; in one that follows something
 * those that stand in its frame half-way through, looked up every quarter of an hour.
 */
final class CrossingStars {

    private static final int STEP_MIN = 15;
    private static final int SECONDS = 60;
    /** Planets move less in declination in a night; for the Moon stars are sought anew. */
    private static final Angle FOLLOWED_ABOUT = Angle.ofDegrees(1);

    private final NightSky sky;
    private final Aiming aiming;
    private final StarField field;
    private final int most;
    private final Map<Integer, Followed> frames = new HashMap<>();
    private final Map<Asked, float[]> following = new HashMap<>();
    private NearStars near;
    private FixedFrame fixed;
    private double turnedBefore;

    private record Asked(int step, int slope) {
    }

    /** What the camera shows at a step; a star is looked up when it is first asked for. */
    private record Followed(FrameStars frame, NearStars stars, BitSet looked, FrameStars.Seen[] seen) {

        float magnitude(int number, int slope) {
            if (!looked.get(number)) {
                looked.set(number);
                seen[number] = frame.seen(stars.get(number));
            }
            return seen[number] == null ? Float.POSITIVE_INFINITY : StarLimit.weighed(seen[number], slope);
        }
    }

    /**
     * Stars in the frames of a wish.
     *
     * @param most no more are asked for than so many that are easiest to record, at least one
     */
    CrossingStars(NightSky sky, Aiming aiming, StarField field, int most) {
        this.sky = sky;
        this.aiming = aiming;
        this.field = field;
        this.most = most;
    }

    /**
     * Magnitude of the faintest of so many stars that are easiest to record, as if their images ran as fast
     * as that of a star on the equator; infinite where fewer run over the frame.
     */
    double magnitude(int count, int openMin, int closeMin, StarLimit limit) {
        float[] easiest = easiest(openMin, closeMin, limit);
        return easiest.length < count ? Double.POSITIVE_INFINITY : easiest[count - 1];
    }

    /** How many stars record, of those that may be asked for. */
    int recorded(int openMin, int closeMin, StarLimit limit) {
        int recorded = 0;
        for (float magnitude : easiest(openMin, closeMin, limit)) {
            recorded += magnitude <= limit.equatorMag() ? 1 : 0;
        }
        return recorded;
    }

    private float[] easiest(int openMin, int closeMin, StarLimit limit) {
        if (aiming.fixed()) {
            return fixed().easiest(turned(openMin), turned(closeMin), limit.slope(), most);
        }
        int step = (openMin + (closeMin - openMin) / 2 + STEP_MIN / 2) / STEP_MIN;
        return following.computeIfAbsent(new Asked(step, limit.slope()), this::easiest);
    }

    private float[] easiest(Asked asked) {
        Followed there = frames.computeIfAbsent(asked.step * STEP_MIN, this::followed);
        return there.stars.easiest(most, asked.slope, number -> there.magnitude(number, asked.slope));
    }

    private Followed followed(int minute) {
        Framing framing = aiming.framing(minute);
        FrameStars frame = FrameStars.of(sky.trails(), sky.site(), framing, sky.clock().at(minute));
        if (near == null || !near.near(frame.centre())) {
            near = NearStars.of(field, frame.centre(), framing.radius(), FOLLOWED_ABOUT);
        }
        return new Followed(frame, near, new BitSet(near.size()), new FrameStars.Seen[near.size()]);
    }

    private FixedFrame fixed() {
        if (fixed == null) {
            fixed = field.fixed(sky.ephemeris(), sky.site(), aiming.framing(0), sky.night().date().getYear());
            turnedBefore = fixed.turned(sky.clock().at(0));
        }
        return fixed;
    }

    private int turned(int minute) {
        return (int) Math.round(turnedBefore + FixedFrame.turned(minute * SECONDS));
    }
}
