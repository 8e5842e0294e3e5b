package gloam.view;

import gloam.answer.Trails;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

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
    private static final double FOOT = 1.65;
    private static final List<Integer> LEGEND_STOPS = List.of(1, 4, 9);
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
    private final SheetTrails trails;

    private TrailDrawing(TrailReport report, Optional<byte[]> picture, boolean printed) {
        this.report = report;
        this.picture = picture;
        this.printed = printed;
        this.widthMm = report.frame().widthMm();
        this.heightMm = report.frame().heightMm();
        this.marginMm = MARGIN * Math.max(widthMm, heightMm);
        this.letterMm = marginMm / 5;
        this.trails = new SheetTrails(report, picture.isPresent(), letterMm);
        this.svg = new Drawing(Drawing.Unit.MM, widthMm + 2 * marginMm, heightMm + (1 + FOOT) * marginMm,
                letterMm, title(), description());
    }

    /** The drawing of a framing. */
    static String of(TrailReport report, String made) {
        return new TrailDrawing(report, Optional.empty(), false).drawn(made);
    }

    /** The drawing over the computed picture. */
    static String over(ProofReport proof, String made) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            PngRenderer.write(proof.picture(), png);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return new TrailDrawing(proof.figures().trail(), Optional.of(png.toByteArray()),
                proof.figures().printed()).drawn(made);
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
                + Wording.size(frame.widthMm(), frame.heightMm())
                + (frame.rollDeg() == 0 ? "" : ", roll " + Wording.plain(frame.rollDeg()) + "\u00b0");
    }

    private String drawn(String made) {
        svg.open("g", "class", picture.isPresent() ? "over" : "alone");
        sheet();
        svg.openPane("sheet-pane", marginMm, marginMm, widthMm, heightMm, -widthMm / 2, -heightMm / 2,
                "trails");
        trails.draw(svg);
        svg.closePane();
        svg.close("g");
        edges();
        caption();
        legend();
        return svg.finished(marginMm, made);
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
                + " Named: " + String.join(", ", trails.named()) + ".";
    }

    /** The sheet, outside the pane, which would part its picture from the ground of the red view. */
    private void sheet() {
        svg.empty("rect", "x", marginMm, "y", marginMm, "width", widthMm, "height", heightMm, "class",
                picture.isPresent() ? "under" : "sheet");
        picture.ifPresent(png -> svg.empty("image", "x", marginMm, "y", marginMm, "width", widthMm, "height",
                heightMm, "preserveAspectRatio", "none", "xlink:href",
                "data:image/png;base64," + Base64.getEncoder().encodeToString(png)));
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
                svg.label(x, y + 1.6 * letterMm, Wording.plain(azimuthDeg) + "°"
                        + (named ? " " + Wording.bearing(azimuthDeg) : ""), "class", "middle");
            } else {
                svg.label(x - 0.8 * letterMm, y + letterMm / 3,
                        Wording.plain(edge.seen().altitude().degrees()) + "°", "class", "end");
            }
        }
    }

    private void caption() {
        double x = marginMm;
        svg.label(x, marginMm * 0.62, aim(), "font-size", 1.2 * letterMm);
        String first = settings(report) + "; times in " + report.site().zone();
        String last = "in mm 1 : 1; azimuths below, altitudes on the left";
        List<String> lines = picture.isEmpty() ? List.of(first, "Computed trails; " + last) : List.of(first,
                ProofReport.STATEMENT + (printed ? ", printed from the negative" : ""), last);
        for (int line = 0; line < lines.size(); line++) {
            svg.label(x, marginMm + heightMm + (2.9 + 0.95 * line) * letterMm, lines.get(line), "font-size",
                    0.85 * letterMm, "class", line == 0 ? "start" : "slanted");
        }
    }

    /** What the strokes mean. */
    private void legend() {
        double y = marginMm + heightMm + 5.9 * letterMm;
        double x = marginMm;
        if (picture.isEmpty() && report.sheet().isPresent()) {
            for (int stops : LEGEND_STOPS) {
                stroke(x, y, trails.strokeMm(stops), "none");
                svg.label(x + 2.4 * letterMm, y,
                        (stops == SheetTrails.MOST_STOPS ? stops + " stops over the sky"
                        : String.valueOf(stops)), "font-size", 0.85 * letterMm);
                x += 3.6 * letterMm;
            }
            x += 8.5 * letterMm;
        }
        if (report.tracks().stream().anyMatch(track -> !track.records().orElse(true))) {
            stroke(x, y, trails.faintMm(), Markup.number(letterMm / 3));
            svg.label(x + 2.4 * letterMm, y, "does not show", "font-size", 0.85 * letterMm);
        }
    }

    private void stroke(double x, double y, double strokeMm, String dashes) {
        svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y - 0.3 * letterMm) + "h"
                + Markup.number(2 * letterMm), "class", "trail", "stroke-width", strokeMm, "stroke-dasharray",
                dashes);
    }
}
