package gloam.frame;

import gloam.trail.Trail;
import gloam.units.Interval;
import gloam.units.Median;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * When no trail was drawn though the shutter was open.
 *
 * <p><b>Model.</b> Each opening is cut into equal parts. Where in a part the trails stand out less than a
 * third as much as they do else, in the median, the sky was clouded. <b>Valid.</b> Five trails in a part or
 * more. <b>Error.</b> A part: a fortieth of an opening, one minute at least. <b>Departures.</b> A lens that
 * was covered looks the same.
 *
 * @param clouds the spans
 */
public record SheetCourse(List<Interval> clouds) {

    private static final int PARTS = 40;
    private static final double LEAST_PART_S = 60;
    private static final double CLOUDED = 0.35;
    private static final int LEAST_TRAILS = 5;
    private static final int MOST_TRAILS = 40;
    private static final double[] WITHIN = {0.2, 0.5, 0.8};

    /** Copies the list. */
    public SheetCourse {
        clouds = List.copyOf(clouds);
    }

    /** A part of an opening, and how much of the trails was drawn in it. */
    private record Part(Interval span, OptionalDouble drawn) {
    }

    /** What the trails that are seen show. */
    static SheetCourse of(SheetScan scan, List<Trail> seen, List<Interval> openings) {
        List<Trail> trails = seen.subList(0, Math.min(MOST_TRAILS, seen.size()));
        double[] levels = trails.stream().mapToDouble(trail -> scan.rise(trail).level()).toArray();
        List<Part> parts = new ArrayList<>();
        for (Interval open : openings) {
            int count = (int) Math.max(1, Math.min(PARTS, open.seconds() / LEAST_PART_S));
            Duration length = open.lasts().dividedBy(count);
            IntStream.range(0, count).mapToObj(i -> Interval.lasting(open.start().plus(
                    length.multipliedBy(i)), length)).map(span -> part(scan, trails, levels, span))
                    .forEach(parts::add);
        }
        return new SheetCourse(clouds(parts));
    }

    private static Part part(SheetScan scan, List<Trail> trails, double[] levels, Interval span) {
        List<Double> drawn = new ArrayList<>();
        for (int i = 0; i < levels.length; i++) {
            double[] rises = rises(scan, trails.get(i), span);
            if (rises.length > 0) {
                drawn.add(Median.of(rises) / levels[i]);
            }
        }
        return new Part(span, drawn.size() < LEAST_TRAILS ? OptionalDouble.empty() : OptionalDouble.of(
                Median.of(drawn.stream().mapToDouble(Double::doubleValue).toArray())));
    }

    /** How far a trail stands out at some moments of a span. */
    private static double[] rises(SheetScan scan, Trail trail, Interval span) {
        List<Double> rises = new ArrayList<>();
        for (double share : WITHIN) {
            Instant at = span.start().plusMillis(Math.round(1000 * share * span.seconds()));
            for (Trail.Stretch stretch : trail.stretches()) {
                List<Trail.Point> points = stretch.points();
                for (int i = 0; i + 1 < points.size(); i++) {
                    if (!at.isBefore(points.get(i).at()) && at.isBefore(points.get(i + 1).at())) {
                        double part = (double) Duration.between(points.get(i).at(), at).toMillis()
                                / Duration.between(points.get(i).at(), points.get(i + 1).at()).toMillis();
                        double[] from = scan.place(points.get(i));
                        double[] to = scan.place(points.get(i + 1));
                        rises.add(scan.ridges().rise(new double[] {from[0] + part * (to[0] - from[0]),
                            from[1] + part * (to[1] - from[1])}, to)[0]);
                    }
                }
            }
        }
        return rises.stream().mapToDouble(Double::doubleValue).filter(Double::isFinite).toArray();
    }

    private static List<Interval> clouds(List<Part> parts) {
        List<Interval> clouds = new ArrayList<>();
        for (Part part : parts) {
            if (part.drawn.isPresent() && part.drawn.getAsDouble() < CLOUDED) {
                int last = clouds.size() - 1;
                if (last >= 0 && clouds.get(last).endExclusive().equals(part.span.start())) {
                    clouds.set(last, new Interval(clouds.get(last).start(), part.span.endExclusive()));
                } else {
                    clouds.add(part.span);
                }
            }
        }
        return clouds;
    }
}
