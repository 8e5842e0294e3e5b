package gloam.view;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A framing drawn as a mounted sheet: the frame in mm, trails with the names of the most telling, the celestial pole,
 * directions along the edges and what it is underneath.
 *
 * <p>Bodies run as broad lines, stars as thin ones, trails that do not show as broken ones; each end of a named trail
 * has an arrowhead in the direction of motion.
 */
final class TrailDrawing {

    private static final double MARGIN = 0.13;
    private static final int MOST_NAMES = 10;
    private static final double NAMES_APART = 0.035;
    private static final double NAME_LENGTH = 6;
    private static final double STAR_LINE = 0.08;
    private static final double BODY_LINE = 0.2;
    private static final String PAPER_INK = "#1d1b18";

    private final TrailReport report;
    private final Optional<byte[]> picture;
    private final SvgText svg = new SvgText();
    private final double widthMm;
    private final double heightMm;
    private final double marginMm;
    private final double letterMm;

    private TrailDrawing(TrailReport report, Optional<byte[]> picture) {
        this.report = report;
        this.picture = picture;
        this.widthMm = report.frame().widthMm();
        this.heightMm = report.frame().heightMm();
        this.marginMm = MARGIN * Math.max(widthMm, heightMm);
        this.letterMm = marginMm / 5;
    }

    /** The drawing of a framing. */
    static String of(TrailReport report) {
        return new TrailDrawing(report, Optional.empty()).drawn();
    }

    /** The drawing over the computed picture. */
    static String over(ProofReport proof) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            new PngRenderer().write(proof, png);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return new TrailDrawing(proof.figures().trail(), Optional.of(png.toByteArray())).drawn();
    }

    private String drawn() {
        double fullWidth = widthMm + 2 * marginMm;
        double fullHeight = heightMm + 2 * marginMm;
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" "
                + "version=\"1.1\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\"0 0 " + SvgText.number(fullWidth)
                + " " + SvgText.number(fullHeight) + "\" font-family=\"serif\" font-size=\"" + SvgText.number(letterMm)
                + "\">");
        svg.words("title", "id=\"title\"", title());
        svg.words("desc", "id=\"desc\"", description());
        svg.empty("rect", "width=\"100%\" height=\"100%\" fill=\"#f7f5ef\"");
        svg.raw("<svg x=\"" + SvgText.number(marginMm) + "\" y=\"" + SvgText.number(marginMm) + "\" width=\""
                + SvgText.number(widthMm) + "\" height=\"" + SvgText.number(heightMm) + "\" viewBox=\""
                + SvgText.number(-widthMm / 2) + " " + SvgText.number(-heightMm / 2) + " " + SvgText.number(widthMm) + " "
                + SvgText.number(heightMm) + "\" overflow=\"hidden\">");
        sheet();
        svg.raw("</svg>");
        edges();
        caption();
        svg.raw("</svg>");
        return svg.toString().stripTrailing();
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
        return String.join(" ", new TextPrinter(OutputFormat.WIDTH).lines(TrailText.part(report)).stream().limit(9).map(String::strip).toList()).strip()
                + " Named: " + named().stream().map(TrailDrawing::name).collect(Collectors.joining(", ")) + ".";
    }

    private void sheet() {
        String place = "x=\"" + SvgText.number(-widthMm / 2) + "\" y=\"" + SvgText.number(-heightMm / 2)
                + "\" width=\"" + SvgText.number(widthMm) + "\" height=\"" + SvgText.number(heightMm) + "\"";
        picture.ifPresentOrElse(png -> svg.empty("image", place + " preserveAspectRatio=\"none\" "
                        + "xlink:href=\"data:image/png;base64," + Base64.getEncoder().encodeToString(png) + "\""),
                () -> svg.empty("rect", place + " fill=\"#fffefb\""));
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
            boolean clear = named.stream().allMatch(other ->
                    Math.abs(middle(other).yMm() - middle(track).yMm()) > apartMm
                            || Math.abs(middle(other).xMm() - middle(track).xMm()) > NAME_LENGTH * apartMm);
            if (clear && named.size() < MOST_NAMES) {
                named.add(track);
            }
        }
        return named;
    }

    private static String name(TrackRow track) {
        return (track.kind().equals("star") ? track.name() : Wording.title(track.name()))
                + (track.records().orElse(true) ? "" : " (does not show)");
    }

    private static TrackRow.PointRow middle(TrackRow track) {
        return track.points().get(track.points().size() / 2);
    }

    /** A trail as a line for each opening. */
    private void line(TrackRow track) {
        String style = "fill=\"none\" stroke=\"" + ink() + "\" stroke-linecap=\"round\" stroke-width=\""
                + SvgText.number(letterMm * (track.kind().equals("star") ? STAR_LINE : BODY_LINE)) + "\""
                + (track.records().orElse(true) ? "" : " stroke-dasharray=\"" + SvgText.number(letterMm / 3) + "\"");
        List<TrackRow.PointRow> piece = new ArrayList<>();
        for (TrackRow.PointRow point : track.points()) {
            piece.add(point);
            if (closes(point) || point == track.points().get(track.points().size() - 1)) {
                svg.empty("polyline", "points=\"" + piece.stream().map(at -> SvgText.number(at.xMm()) + ","
                        + SvgText.number(-at.yMm())).collect(Collectors.joining(" ")) + "\" " + style);
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
        svg.empty("path", "d=\"M0 0L" + SvgText.number(-2 * sizeMm) + " " + SvgText.number(sizeMm / 2) + "V"
                + SvgText.number(-sizeMm / 2) + "Z\" fill=\"" + ink() + "\"" + outline(sizeMm / 2) + " transform=\"translate("
                + SvgText.number(end.xMm()) + " " + SvgText.number(-end.yMm()) + ") rotate(" + SvgText.number(turnDeg)
                + ")\"");
    }

    private void pole() {
        if (report.pole().inFrame()) {
            double x = report.pole().xMm().orElseThrow();
            double y = -report.pole().yMm().orElseThrow();
            cross(x, y, ground(), letterMm / 4);
            cross(x, y, ink(), letterMm / 12);
            written(new TrackRow.PointRow(report.generatedAt(), x, -y - 1.6 * letterMm),
                    Wording.title(report.pole().name()) + " pole");
        }
    }

    private void cross(double x, double y, String colour, double strokeMm) {
        String arm = SvgText.number(letterMm / 2);
        svg.empty("path", "d=\"M" + SvgText.number(x) + " " + SvgText.number(y) + "m-" + arm + " 0h"
                + SvgText.number(letterMm) + "m-" + arm + " -" + arm + "v" + SvgText.number(letterMm)
                + "\" fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + SvgText.number(strokeMm) + "\"");
    }

    /** A name beside a place on the sheet, on the side where there is more room. */
    private void written(TrackRow.PointRow place, String words) {
        boolean left = place.xMm() > 0;
        svg.label(place.xMm() + (left ? -letterMm / 2 : letterMm / 2), -place.yMm() - letterMm / 3,
                "text-anchor=\"" + (left ? "end" : "start") + "\" font-style=\"italic\" fill=\"" + ink() + "\""
                        + outline(letterMm / 5), words);
    }

    /** A seam in the colour of the ground, so that marks can be told from dark and light pictures alike. */
    private String outline(double strokeMm) {
        return " stroke=\"" + ground() + "\" stroke-width=\"" + SvgText.number(strokeMm)
                + "\" stroke-linejoin=\"round\" paint-order=\"stroke\"";
    }

    private String ink() {
        return picture.isPresent() ? "#f4efe2" : "#1d1b18";
    }

    private String ground() {
        return picture.isPresent() ? "#1d1b18" : "#fffefb";
    }

    /** Azimuths under the lower edge, altitudes beside the left one. */
    private void edges() {
        for (TrailReport.EdgeRow edge : report.edges()) {
            double x = marginMm + widthMm / 2 + edge.xMm();
            double y = marginMm + heightMm / 2 - edge.yMm();
            boolean bottom = edge.edge().equals("bottom");
            svg.empty("path", "d=\"M" + SvgText.number(x) + " " + SvgText.number(y) + (bottom ? "v" : "h-")
                    + SvgText.number(letterMm / 2) + "\" stroke=\"" + PAPER_INK + "\" stroke-width=\""
                    + SvgText.number(letterMm / 12) + "\"");
            if (bottom) {
                svg.label(x, y + 1.6 * letterMm, "text-anchor=\"middle\" fill=\"" + PAPER_INK + "\"",
                        Wording.number(edge.azimuthDeg(), 0) + "° " + Wording.bearing(edge.azimuthDeg()));
            } else {
                svg.label(x - 0.8 * letterMm, y + letterMm / 3, "text-anchor=\"end\" fill=\"" + PAPER_INK + "\"",
                        Wording.number(edge.altitudeDeg(), 0) + "°");
            }
        }
    }

    private void caption() {
        double x = marginMm;
        svg.label(x, marginMm * 0.62, "fill=\"" + PAPER_INK + "\" font-size=\"" + SvgText.number(1.2 * letterMm) + "\"",
                aim());
        double y = marginMm + heightMm;
        svg.label(x, y + 3.2 * letterMm, "fill=\"" + PAPER_INK + "\"",
                report.sheet().map(sheet -> sheet.film() + ", " + Wording.fNumber(sheet.fNumber()) + ", ").orElse("")
                        + Wording.lasting(report.frame().lastsS()) + ", " + Wording.plain(report.frame().focalLengthMm())
                        + " mm on " + Wording.plain(widthMm) + " × " + Wording.plain(heightMm) + " mm");
        svg.label(x, y + 4.4 * letterMm, "fill=\"" + PAPER_INK + "\" font-style=\"italic\"",
                picture.isPresent() ? ProofReport.STATEMENT : "Computed trails; directions under and beside the frame");
    }
}
