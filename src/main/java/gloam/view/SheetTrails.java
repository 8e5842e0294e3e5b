package gloam.view;

import gloam.answer.Trails;
import gloam.trail.Framing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What lies on a drawn sheet: the land, the trails with the names of the most telling, each with a thin line
 * to its trail, and the pole. Names cover neither trails nor each other; one without such a place near its
 * trail is left out.
 */
final class SheetTrails {

    /** Stops over the sky from which on a trail is drawn no stronger. */
    static final int MOST_STOPS = 9;

    private static final int MOST_NAMES = 10;
    private static final int ANCHORS = 10;
    /** How long the line to a name may be, by the height of its letters; for the pole and the brightest. */
    private static final double FAR = 5;
    private static final double FARTHEST = 9;
    private static final int BRIGHTEST = 5;
    private static final double FAINT_LINE = 0.04;
    private static final double LINE_A_STOP = 0.018;
    /** Further down than any frame is high, in its longer sides. */
    private static final double FAR_DOWN = 3;

    private final TrailReport report;
    private final boolean over;
    private final double widthMm;
    private final double heightMm;
    private final double letterMm;
    private final Map<TrackRow, LabelPlaces.Led> names = new LinkedHashMap<>();
    private final Optional<LabelPlaces.Led> poleName;
    private Drawing svg;

    /** The trails of a sheet, its centre at 0, 0; over a picture of it, those alone that it does not show. */
    SheetTrails(TrailReport report, boolean over, double letterMm) {
        this.report = report;
        this.over = over;
        this.widthMm = report.frame().widthMm();
        this.heightMm = report.frame().heightMm();
        this.letterMm = letterMm;
        LabelPlaces places = new LabelPlaces(-widthMm / 2, -heightMm / 2, widthMm / 2, heightMm / 2,
                letterMm);
        report.tracks().forEach(track -> pieces(track).forEach(piece -> keepOff(places, piece)));
        keepOff(places, skyline());
        this.poleName = report.pole().inFrame() ? poleName(places) : Optional.empty();
        List<TrackRow> shown =
                report.tracks().stream().filter(track -> track.records().orElse(true)).toList();
        for (int i = 0; i < shown.size() && names.size() < MOST_NAMES; i++) {
            TrackRow track = shown.get(i);
            double farthest = i < BRIGHTEST ? FARTHEST : FAR;
            List<double[]> points = anchors(track);
            (over ? places.takeLed(track.title(), points.subList(points.size() - 1, points.size()), FAR)
                    : Optional.<LabelPlaces.Led>empty())
                    .or(() -> places.takeLed(track.title(), points, farthest))
                    .ifPresent(led -> names.put(track, led));
        }
    }

    /** The names that are drawn. */
    List<String> named() {
        return names.keySet().stream().map(TrackRow::title).toList();
    }

    /** Draws it. */
    void draw(Drawing on) {
        this.svg = on;
        land();
        report.tracks().stream().filter(track -> !over || !track.records().orElse(true))
                .forEach(this::line);
        names.keySet().forEach(this::arrow);
        pole();
        names.forEach((track, led) -> written(led, track.title()));
    }

    /** The land under the skyline; over the picture, which shows it, the skyline alone. */
    private void land() {
        if (report.skyline().isEmpty()) {
            return;
        }
        List<Framing.Point> edge = new ArrayList<>(skyline());
        if (!over) {
            double down = FAR_DOWN * Math.max(widthMm, heightMm);
            double roll = Math.toRadians(report.frame().rollDeg());
            for (int i = edge.size() - 1; i >= 0; i--) {
                edge.add(new Framing.Point(edge.get(i).xMm() + down * Math.sin(roll),
                        edge.get(i).yMm() - down * Math.cos(roll)));
            }
        }
        svg.empty(!over ? "polygon" : "polyline", "points", edge.stream().map(at ->
                Markup.number(at.xMm()) + "," + Markup.number(-at.yMm())).collect(Collectors.joining(" ")),
                "class", !over ? "dark edge" : "line", "stroke-width", letterMm / 12);
    }

    private List<Framing.Point> skyline() {
        return report.skyline().stream().map(Trails.SkylinePoint::point).toList();
    }

    private static void keepOff(LabelPlaces places, List<Framing.Point> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            places.keepOff(line.get(i).xMm(), -line.get(i).yMm(), line.get(i + 1).xMm(),
                    -line.get(i + 1).yMm());
        }
    }

    private Optional<LabelPlaces.Led> poleName(LabelPlaces places) {
        double x = report.pole().xMm().orElseThrow();
        double y = -report.pole().yMm().orElseThrow();
        places.keepOff(x - letterMm / 2, y, x + letterMm / 2, y);
        places.keepOff(x, y - letterMm / 2, x, y + letterMm / 2);
        return places.takeLed(poleWords(), List.of(new double[] {x, y}), FARTHEST);
    }

    private String poleWords() {
        return Wording.title(report.pole().name()) + " pole";
    }

    /** Points of a trail that its name may be led to; on a picture rather to its arrowhead, the last. */
    private static List<double[]> anchors(TrackRow track) {
        int last = track.points().size() - 1;
        return IntStream.rangeClosed(0, ANCHORS).map(i -> i * last / ANCHORS).distinct()
                .mapToObj(track.points()::get).map(at -> new double[] {at.xMm(), -at.yMm()}).toList();
    }

    /** A trail as a line for each opening. */
    private void line(TrackRow track) {
        boolean shows = track.records().orElse(true);
        double strokeMm = shows ? strokeMm(track.stopsOverSky().orElse(1)) : faintMm();
        String dashes = shows ? "none" : Markup.number(letterMm / 3);
        pieces(track).forEach(piece -> svg.empty("polyline", "points", piece.stream().map(at ->
                Markup.number(at.xMm()) + "," + Markup.number(-at.yMm())).collect(Collectors.joining(" ")),
                "class", "trail", "stroke-width", strokeMm, "stroke-dasharray", dashes));
    }

    /** How broad a trail is drawn. */
    double strokeMm(double stopsOverSky) {
        return letterMm * (FAINT_LINE + LINE_A_STOP * Math.max(1, Math.min(MOST_STOPS, stopsOverSky)));
    }

    /** How broad one that does not show. */
    double faintMm() {
        return letterMm * FAINT_LINE;
    }

    private List<List<Framing.Point>> pieces(TrackRow track) {
        List<List<Framing.Point>> pieces = new ArrayList<>();
        List<Framing.Point> piece = new ArrayList<>();
        for (TrackRow.PointRow point : track.points()) {
            piece.add(new Framing.Point(point.xMm(), point.yMm()));
            if (closes(point) || point == track.points().get(track.points().size() - 1)) {
                pieces.add(List.copyOf(piece));
                piece.clear();
            }
        }
        return pieces;
    }

    private boolean closes(TrackRow.PointRow point) {
        return report.frame().openings().stream().anyMatch(opening -> opening.closeAt().isEqual(point.at()));
    }

    /** An arrowhead at a trail's end that points along it. */
    private void arrow(TrackRow track) {
        TrackRow.PointRow end = track.points().get(track.points().size() - 1);
        TrackRow.PointRow before = track.points().get(Math.max(0, track.points().size() - 2));
        double turnDeg = -Math.toDegrees(Math.atan2(end.yMm() - before.yMm(), end.xMm() - before.xMm()));
        double sizeMm = Math.min(letterMm / 3, track.lengthMm() / 4);
        svg.empty("path", "d", "M0 0L" + Markup.number(-2 * sizeMm) + " " + Markup.number(sizeMm / 2) + "V"
                + Markup.number(-sizeMm / 2) + "Z", "class", "name", "stroke-width", sizeMm / 2, "transform",
                "translate("
                + Markup.number(end.xMm()) + " " + Markup.number(-end.yMm()) + ") rotate("
                + Markup.number(turnDeg) + ")");
    }

    private void pole() {
        if (report.pole().inFrame()) {
            double x = report.pole().xMm().orElseThrow();
            double y = -report.pole().yMm().orElseThrow();
            cross(x, y, "seam", letterMm / 4);
            cross(x, y, "line", letterMm / 12);
            poleName.ifPresent(place -> written(place, poleWords()));
        }
    }

    private void cross(double x, double y, String style, double strokeMm) {
        String arm = Markup.number(letterMm / 2);
        svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y) + "m-" + arm + " 0h"
                + Markup.number(letterMm) + "m-" + arm + " -" + arm + "v" + Markup.number(letterMm),
                "class", style, "stroke-width", strokeMm);
    }

    private void written(LabelPlaces.Led led, String words) {
        svg.empty("path", "d", "M" + Markup.number(led.fromX()) + " " + Markup.number(led.fromY()) + "L"
                + Markup.number(led.toX()) + " " + Markup.number(led.toY()), "class", "lead", "stroke-width",
                letterMm / 16);
        svg.label(led.place().x(), led.place().y(), words, "class", led.place().end() ? "name slanted end"
                : "name slanted", "stroke-width", letterMm / 5);
    }
}
