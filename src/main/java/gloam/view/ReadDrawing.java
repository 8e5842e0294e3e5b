package gloam.view;

import gloam.answer.SheetReading;
import gloam.trail.Framing;
import gloam.trail.Trail;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.stream.Collectors;

/** A scanned sheet, straightened, with the trails predicted for where its camera pointed over it. */
final class ReadDrawing {

    private static final double WIDTH = 168;
    private static final double MARGIN = 8;
    private static final double HEAD = 18;
    private static final double FOOT = 16;
    private static final int NAMED = 12;

    private final JournalReadReport report;
    private final SheetReading reading;
    private final double mmAPaperMm;
    private final double height;
    private final Drawing svg;

    private ReadDrawing(JournalReadReport report) {
        this.report = report;
        this.reading = report.reading();
        double inside = WIDTH - 2 * MARGIN;
        this.height = inside * reading.picture().heightPx() / reading.picture().widthPx();
        this.mmAPaperMm = reading.found().camera().frame().widthMm() / inside;
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, HEAD + height + FOOT, 3, "Entry " + report.entry()
                + " as scanned", "The sheet with the trails predicted for it: whole lines are on the scan, "
                + "dotted ones are not; broken lines show where they would run had the camera pointed as "
                + "noted.");
    }

    /** The drawing of a reading. */
    static String of(JournalReadReport report, String made) {
        return new ReadDrawing(report).drawn(made);
    }

    private String drawn(String made) {
        svg.label(MARGIN, 8, "Entry " + report.entry() + ", " + report.scan(), "font-size", 4.6);
        svg.label(MARGIN, 13.5, report.found().text() + "; " + report.trailsSeen() + " of "
                + Wording.count(report.trailsPredicted(), "trail") + " seen");
        svg.empty("image", "x", MARGIN, "y", HEAD, "width", WIDTH - 2 * MARGIN, "height", height,
                "xlink:href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png()));
        svg.open("g", "class", "over");
        for (SheetReading.ReadTrail trail : reading.trails()) {
            noted(trail.track().trail());
            line(trail.track().trail(), trail.seen() ? "trail" : "trail dotted", 0.25);
        }
        for (int i = 0; i < Math.min(NAMED, reading.trails().size()); i++) {
            named(reading.trails().get(i));
        }
        svg.close("g");
        svg.label(MARGIN, HEAD + height + 5, "Whole lines: predicted trails that are on the scan; dotted: "
                + "those that are not; thin and broken: as noted.", "font-size", 2.6);
        return svg.finished(MARGIN, made);
    }

    private byte[] png() {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            PngRenderer.write(reading.picture(), png);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return png.toByteArray();
    }

    private void line(Trail trail, String style, double width) {
        trail.stretches().forEach(stretch -> svg.empty("polyline", "points", stretch.points().stream()
                .map(point -> x(point.xMm()) + "," + y(point.yMm())).collect(Collectors.joining(" ")),
                "class", style, "stroke-width", width));
    }

    /** A trail where it would run had the camera pointed as noted. */
    private void noted(Trail trail) {
        Framing found = reading.found();
        trail.stretches().forEach(stretch -> svg.empty("polyline", "points", stretch.points().stream()
                .map(point -> found.toSky(point.xMm(), point.yMm()))
                .flatMap(seen -> reading.noted().toFrame(seen).stream())
                .filter(point -> found.camera().frame().contains(point.xMm(), point.yMm()))
                .map(point -> x(point.xMm()) + "," + y(point.yMm())).collect(Collectors.joining(" ")),
                "class", "trail broken", "stroke-width", 0.1));
    }

    private void named(SheetReading.ReadTrail trail) {
        Trail.Stretch last = trail.track().trail().stretches().get(trail.track().trail().stretches().size()
                - 1);
        Trail.Point at = last.points().get(last.points().size() / 2);
        svg.label(MARGIN + inside(at.xMm()) + 0.8, HEAD + height / 2 - at.yMm() / mmAPaperMm - 0.8,
                Wording.title(trail.track().name()), "class", "name", "stroke-width", 0.4, "font-size", 2.4);
    }

    private double inside(double xMm) {
        return (WIDTH - 2 * MARGIN) / 2 + xMm / mmAPaperMm;
    }

    private String x(double xMm) {
        return Markup.number(MARGIN + inside(xMm));
    }

    private String y(double yMm) {
        return Markup.number(HEAD + height / 2 - yMm / mmAPaperMm);
    }
}
