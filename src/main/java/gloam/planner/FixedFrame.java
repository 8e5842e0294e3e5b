package gloam.planner;

import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The stars that run over the frame of a camera that stands still. By the turn of the sky they are the same
 * on every night of a year: precession and aberration come to less than 0.02°. May be asked by several
 * threads at once.
 *
 * <p>A star is looked up at every 3.75° of the turn, a quarter of an hour, when it is first asked for.
 * Between two looks a star crosses the frame's edge or the skyline as if it ran straight towards it; it is as
 * bright as at the look nearest to half-way through its time in the frame.
 */
final class FixedFrame {

    private static final int LOOKS = 96;
    private static final double LOOK_DEG = 360.0 / LOOKS;
    /** Openings and closings are told apart to a quarter of a look. */
    private static final int PARTS = 4;

    private final Instant firstLook;
    private final List<FrameStars> looks;
    private final NearStars stars;
    private final Map<Asked, float[]> known = new ConcurrentHashMap<>();
    private final AtomicReferenceArray<InFrame> inFrame;

    private FixedFrame(Instant firstLook, List<FrameStars> looks, NearStars stars) {
        this.firstLook = firstLook;
        this.looks = looks;
        this.stars = stars;
        this.inFrame = new AtomicReferenceArray<>(stars.size());
    }

    /** A star's runs over the frame. */
    private record InFrame(List<Run> runs) {

        float magnitude(double from, double to, int slope) {
            float magnitude = Float.POSITIVE_INFINITY;
            for (Run run : runs) {
                magnitude = Math.min(magnitude, run.magnitude(from, to, slope));
            }
            return magnitude;
        }
    }

    /** The stars that a framing shows at a site in a year. */
    static FixedFrame of(Ephemeris ephemeris, Site site, Framing framing, int year, StarField field) {
        Instant firstLook = within(ephemeris.covers(), LocalDate.of(year, 7, 1));
        FrameStars first = FrameStars.of(new TrailEstimator(ephemeris, site), site, framing, firstLook);
        return new FixedFrame(firstLook,
                IntStream.range(0, LOOKS).mapToObj(look -> first.turnedBy(Angle.ofDegrees(look * LOOK_DEG)))
                .toList(),
                NearStars.of(field, first.centre(), framing.radius(), Angle.ZERO));
    }

    private static Instant within(Interval covered, LocalDate wanted) {
        Instant from = wanted.atStartOfDay(ZoneOffset.UTC).toInstant();
        Instant last = covered.endExclusive().minus(Duration.ofDays(1));
        return from.isAfter(last) ? last : from.isBefore(covered.start()) ? covered.start() : from;
    }

    private InFrame inFrame(int number) {
        InFrame known = inFrame.get(number);
        if (known == null) {
            known = look(stars.get(number));
            inFrame.set(number, known);
        }
        return known;
    }

    private InFrame look(StarField.Placed star) {
        FrameStars.Seen[] seen = new FrameStars.Seen[LOOKS];
        boolean ever = false;
        for (int look = 0; look < LOOKS; look++) {
            seen[look] = looks.get(look).seen(star);
            ever |= seen[look] != null;
        }
        return new InFrame(ever ? runs(seen, look -> looks.get(Math.floorMod(look, LOOKS))
                .insideMm(star.place())) : List.of());
    }

    private static List<Run> runs(FrameStars.Seen[] looks, IntToDoubleFunction insideMm) {
        List<Run> runs = new ArrayList<>();
        for (int first = 0; first < LOOKS; first++) {
            if (looks[first] != null && looks[(first + LOOKS - 1) % LOOKS] == null) {
                int after = first + 1;
                while (looks[after % LOOKS] != null) {
                    after++;
                }
                FrameStars.Seen[] seen = new FrameStars.Seen[after - first];
                for (int look = first; look < after; look++) {
                    seen[look - first] = looks[look % LOOKS];
                }
                runs.add(new Run(first, first - edge(insideMm, first, first - 1),
                        after - 1 + edge(insideMm, after - 1, after), seen));
            }
        }
        return runs.isEmpty() ? List.of(new Run(0, 0, LOOKS, looks)) : runs;
    }

    /** How far the edge lies from one look towards another, as a share of the way. */
    private static double edge(IntToDoubleFunction insideMm, int inside, int outside) {
        double insideBy = insideMm.applyAsDouble(inside);
        double outsideBy = -insideMm.applyAsDouble(outside);
        return outsideBy <= 0 ? 1 : insideBy / (insideBy + outsideBy);
    }

    /**
     * What a star does while it stands in the frame, counted in looks.
     *
     * @param first  the first look in the frame
     * @param enters when it enters, before that
     * @param leaves when it leaves
     * @param seen   the star at the looks in between
     */
    private record Run(int first, double enters, double leaves, FrameStars.Seen[] seen) {

        /** Its magnitude half-way through what of it lies in some time; infinite for nothing. */
        float magnitude(double from, double to, int slope) {
            float magnitude = Float.POSITIVE_INFINITY;
            for (int turn = -LOOKS; turn <= LOOKS; turn += LOOKS) {
                double start = Math.max(from, enters + turn);
                double end = Math.min(to, leaves + turn);
                if (start <= end) {
                    int nearest = (int) Math.round((start + end) / 2) - first - turn;
                    magnitude = Math.min(magnitude, StarLimit.weighed(
                            seen[Math.max(0, Math.min(seen.length - 1, nearest))], slope));
                }
            }
            return magnitude;
        }
    }

    private record Asked(int from, int to, int slope, int most) {
    }

    /** By how much the sky turns from the first look to an instant, in parts of a look. */
    double turned(Instant at) {
        return turned(Duration.between(firstLook, at).toNanos() * 1e-9);
    }

    /** The same in a length of time. */
    static double turned(double seconds) {
        return EarthTurn.degrees(seconds) / LOOK_DEG * PARTS;
    }

    /**
     * Magnitudes of those stars that are easiest to record, growing, in an exposure while the sky turns from
     * one part of a look to another.
     */
    float[] easiest(int from, int to, int slope, int most) {
        int inTurn = Math.floorMod(from, LOOKS * PARTS);
        return known.computeIfAbsent(new Asked(inTurn, inTurn + to - from, slope, most), this::found);
    }

    private float[] found(Asked asked) {
        double from = asked.from / (double) PARTS;
        double to = asked.to / (double) PARTS;
        return stars.easiest(asked.most, asked.slope, number ->
                inFrame(number).magnitude(from, to, asked.slope));
    }
}
