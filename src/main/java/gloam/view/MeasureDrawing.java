package gloam.view;

import gloam.view.MeasuredFrameRow.SkyPieceRow;
import gloam.view.MeasuredFrameRow.MatchedStarRow;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A frame as a camera saw it: its pieces of sky, each as light as it is, with its brightness and how it
 * differs from the model, and the stars that were found.
 */
final class MeasureDrawing {

    private static final double WIDTH = 168;
    private static final double MARGIN = 8;
    private static final double INSIDE = WIDTH - 2 * MARGIN;
    private static final double HEAD = 18;
    private static final double FOOT = 18;
    private static final double LEAST_RANGE_MAG = 0.5;
    private static final int NAMED = 12;
    private static final double FAINTEST_DRAWN = 6.5;
    private static final double FINE = 2.6;
    private static final double FIGURE = 3.6;
    private static final double FIGURES = 12;
    private static final double FIGURES_HIGH = 8.4;
    private static final int STEPS = 4;

    private final MeasuredFrameRow frame;
    private final double height;
    private final double brightest;
    private final double range;
    private final Drawing svg;
    private final LabelPlaces places;

    private MeasureDrawing(MeasuredFrameRow frame) {
        this.frame = frame;
        this.height = INSIDE * frame.heightFraction();
        DoubleSummaryStatistics mags = frame.pieces().stream().mapToDouble(SkyPieceRow::magArcsec2)
                .summaryStatistics();
        this.brightest = mags.getMin();
        this.range = Math.max(LEAST_RANGE_MAG, mags.getMax() - mags.getMin());
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, HEAD + height + FOOT, 3, "The sky in " + frame.name(),
                "Pieces of the frame with their brightness in mag/arcsec² and, below, how much brighter "
                + "than the model each is; circles are stars that were found.");
        this.places = new LabelPlaces(MARGIN, HEAD, WIDTH - MARGIN, HEAD + height, FINE);
    }

    /** The drawing of one frame. */
    static String of(MeasuredFrameRow frame, String made) {
        return new MeasureDrawing(frame).drawn(made);
    }

    private String drawn(String made) {
        svg.label(MARGIN, 8, frame.name() + ", " + Wording.date(Wording.secondDate(frame.at())) + " "
                + Wording.second(frame.at()) + " (" + Wording.offset(frame.at()) + ")", "font-size", 4.6);
        svg.label(MARGIN, 13.5, "azimuth " + Wording.direction(frame.azimuthDeg()) + "° ("
                + Wording.bearing(frame.azimuthDeg()) + "), altitude "
                + Wording.number(frame.altitudeDeg(), 1)
                + "°, roll " + Wording.number(frame.rollDeg(), 1) + "°, "
                + Wording.count(frame.starsMatched(), "star"));
        svg.empty("rect", "x", MARGIN, "y", HEAD, "width", INSIDE, "height", height, "class", "dark edge",
                "stroke-width", 0.2);
        frame.pieces().forEach(this::piece);
        svg.open("g", "class", "over");
        frame.stars().forEach(this::star);
        frame.pieces().forEach(this::figures);
        frame.stars().stream().limit(NAMED).forEach(this::name);
        svg.close("g");
        svg.label(MARGIN, HEAD + height + 5,
                "Above: V mag/arcsec², smaller is brighter. Below: mag brighter (+) or "
                + "darker (−) than the model. Plain grey: left out.", "font-size", FINE);
        svg.label(MARGIN, HEAD + height + 10, "Circles: the brightest stars found.", "font-size", FINE);
        return svg.finished(MARGIN, made);
    }

    private void piece(SkyPieceRow piece) {
        double width = INSIDE * piece.widthFraction();
        double tall = height * piece.heightFraction();
        double x = MARGIN + INSIDE * piece.xFraction();
        double y = HEAD + height * piece.yFraction();
        int grey = (int) Math.round(120 - 95 * (piece.magArcsec2() - brightest) / range);
        svg.empty("rect", "x", x - width / 2, "y", y - tall / 2, "width", width, "height", tall, "fill",
                String.format(Locale.ROOT, "#%02x%02x%02x", grey, grey, Math.min(255, grey + 14)), "class",
                "edge", "stroke-width", 0.1);
    }

    private void figures(SkyPieceRow piece) {
        double[] middle = places.takeMiddle(FIGURES, FIGURES_HIGH, middles(piece));
        double x = middle[0];
        double y = middle[1];
        svg.label(x, y - 0.4, Wording.number(piece.magArcsec2(), 2), "class", "name middle", "stroke-width",
                0.8, "font-size", FIGURE);
        svg.label(x, y + 3.6, Wording.signed(piece.brighterMag(), 2), "class", "name middle", "stroke-width",
                0.8);
    }

    /** Where the figures of a piece may stand in it, from its middle outwards. */
    private List<double[]> middles(SkyPieceRow piece) {
        double across = Math.max(0, INSIDE * piece.widthFraction() - FIGURES) / (2 * STEPS);
        double down = Math.max(0, height * piece.heightFraction() - FIGURES_HIGH) / (2 * STEPS);
        double x = MARGIN + INSIDE * piece.xFraction();
        double y = HEAD + height * piece.yFraction();
        return IntStream.rangeClosed(-STEPS, STEPS).boxed().flatMap(right -> IntStream
                .rangeClosed(-STEPS, STEPS)
                .mapToObj(low -> new double[] {x + right * across, y + low * down}))
                .sorted(Comparator.comparingDouble(at -> Math.hypot(at[0] - x, at[1] - y))).toList();
    }

    private void star(MatchedStarRow star) {
        double x = x(star);
        double y = y(star);
        double radius = radius(star);
        places.keepOut(x - radius, y - radius, x + radius, y + radius);
        svg.empty("circle", "cx", x, "cy", y, "r", radius, "class", "line", "stroke-width", 0.2);
    }

    /** A star's name where it covers neither figures nor other stars. */
    private void name(MatchedStarRow star) {
        double aside = radius(star);
        places.take(star.name(), List.of(new double[] {x(star) + aside, y(star)},
                new double[] {x(star) - aside, y(star)}, new double[] {x(star), y(star) - aside},
                new double[] {x(star), y(star) + aside})).ifPresent(place -> svg.label(place.x(), place.y(),
                star.name(), "class", place.end() ? "name end" : "name", "stroke-width", 0.4, "font-size",
                FINE));
    }

    private double x(MatchedStarRow star) {
        return MARGIN + INSIDE * star.xFraction();
    }

    private double y(MatchedStarRow star) {
        return HEAD + height * star.yFraction();
    }

    private static double radius(MatchedStarRow star) {
        return 0.6 + 0.25 * Math.max(0, FAINTEST_DRAWN - star.magnitude());
    }
}
