package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for words on a drawing where they cover no line and no other words. Coordinates are its own.
 */
final class LabelPlaces {

    /**
     * Widths of the letters from a to z and from A to Z in hundredths of their height, rounded up, and the
     * most of digits and of Greek letters: measured in DejaVu Serif, the widest of three families of fonts.
     */
    private static final int[] SMALL = {60, 65, 57, 65, 60, 38, 65, 65, 32, 32, 61, 32, 95, 65, 61, 65, 65,
        48, 52, 41, 65, 57, 86, 57, 57, 53};
    private static final int[] CAPITAL = {73, 74, 77, 81, 73, 70, 80, 88, 40, 41, 75, 67, 103, 88, 82, 68, 82,
        76, 69, 67, 85, 73, 103, 72, 67, 70};
    private static final int BLANK = 32;
    private static final int DIGIT = 64;
    private static final int GREEK = 82;
    /** How far a box reaches above and below the line, by the height of letters. */
    private static final double ABOVE = 0.75;
    private static final double BELOW = 0.25;
    private static final double BESIDE = 0.5;
    /** How long a line to words is at least, by their height, how much longer one is tried; which ways. */
    private static final double NEAREST = 0.6;
    private static final double LONGER = 0.3;
    private static final int WAYS = 24;
    /** What a crossing costs, by the height of letters, and where crossings begin to count. */
    private static final double CROSSING = 2;
    private static final double OFF = 0.2;

    private final Box all;
    private final double letter;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[]> lines = new ArrayList<>();

    /** Places inside a rectangle for words of that height. */
    LabelPlaces(double left, double top, double right, double bottom, double letter) {
        this.all = new Box(left, top, right, bottom);
        this.letter = letter;
    }

    /**
     * Where words stand.
     *
     * @param end whether they end there
     */
    record Place(double x, double y, boolean end) {
    }

    /** Where words stand, and the line to them from what they name. */
    record Led(Place place, double fromX, double fromY, double toX, double toY) {
    }

    private record Box(double left, double top, double right, double bottom) {

        private boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        private boolean holds(Box other) {
            return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
        }

        /** Whether a straight line runs through it. */
        private boolean meets(double[] line) {
            double[] span = {0, 1};
            return within(line[0], line[2] - line[0], left, right, span)
                    && within(line[1], line[3] - line[1], top, bottom, span);
        }

        private static boolean within(double from, double by, double least, double most, double[] span) {
            if (by == 0) {
                return from >= least && from <= most;
            }
            double one = (least - from) / by;
            double other = (most - from) / by;
            span[0] = Math.max(span[0], Math.min(one, other));
            span[1] = Math.min(span[1], Math.max(one, other));
            return span[0] <= span[1];
        }
    }

    /** Keeps words off a straight line. */
    void keepOff(double x1, double y1, double x2, double y2) {
        lines.add(new double[] {x1, y1, x2, y2});
    }

    /** Keeps words out of a rectangle. */
    void keepOut(double left, double top, double right, double bottom) {
        taken.add(new Box(left, top, right, bottom));
    }

    /** Takes the first place beside one of some points that is clear for words, if there is one. */
    Optional<Place> take(String words, List<double[]> points) {
        return take(words, points, 4);
    }

    /** Takes such a place towards the middle of the drawing. */
    Optional<Place> takeInwards(String words, List<double[]> points) {
        return take(words, points, 2);
    }

    /**
     * Takes the place that the shortest line leads to from one of some points and that is clear for words; a
     * line that crosses others counts as longer, and none crosses words.
     *
     * @param farthest how long the line may be, by the height of the words
     */
    Optional<Led> takeLed(String words, List<double[]> points, double farthest) {
        Led best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double far = NEAREST; far <= farthest && far < least; far += LONGER) {
            for (double[] point : points) {
                for (int way = 0; way < WAYS; way++) {
                    Led led = led(point, far * letter, 2 * Math.PI * (way + 0.5) / WAYS);
                    double cost = far < least && clear(box(words, led.place)) ? far + crossings(led) : least;
                    if (cost < least) {
                        best = led;
                        least = cost;
                    }
                }
            }
        }
        Optional.ofNullable(best).ifPresent(led -> {
            taken.add(box(words, led.place));
            keepOff(led.fromX, led.fromY, led.toX, led.toY);
        });
        return Optional.ofNullable(best);
    }

    /** Takes the first rectangle of a size, by its middle, that covers nothing, else the first of all. */
    double[] takeMiddle(double wide, double high, List<double[]> middles) {
        double[] taking = middles.stream().filter(at -> clear(around(at, wide, high))).findFirst()
                .orElse(middles.get(0));
        taken.add(around(taking, wide, high));
        return taking;
    }

    private static Box around(double[] at, double wide, double high) {
        return new Box(at[0] - wide / 2, at[1] - high / 2, at[0] + wide / 2, at[1] + high / 2);
    }

    /** Words at the end of a line that leads so far that way from a point. */
    private Led led(double[] point, double far, double way) {
        double x = point[0] + far * Math.cos(way);
        double y = point[1] + far * Math.sin(way);
        boolean end = Math.cos(way) < 0;
        return new Led(new Place(x + (end ? -OFF : OFF) * letter, y + (ABOVE - BELOW) / 2 * letter, end),
                point[0], point[1], x, y);
    }

    /** What the lines cost that a line to words crosses; it never crosses words. */
    private double crossings(Led led) {
        double off = OFF * letter / Math.hypot(led.toX - led.fromX, led.toY - led.fromY);
        double[] line = {led.fromX + off * (led.toX - led.fromX), led.fromY + off * (led.toY - led.fromY),
            led.toX, led.toY};
        return taken.stream().anyMatch(box -> box.meets(line)) ? Double.POSITIVE_INFINITY
                : CROSSING * lines.stream().filter(other -> parts(line, other) && parts(other, line)).count();
    }

    /** Whether the ends of one line lie on both sides of the other. */
    private static boolean parts(double[] line, double[] other) {
        return side(line, other[0], other[1]) * side(line, other[2], other[3]) <= 0;
    }

    private static double side(double[] line, double x, double y) {
        return (line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0]);
    }

    private boolean clear(Box box) {
        return all.holds(box) && taken.stream().noneMatch(box::meets) && lines.stream().noneMatch(box::meets);
    }

    private Box box(String words, Place place) {
        double wide = letter * words.codePoints().map(LabelPlaces::width).sum() / 100;
        return new Box(place.end ? place.x - wide : place.x, place.y - ABOVE * letter,
                place.end ? place.x : place.x + wide, place.y + BELOW * letter);
    }

    private static int width(int codePoint) {
        if (codePoint == ' ') {
            return BLANK;
        } else if (codePoint >= 'a' && codePoint <= 'z') {
            return SMALL[codePoint - 'a'];
        } else if (codePoint >= 'A' && codePoint <= 'Z') {
            return CAPITAL[codePoint - 'A'];
        }
        return TextWidth.of(Character.toString(codePoint)) * (codePoint < 'A' ? DIGIT : GREEK);
    }

    private Optional<Place> take(String words, List<double[]> points, int sides) {
        for (double[] point : points) {
            for (int side = 0; side < sides; side++) {
                boolean end = side / 2 == (point[0] > (all.left + all.right) / 2 ? 0 : 1);
                Place place = new Place(point[0] + (end ? -BESIDE : BESIDE) * letter,
                        point[1] + (side % 2 == 0 ? -BELOW - 0.1 : ABOVE + 0.1) * letter, end);
                Box box = box(words, place);
                if (clear(box)) {
                    taken.add(box);
                    return Optional.of(place);
                }
            }
        }
        return Optional.empty();
    }
}
