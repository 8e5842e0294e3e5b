package gloam.view;

import gloam.answer.TripodView;
import gloam.ephemeris.Direction;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What is seen from behind the camera: azimuths across and altitudes up, the land, the frame as it is turned,
 * the ways of planets and bright stars while the shutter is open, the Moon's way, the pole, and the star to
 * aim by.
 */
final class TripodDrawing {

    private static final double LEFT = 14;
    private static final double TOP = 20;
    private static final double FOOT = 38;
    private static final double LETTER = 3.4;
    private static final double FINE = 2.9;
    private static final double THIN = 0.2;
    private static final double STROKE_A_STOP = 0.1;
    private static final List<Integer> LEGEND_STOPS = List.of(1, 4, SheetTrails.MOST_STOPS);
    private static final int MOST_NAMES = 12;
    private static final double COMPASS_DEG = 22.5;

    private final TrailReport report;
    private final TripodView view;
    private final ZoneId zone;
    private final TripodPlane plane;
    private final Drawing svg;
    private final LabelPlaces places;

    private TripodDrawing(TrailReport report) {
        this.report = report;
        this.view = report.view();
        this.zone = report.site().zone();
        this.plane = TripodPlane.of(view, report.frame().altitudeDeg(), LEFT, TOP);
        this.svg = new Drawing(Drawing.Unit.MM, TripodPlane.WIDTH + 2 * LEFT, plane.bottom() + FOOT, LETTER,
                "From behind the camera: " + heading(), "The land, the sky's ways while the shutter is open, "
                + "and the frame. " + view.aimStar().map(star -> TrailText.aimStar(report, star)).orElse(""));
        this.places = new LabelPlaces(LEFT, TOP, plane.right(), plane.bottom(), FINE);
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
        double width = plane.right() - LEFT;
        svg.openPane("tripod-pane", LEFT, TOP, width, plane.bottom() - TOP, LEFT, TOP, "tripod");
        svg.empty("rect", "x", LEFT, "y", TOP, "width", width, "height", plane.bottom() - TOP, "class",
                "sheet");
        grid();
        sky();
        svg.closePane();
        axes();
        foot();
        return svg.finished(LEFT, made);
    }

    private void grid() {
        for (double deg = 0; deg <= view.topDeg(); deg += stepDeg()) {
            svg.empty("path", "d", "M" + Markup.number(LEFT) + " " + Markup.number(plane.y(deg)) + "H"
                    + Markup.number(plane.right()), "class", "grid");
        }
        for (double deg = firstAzimuth(); deg <= view.rightDeg(); deg += stepDeg()) {
            svg.empty("path", "d", "M" + Markup.number(plane.x(deg)) + " " + Markup.number(TOP) + "V"
                    + Markup.number(plane.bottom()), "class", "grid");
        }
    }

    /** Everything above the skyline, the land over it, then the names where they cover nothing. */
    private void sky() {
        for (TripodView.Way way : view.ways()) {
            plane.pieces(way.points()).forEach(piece -> line(piece, "trail", THIN));
        }
        trails();
        plane.pieces(view.moon().stream().map(TripodView.MoonAt::seen).toList())
                .forEach(piece -> line(piece, "line dotted", 0.5));
        List<Direction> land = view.skyline();
        double stepMm = (plane.right() - LEFT) / (land.size() - 1);
        svg.empty("polygon", "points", IntStream.range(0, land.size()).mapToObj(i -> Markup.number(LEFT
                + i * stepMm) + "," + Markup.number(plane.y(land.get(i)))).collect(Collectors.joining(" "))
                + " " + Markup.number(plane.right()) + "," + Markup.number(plane.bottom() + 1) + " "
                + Markup.number(LEFT) + "," + Markup.number(plane.bottom() + 1), "class", "dark edge",
                "stroke-width", 0.3);
        keepOff(land);
        plane.pieces(view.frame()).forEach(piece -> line(piece, "stay", 0.8));
        view.moon().stream().filter(moon -> moon.at().atZone(zone).getMinute() == 0).forEach(this::moon);
        view.pole().ifPresent(pole -> {
            cross(pole);
            name(Wording.title(report.pole().name()) + " pole", List.of(pole));
        });
        cross(Direction.ofDegrees(report.frame().azimuthDeg(), report.frame().altitudeDeg()));
        view.aimStar().ifPresent(this::aimStar);
        view.ways().stream().limit(MOST_NAMES).filter(way -> view.aimStar().filter(star ->
                star.name().equals(way.name())).isEmpty()).forEach(way -> name(Wording.skyName(way.star(),
                way.name()), way.points()));
    }

    /** Inside the frame, ways that the film records, each as strong as it does. */
    private void trails() {
        List<List<Direction>> outline = plane.pieces(view.frame());
        if (outline.size() == 1) {
            svg.open("clipPath", "id", "in-frame");
            svg.empty("polygon", "points", plane.points(outline.get(0)));
            svg.close("clipPath");
            svg.open("g", "clip-path", "url(#in-frame)");
        } else {
            svg.open("g");
        }
        view.ways().forEach(way -> report.tracks().stream().filter(track -> track.records().orElse(false)
                && track.name().equals(way.name())).findFirst().ifPresent(track -> plane.pieces(way.points())
                .forEach(piece -> line(piece, "trail", stroke(track.stopsOverSky().orElse(1))))));
        svg.close("g");
    }

    /** How broad a trail is that rises so far above the sky. */
    private static double stroke(double stopsOverSky) {
        return THIN + STROKE_A_STOP * Math.max(1, Math.min(SheetTrails.MOST_STOPS, stopsOverSky));
    }

    private void moon(TripodView.MoonAt moon) {
        svg.empty("circle", "cx", plane.x(moon.seen()), "cy", plane.y(moon.seen()), "r", 1, "class",
                "lit edge", "stroke-width", 0.2);
        OffsetDateTime at = moon.at().atZone(zone).toOffsetDateTime();
        name("Moon " + Wording.minute(at), List.of(moon.seen()));
    }

    private void aimStar(TripodView.AimStar star) {
        Direction centre = Direction.ofDegrees(report.frame().azimuthDeg(), report.frame().altitudeDeg());
        svg.empty("circle", "cx", plane.x(star.seen()), "cy", plane.y(star.seen()), "r", 1.8, "class", "stay",
                "stroke-width", 0.5);
        svg.empty("path", "d", "M" + plane.point(star.seen()) + "H" + Markup.number(plane.x(centre)) + "V"
                + Markup.number(plane.y(centre)), "class", "stay dotted", "stroke-width", 0.4);
        name(star.name() + " " + Wording.minute(report.frame().openAt()), List.of(star.seen()));
    }

    private void name(String words, List<Direction> beside) {
        places.take(words, beside.stream().map(at -> new double[] {plane.x(at), plane.y(at)}).toList())
                .ifPresent(place -> svg.label(place.x(), place.y(), words, "font-size", FINE, "class",
                        place.end() ? "name slanted end" : "name slanted", "stroke-width", 0.5));
    }

    private void cross(Direction at) {
        svg.empty("path", "d", "M" + plane.point(at) + "m-1.5 0h3m-1.5 -1.5v3", "class", "line",
                "stroke-width", 0.3);
    }

    private void axes() {
        for (double deg = 0; deg <= view.topDeg(); deg += stepDeg()) {
            svg.label(LEFT - 1.5, plane.y(deg) + 1.2, Wording.plain(deg) + "°", "class", "end");
        }
        for (double deg = firstAzimuth(); deg <= view.rightDeg(); deg += stepDeg()) {
            double azimuthDeg = (deg % 360 + 360) % 360;
            svg.label(plane.x(deg), plane.bottom() + 4.5, Wording.plain(azimuthDeg) + "°", "class", "middle");
        }
        for (double deg = COMPASS_DEG * Math.ceil(view.leftDeg() / COMPASS_DEG); deg <= view.rightDeg();
                deg += COMPASS_DEG) {
            svg.label(plane.x(deg), plane.bottom() + 9, Wording.bearing((deg % 360 + 360) % 360), "class",
                    "middle");
        }
    }

    private void foot() {
        double y = plane.bottom() + 16;
        view.aimStar().ifPresent(star -> svg.label(LEFT, y, Wording.title(TrailText.aimStar(report, star))));
        svg.label(LEFT, y + 5, "Bold outline: the frame; ring: the star to aim by; dotted: the Moon; thin: "
                + "planets and stars while the shutter is open.", "font-size", FINE);
        svg.label(LEFT, y + 9.5,
                "Altitudes on the left, azimuths and points of the compass below, in degrees.",
                "font-size", FINE);
        legend(y + 14);
    }

    /** How strong trails record; without a sheet none is known to. */
    private void legend(double y) {
        if (report.sheet().isEmpty()) {
            return;
        }
        double x = LEFT;
        for (int stops : LEGEND_STOPS) {
            svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y - 0.9) + "h7", "class",
                    "trail", "stroke-width", stroke(stops));
            svg.label(x + 8.5, y, String.valueOf(stops) + (stops == SheetTrails.MOST_STOPS
                    ? " stops over the sky: what the film records in the frame" : ""), "font-size", FINE);
            x += 14;
        }
    }

    private double stepDeg() {
        return view.rightDeg() - view.leftDeg() > 120 ? 30 : 10;
    }

    private double firstAzimuth() {
        return stepDeg() * Math.ceil(view.leftDeg() / stepDeg());
    }

    private void line(List<Direction> line, String style, double stroke) {
        keepOff(line);
        svg.empty("polyline", "points", plane.points(line), "class", style, "stroke-width", stroke);
    }

    private void keepOff(List<Direction> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            if (!plane.jumps(line.get(i), line.get(i + 1))) {
                places.keepOff(plane.x(line.get(i)), plane.y(line.get(i)), plane.x(line.get(i + 1)),
                        plane.y(line.get(i + 1)));
            }
        }
    }
}
