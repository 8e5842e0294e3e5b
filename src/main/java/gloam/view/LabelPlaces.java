package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for words on a drawing where they cover no line and no other words. Coordinates are its own.
 */
final class LabelPlaces {

    /** Widths of letters, and how far their box reaches above and below the line, by their height. */
    private static final double WIDE = 0.56;
    private static final double WIDEST = 1;
    private static final String WIDEST_LETTERS = "mwMW";
    private static final double ABOVE = 0.8;
    private static final double BELOW = 0.3;
    private static final double BESIDE = 0.5;

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

    private Optional<Place> take(String words, List<double[]> points, int sides) {
        long widest = words.chars().filter(at -> WIDEST_LETTERS.indexOf(at) >= 0).count();
        double wide = letter * (WIDE * TextWidth.of(words) + (WIDEST - WIDE) * widest);
        for (double[] point : points) {
            for (int side = 0; side < sides; side++) {
                boolean end = side / 2 == (point[0] > (all.left + all.right) / 2 ? 0 : 1);
                double x = point[0] + (end ? -BESIDE : BESIDE) * letter;
                double y = point[1] + (side % 2 == 0 ? -BELOW - 0.1 : ABOVE + 0.1) * letter;
                Box box = new Box(end ? x - wide : x, y - ABOVE * letter, end ? x : x + wide,
                        y + BELOW * letter);
                if (all.holds(box) && taken.stream().noneMatch(box::meets)
                        && lines.stream().noneMatch(box::meets)) {
                    taken.add(box);
                    return Optional.of(new Place(x, y, end));
                }
            }
        }
        return Optional.empty();
    }
}
