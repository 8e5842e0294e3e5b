package gloam.view;

import gloam.answer.TripodView;
import gloam.ephemeris.Direction;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What is seen from behind the camera: azimuths across and altitudes up, the land, the frame as it is turned,
 * the ways of planets and bright stars while the shutter is open, the Moon's way, the pole, and the star to
 * aim by.
 */
final class TripodDrawing {

    private static final double PLOT = 170;
    private static final double MOST_HEIGHT = 150;
    private static final double LEFT = 14;
    private static final double TOP = 20;
    private static final double FOOT = 34;
    private static final double LETTER = 3.4;
    private static final double FINE = 2.9;
    private static final double BOTTOM_DEG = -5;
    private static final double LEAST_COSINE = 0.35;
    private static final double MOST_STROKE = 1;
    private static final double LEAST_STROKE = 0.2;
    private static final double STROKE_A_MAG = 0.15;
    private static final double BRIGHTEST_MAG = -2;
    private static final int MOST_NAMES = 12;
    private static final double COMPASS_DEG = 22.5;

    private final TrailReport report;
    private final TripodView view;
    private final ZoneId zone;
    private final double acrossMm;
    private final double upMm;
    private final Drawing svg;
    private final LabelPlaces places;

    private TripodDrawing(TrailReport report) {
        this.report = report;
        this.view = report.view();
        this.zone = report.site().zone();
        double widthDeg = view.rightDeg() - view.leftDeg();
        double heightDeg = view.topDeg() - BOTTOM_DEG;
        double cosine = Math.max(LEAST_COSINE, Math.cos(Math.toRadians(report.frame().altitudeDeg())));
        double scale = Math.min(PLOT / widthDeg, cosine * MOST_HEIGHT / heightDeg);
        this.acrossMm = scale;
        this.upMm = scale / cosine;
        this.svg = new Drawing(Drawing.Unit.MM, PLOT + 2 * LEFT, TOP + heightDeg * upMm + FOOT, LETTER,
                "From behind the camera: " + heading(), "The land, the sky's ways while the shutter is open, "
                + "and the frame. " + view.aimStar().map(star -> TrailText.aimStar(report, star)).orElse(""));
        this.places = new LabelPlaces(LEFT, TOP, LEFT + widthDeg * acrossMm, bottom(), FINE);
    }

    /** The drawing of a framing. */
    static String of(TrailReport report, String made) {
        return new TripodDrawing(report).drawn(made);
    }

    private String heading() {
        TrailReport.FrameRow frame = report.frame();
        return report.site().name() + ", " + Wording.secondDate(frame.openAt()) + " "
                + Wording.minute(frame.openAt()) + "–"
                + (frame.severalNights() ? Wording.secondDate(frame.closeAt()) + " " : "")
                + Wording.minute(frame.closeAt()) + " (" + zone + ")";
    }

    private String drawn(String made) {
        svg.label(LEFT, 8, heading(), "font-size", 4.6);
        svg.label(LEFT, 14, "azimuth " + Wording.plain(report.frame().azimuthDeg()) + "° "
                + Wording.bearing(report.frame().azimuthDeg()) + ", altitude "
                + Wording.plain(report.frame().altitudeDeg()) + "°, roll "
                + Wording.plain(report.frame().rollDeg()) + "°; "
                + Wording.plain(report.frame().focalLengthMm()) + " mm on "
                + Wording.size(report.frame().widthMm(), report.frame().heightMm()));
        double width = (view.rightDeg() - view.leftDeg()) * acrossMm;
        svg.open("svg", "x", LEFT, "y", TOP, "width", width, "height", bottom() - TOP, "viewBox",
                Markup.number(LEFT) + " " + Markup.number(TOP) + " " + Markup.number(width) + " "
                + Markup.number(bottom() - TOP), "overflow", "hidden");
        svg.empty("rect", "x", LEFT, "y", TOP, "width", width, "height", bottom() - TOP, "class", "sheet");
        grid();
        sky();
        svg.close("svg");
        axes();
        foot();
        return svg.finished(LEFT, made);
    }

    private void grid() {
        for (double deg = 0; deg <= view.topDeg(); deg += stepDeg()) {
            svg.empty("path", "d", "M" + Markup.number(LEFT) + " " + Markup.number(y(deg)) + "H"
                    + Markup.number(x(view.rightDeg())), "class", "grid");
        }
        for (double deg = firstAzimuth(); deg <= view.rightDeg(); deg += stepDeg()) {
            svg.empty("path", "d", "M" + Markup.number(x(deg)) + " " + Markup.number(TOP) + "V"
                    + Markup.number(bottom()), "class", "grid");
        }
    }

    /** Everything above the skyline, the land over it, then the names where they cover nothing. */
    private void sky() {
        for (TripodView.Way way : view.ways()) {
            double stroke = Math.max(LEAST_STROKE, Math.min(MOST_STROKE, LEAST_STROKE + STROKE_A_MAG
                    * Math.max(0, 3.5 - Math.max(BRIGHTEST_MAG, way.magnitude()))));
            pieces(way.points()).forEach(piece -> line(piece, "trail", stroke));
        }
        pieces(view.moon().stream().map(TripodView.MoonAt::seen).toList())
                .forEach(piece -> line(piece, "line dotted", 0.5));
        List<Direction> land = view.skyline();
        double stepMm = (view.rightDeg() - view.leftDeg()) / (land.size() - 1) * acrossMm;
        svg.empty("polygon", "points", IntStream.range(0, land.size()).mapToObj(i -> Markup.number(LEFT
                + i * stepMm) + "," + Markup.number(y(land.get(i)))).collect(Collectors.joining(" ")) + " "
                + Markup.number(x(view.rightDeg())) + "," + Markup.number(bottom() + 1) + " "
                + Markup.number(LEFT) + "," + Markup.number(bottom() + 1), "class", "dark edge",
                "stroke-width", 0.3);
        keepOff(land);
        pieces(view.frame()).forEach(piece -> line(piece, "stay", 0.8));
        view.moon().stream().filter(moon -> moon.at().atZone(zone).getMinute() == 0).forEach(this::moon);
        view.pole().ifPresent(pole -> {
            cross(pole);
            name(Wording.title(report.pole().name()) + " pole", List.of(pole));
        });
        cross(Direction.ofDegrees(report.frame().azimuthDeg(), report.frame().altitudeDeg()));
        view.aimStar().ifPresent(this::aimStar);
        view.ways().stream().limit(MOST_NAMES).filter(way -> view.aimStar().filter(star ->
                star.name().equals(way.name())).isEmpty()).forEach(way -> name(way.star() ? way.name()
                : Wording.title(way.name()), way.points()));
    }

    private void moon(TripodView.MoonAt moon) {
        svg.empty("circle", "cx", x(moon.seen()), "cy", y(moon.seen()), "r", 1, "class", "lit edge",
                "stroke-width", 0.2);
        OffsetDateTime at = moon.at().atZone(zone).toOffsetDateTime();
        name("Moon " + Wording.minute(at), List.of(moon.seen()));
    }

    private void aimStar(TripodView.AimStar star) {
        Direction centre = Direction.ofDegrees(report.frame().azimuthDeg(), report.frame().altitudeDeg());
        svg.empty("circle", "cx", x(star.seen()), "cy", y(star.seen()), "r", 1.8, "class", "stay",
                "stroke-width", 0.5);
        svg.empty("path", "d", "M" + point(star.seen()) + "H" + Markup.number(x(centre)) + "V"
                + Markup.number(y(centre)), "class", "stay dotted", "stroke-width", 0.4);
        name(star.name() + " " + Wording.minute(report.frame().openAt()), List.of(star.seen()));
    }

    private void name(String words, List<Direction> beside) {
        places.take(words, beside.stream().map(at -> new double[] {x(at), y(at)}).toList())
                .ifPresent(place -> svg.label(place.x(), place.y(), words, "font-size", FINE, "class",
                        place.end() ? "name slanted end" : "name slanted", "stroke-width", 0.5));
    }

    private void cross(Direction at) {
        svg.empty("path", "d", "M" + point(at) + "m-1.5 0h3m-1.5 -1.5v3", "class", "line", "stroke-width",
                0.3);
    }

    private void axes() {
        for (double deg = 0; deg <= view.topDeg(); deg += stepDeg()) {
            svg.label(LEFT - 1.5, y(deg) + 1.2, Wording.plain(deg) + "°", "class", "end");
        }
        for (double deg = firstAzimuth(); deg <= view.rightDeg(); deg += stepDeg()) {
            double azimuthDeg = (deg % 360 + 360) % 360;
            svg.label(x(deg), bottom() + 4.5, Wording.plain(azimuthDeg) + "°", "class", "middle");
        }
        for (double deg = COMPASS_DEG * Math.ceil(view.leftDeg() / COMPASS_DEG); deg <= view.rightDeg();
                deg += COMPASS_DEG) {
            svg.label(x(deg), bottom() + 9, Wording.bearing((deg % 360 + 360) % 360), "class", "middle");
        }
    }

    private void foot() {
        double y = bottom() + 16;
        view.aimStar().ifPresent(star -> svg.label(LEFT, y, Wording.title(TrailText.aimStar(report, star))));
        svg.label(LEFT, y + 5, "Bold outline: the frame; ring: the star to aim by; lines: planets and stars "
                + "while the shutter is open; dotted: the Moon.", "font-size", FINE);
        svg.label(LEFT, y + 9.5,
                "Altitudes on the left, azimuths and points of the compass below, in degrees.",
                "font-size", FINE);
    }

    private double stepDeg() {
        return view.rightDeg() - view.leftDeg() > 120 ? 30 : 10;
    }

    private double firstAzimuth() {
        return stepDeg() * Math.ceil(view.leftDeg() / stepDeg());
    }

    /** A line without the jumps from one edge of the view to the other. */
    private List<List<Direction>> pieces(List<Direction> line) {
        List<List<Direction>> pieces = new ArrayList<>();
        List<Direction> piece = new ArrayList<>();
        for (Direction at : line) {
            if (!piece.isEmpty() && Math.abs(x(at) - x(piece.get(piece.size() - 1))) > PLOT / 2) {
                pieces.add(List.copyOf(piece));
                piece.clear();
            }
            piece.add(at);
        }
        pieces.add(piece);
        return pieces;
    }

    private void line(List<Direction> line, String style, double stroke) {
        keepOff(line);
        svg.empty("polyline", "points", line.stream().map(at -> Markup.number(x(at)) + ","
                + Markup.number(y(at))).collect(Collectors.joining(" ")), "class", style, "stroke-width",
                stroke);
    }

    private void keepOff(List<Direction> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            if (Math.abs(x(line.get(i)) - x(line.get(i + 1))) < PLOT / 2) {
                places.keepOff(x(line.get(i)), y(line.get(i)), x(line.get(i + 1)), y(line.get(i + 1)));
            }
        }
    }

    private String point(Direction at) {
        return Markup.number(x(at)) + " " + Markup.number(y(at));
    }

    private double x(double azimuthDeg) {
        return LEFT + (azimuthDeg - view.leftDeg()) * acrossMm;
    }

    private double x(Direction at) {
        double middleDeg = (view.leftDeg() + view.rightDeg()) / 2;
        return x(middleDeg + Math.IEEEremainder(at.azimuth().degrees() - middleDeg, 360));
    }

    private double y(double altitudeDeg) {
        return TOP + (view.topDeg() - altitudeDeg) * upMm;
    }

    private double y(Direction at) {
        return y(at.altitude().degrees());
    }

    private double bottom() {
        return y(BOTTOM_DEG);
    }
}
