package gloam.view;

import gloam.view.MeasuredFrameRow.SkyPieceRow;
import gloam.view.MeasuredFrameRow.MatchedStarRow;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;

/**
 * A frame as a camera saw it: its pieces of sky, each as light as it is, with its brightness and how it
 * differs from the model, and the stars that were found.
 */
final class MeasureDrawing {

    private static final double WIDTH = 168;
    private static final double MARGIN = 8;
    private static final double INSIDE = WIDTH - 2 * MARGIN;
    private static final double HEAD = 18;
    private static final double FOOT = 14;
    private static final double LEAST_RANGE_MAG = 0.5;
    private static final int NAMED = 12;
    private static final double FAINTEST_DRAWN = 6.5;

    private final MeasuredFrameRow frame;
    private final double height;
    private final double brightest;
    private final double range;
    private final Drawing svg;

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
    }

    /** The drawing of one frame. */
    static String of(MeasureReport report, MeasuredFrameRow frame) {
        return new MeasureDrawing(frame).drawn(report);
    }

    private String drawn(MeasureReport report) {
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
        List<MatchedStarRow> stars = frame.stars();
        for (int i = 0; i < stars.size(); i++) {
            star(stars.get(i), i < NAMED);
        }
        frame.pieces().forEach(this::figures);
        svg.close("g");
        svg.label(MARGIN, HEAD + height + 5,
                "Above: V mag/arcsec², smaller is brighter. Below: mag brighter (+) or "
                + "darker (−) than the model. Plain grey: left out.", "font-size", 2.6);
        svg.label(MARGIN, HEAD + height + 10, "Circles: the brightest stars found. "
                + Wording.made(report.generatedAt()) + ".", "class", "slanted", "font-size", 2.6);
        return svg.finished();
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
        double x = MARGIN + INSIDE * piece.xFraction();
        double y = HEAD + height * piece.yFraction();
        svg.label(x, y - 0.4, Wording.number(piece.magArcsec2(), 2), "class", "name middle", "stroke-width",
                0.8, "font-size", 3.6);
        svg.label(x, y + 3.6, Wording.signed(piece.brighterMag(), 2), "class", "name middle", "stroke-width",
                0.8);
    }

    private void star(MatchedStarRow star, boolean named) {
        double x = MARGIN + INSIDE * star.xFraction();
        double y = HEAD + height * star.yFraction();
        double radius = 0.6 + 0.25 * Math.max(0, FAINTEST_DRAWN - star.magnitude());
        svg.empty("circle", "cx", x, "cy", y, "r", radius, "class", "line", "stroke-width", 0.2);
        if (named) {
            boolean left = star.xFraction() > 0.85;
            svg.label(left ? x - radius - 0.6 : x + radius + 0.6, y - 0.8, star.name(), "class",
                    left ? "name end" : "name", "stroke-width", 0.4, "font-size", 2.4);
        }
    }
}
