package gloam.view;

import gloam.answer.Trails;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A framing drawn as a mounted sheet: the frame in mm, trails with the names of the most telling, the
 * celestial pole, directions along the edges and what it is underneath.
 *
 * <p>A trail is the broader the further it rises above the sky; one that does not show is thin, broken and
 * without a name; each end of a named trail has an arrowhead in the direction of motion. Printed at its size
 * the drawing is the ground glass 1 : 1.
 */
final class TrailDrawing {

    private static final double MARGIN = 0.13;
    private static final int MOST_NAMES = 10;
    private static final double NAMES_APART = 0.035;
    private static final double NAME_LENGTH = 6;
    private static final double FAINT_LINE = 0.04;
    private static final double LINE_A_STOP = 0.018;
    private static final double MOST_STOPS = 9;
    /** Degrees by which a direction may miss a compass point and still be called by it. */
    private static final double TRUE_DEG = 0.5;
    private static final double COMPASS_DEG = 22.5;

    private final TrailReport report;
    private final Optional<byte[]> picture;
    private final boolean printed;
    private final Drawing svg;
    private final double widthMm;
    private final double heightMm;
    private final double marginMm;
    private final double letterMm;

    private TrailDrawing(TrailReport report, Optional<byte[]> picture, boolean printed) {
        this.report = report;
        this.picture = picture;
        this.printed = printed;
        this.widthMm = report.frame().widthMm();
        this.heightMm = report.frame().heightMm();
        this.marginMm = MARGIN * Math.max(widthMm, heightMm);
        this.letterMm = marginMm / 5;
        this.svg = new Drawing(Drawing.Unit.MM, widthMm + 2 * marginMm, heightMm + 2 * marginMm, letterMm,
                title(), description());
    }

    /** The drawing of a framing. */
    static String of(TrailReport report) {
        return new TrailDrawing(report, Optional.empty(), false).drawn();
    }

    /** The drawing over the computed picture. */
    static String over(ProofReport proof) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            new PngRenderer().write(proof, png);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return new TrailDrawing(proof.figures().trail(), Optional.of(png.toByteArray()),
                proof.figures().printed()).drawn();
    }

    /** Where to, when and how, in a line. */
    static String settings(ProofReport proof) {
        TrailDrawing drawing = new TrailDrawing(proof.figures().trail(), Optional.empty(), false);
        return drawing.aim() + " (" + proof.figures().trail().site().zone() + "), "
                + settings(proof.figures().trail())
                + (proof.picture().printed() ? ", printed from the negative" : "");
    }

    private static String settings(TrailReport report) {
        TrailReport.FrameRow frame = report.frame();
        return report.sheet().map(sheet -> FilmWords.name(sheet.film(), sheet.fittedToSheets()) + ", "
                + Wording.fNumber(sheet.fNumber()) + ", ").orElse("") + Wording.lasting(frame.lastsS()) + ", "
                + Wording.plain(frame.focalLengthMm()) + " mm on "
                + Wording.size(frame.widthMm(), frame.heightMm());
    }

    private String drawn() {
        svg.open("svg", "x", marginMm, "y", marginMm, "width", widthMm, "height", heightMm, "viewBox",
                Markup.number(-widthMm / 2) + " " + Markup.number(-heightMm / 2) + " "
                + Markup.number(widthMm) + " "
                + Markup.number(heightMm), "overflow", "hidden", "class", picture.isPresent() ? "over"
                : "alone");
        sheet();
        svg.close("svg");
        edges();
        caption();
        return svg.finished();
    }

    private String title() {
        return (picture.isPresent() ? ProofReport.STATEMENT + ": " : "Trails: ") + aim();
    }

    private String aim() {
        TrailReport.FrameRow frame = report.frame();
        return report.site().name() + ", " + Wording.bearing(frame.azimuthDeg()) + ", altitude "
                + Wording.number(frame.altitudeDeg(), 0) + "°, " + Wording.secondDate(frame.openAt()) + " "
                + Wording.minute(frame.openAt()) + "–"
                + (frame.severalNights() ? Wording.secondDate(frame.closeAt()) + " " : "")
                + Wording.minute(frame.closeAt());
    }

    private String description() {
        return TrailText.circumstances(report)
                + " Named: " + named().stream().map(TrailDrawing::name).collect(Collectors.joining(", "))
                + ".";
    }

    private void sheet() {
        picture.ifPresentOrElse(png -> svg.empty("image", "x", -widthMm / 2, "y", -heightMm / 2, "width",
                widthMm,
                        "height", heightMm, "preserveAspectRatio", "none",
                        "xlink:href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png)),
                () -> svg.empty("rect", "x", -widthMm / 2, "y", -heightMm / 2, "width", widthMm, "height",
                heightMm,
                        "class", "sheet"));
        List<TrackRow> named = named();
        report.tracks().stream().filter(track -> picture.isEmpty() || !track.records().orElse(true))
                .forEach(this::line);
        named.forEach(this::arrow);
        pole();
        named.forEach(track -> written(middle(track), name(track)));
    }

    /** Bodies, then the brightest stars, as far as their names stand clear of each other. */
    private List<TrackRow> named() {
        List<TrackRow> named = new ArrayList<>();
        double apartMm = NAMES_APART * Math.max(widthMm, heightMm);
        for (TrackRow track : report.tracks()) {
            boolean clear = track.records().orElse(true) && named.stream().allMatch(other ->
                    Math.abs(middle(other).yMm() - middle(track).yMm()) > apartMm
                            || Math.abs(middle(other).xMm() - middle(track).xMm()) > NAME_LENGTH * apartMm);
            if (clear && named.size() < MOST_NAMES) {
                named.add(track);
            }
        }
        return named;
    }

    private static String name(TrackRow track) {
        return track.kind().equals("star") ? track.name() : Wording.title(track.name());
    }

    private static TrackRow.PointRow middle(TrackRow track) {
        return track.points().get(track.points().size() / 2);
    }

    /** A trail as a line for each opening. */
    private void line(TrackRow track) {
        double strokeMm = letterMm * (FAINT_LINE + (track.records().orElse(true)
                ? LINE_A_STOP * Math.max(1, Math.min(MOST_STOPS, track.stopsOverSky().orElse(1))) : 0));
        String dashes = track.records().orElse(true) ? "none" : Markup.number(letterMm / 3);
        List<TrackRow.PointRow> piece = new ArrayList<>();
        for (TrackRow.PointRow point : track.points()) {
            piece.add(point);
            if (closes(point) || point == track.points().get(track.points().size() - 1)) {
                svg.empty("polyline", "points", piece.stream().map(at -> Markup.number(at.xMm()) + ","
                        + Markup.number(-at.yMm())).collect(Collectors.joining(" ")), "class", "trail",
                        "stroke-width", strokeMm, "stroke-dasharray", dashes);
                piece.clear();
            }
        }
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
            written(new TrackRow.PointRow(report.generatedAt(), x, -y - 1.6 * letterMm),
                    Wording.title(report.pole().name()) + " pole");
        }
    }

    private void cross(double x, double y, String style, double strokeMm) {
        String arm = Markup.number(letterMm / 2);
        svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y) + "m-" + arm + " 0h"
                + Markup.number(letterMm) + "m-" + arm + " -" + arm + "v" + Markup.number(letterMm),
                "class", style, "stroke-width", strokeMm);
    }

    /** A name beside a place on the sheet, on the side where there is more room. */
    private void written(TrackRow.PointRow place, String words) {
        boolean left = place.xMm() > 0;
        svg.label(place.xMm() + (left ? -letterMm / 2 : letterMm / 2), -place.yMm() - letterMm / 3, words,
                "class", left ? "name slanted end" : "name slanted", "stroke-width", letterMm / 5);
    }

    /** Azimuths under the lower edge, altitudes beside the left one. */
    private void edges() {
        for (Trails.EdgePoint edge : report.edges()) {
            double azimuthDeg = edge.seen().azimuth().degrees();
            double x = marginMm + widthMm / 2 + edge.point().xMm();
            double y = marginMm + heightMm / 2 - edge.point().yMm();
            boolean bottom = edge.edge() == Trails.Edge.BOTTOM;
            svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y) + (bottom ? "v" : "h-")
                    + Markup.number(letterMm / 2), "class", "line", "stroke-width", letterMm / 12);
            if (bottom) {
                boolean named = Math.abs(Math.IEEEremainder(azimuthDeg, COMPASS_DEG)) < TRUE_DEG;
                svg.label(x, y + 1.6 * letterMm, Wording.number(azimuthDeg, 0) + "°"
                        + (named ? " " + Wording.bearing(azimuthDeg) : ""), "class", "middle");
            } else {
                svg.label(x - 0.8 * letterMm, y + letterMm / 3,
                        Wording.number(edge.seen().altitude().degrees(), 0) + "°", "class", "end");
            }
        }
    }

    private void caption() {
        double x = marginMm;
        svg.label(x, marginMm * 0.62, aim(), "font-size", 1.2 * letterMm);
        List<String> lines = List.of(settings(report) + "; times in " + report.site().zone(),
                (picture.isPresent() ? ProofReport.STATEMENT + (printed ? ", printed from the negative" : "")
                : "Computed trails, the broader the better they show; broken: does not show")
                + "; in mm 1 : 1", Wording.made(report.generatedAt()));
        for (int line = 0; line < lines.size(); line++) {
            svg.label(x, marginMm + heightMm + (2.9 + 0.9 * line) * letterMm, lines.get(line), "font-size",
                    0.85 * letterMm, "class", line == 0 ? "start" : "slanted");
        }
    }
}
