package gloam.view;

import gloam.answer.SheetReading;
import gloam.answer.Trails;
import gloam.trail.Framing;
import gloam.trail.Trail;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/** A scanned sheet, straightened, with the trails predicted for where its camera pointed over it. */
final class ReadDrawing {

    private static final double WIDTH = 168;
    private static final double MARGIN = 8;
    private static final double HEAD = 23;
    private static final double FOOT = 16;
    private static final int NAMED = 12;
    private static final double LETTER = 2.4;

    private final JournalReadReport report;
    private final SheetReading reading;
    private final SheetReading.Drawn drawn;
    private final double mmAPaperMm;
    private final double height;
    private final Drawing svg;

    private ReadDrawing(JournalReadReport report) {
        this.report = report;
        this.reading = report.reading();
        this.drawn = reading.drawn().orElseThrow();
        double inside = WIDTH - 2 * MARGIN;
        this.height = inside * drawn.picture().heightPx() / drawn.picture().widthPx();
        this.mmAPaperMm = drawn.found().camera().frame().widthMm() / inside;
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
        svg.label(MARGIN, 8, "Entry " + report.entry() + " as scanned", "font-size", 4.6);
        JournalReadReport.ReadTrailsRow row = report.drawn().orElseThrow();
        List<JournalReadReport.ReadOpeningRow> openings = row.openings();
        svg.label(MARGIN, 13.5, report.site().name() + ", opened "
                + NightTimes.date(openings.get(0).openAt().toLocalDate()) + " "
                + Wording.minute(openings.get(0).openAt()) + ", closed "
                + Wording.minute(openings.get(openings.size() - 1).closeAt()) + " (" + report.site().zone()
                + ")");
        svg.label(MARGIN, 18.5, JournalReadReport.AimRow.of(drawn.found()).text() + "; " + drawn.seen()
                + " of " + Wording.count(drawn.trails().size(), "trail") + " seen" + row.bump()
                .map(bump -> "; moved at " + Wording.minute(bump.at())).orElse(""));
        svg.empty("image", "x", MARGIN, "y", HEAD, "width", WIDTH - 2 * MARGIN, "height", height,
                "xlink:href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png()));
        svg.open("g", "class", "over");
        for (SheetReading.ReadTrail trail : drawn.trails()) {
            line(trail.track().trail(), trail.seen() ? "trail" : "trail dotted", 0.25);
        }
        List<SheetReading.ReadTrail> brightest = drawn.trails().subList(0, Math.min(NAMED,
                drawn.trails().size()));
        LabelPlaces places = new LabelPlaces(MARGIN, HEAD, WIDTH - MARGIN, HEAD + height, LETTER);
        brightest.forEach(trail -> {
            noted(trail.track().trail());
            named(trail, places);
        });
        svg.close("g");
        svg.label(MARGIN, HEAD + height + 5, "Whole lines: predicted trails that are on the scan; dotted: "
                + "those that are not; thin and broken: the brightest as noted.", "font-size", 2.6);
        return svg.finished(MARGIN, made);
    }

    private byte[] png() {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            PngRenderer.write(drawn.picture(), png);
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
        Framing found = drawn.bumped().filter(bumped -> !trail.points().get(0).at().isBefore(bumped.at()))
                .map(SheetReading.Bumped::after).orElse(drawn.found());
        trail.stretches().forEach(stretch -> svg.empty("polyline", "points", stretch.points().stream()
                .map(point -> found.toSky(point.xMm(), point.yMm()))
                .flatMap(seen -> reading.noted().toFrame(seen).stream())
                .filter(point -> found.camera().frame().contains(point.xMm(), point.yMm()))
                .map(point -> x(point.xMm()) + "," + y(point.yMm())).collect(Collectors.joining(" ")),
                "class", "trail broken", "stroke-width", 0.1));
    }

    private void named(SheetReading.ReadTrail trail, LabelPlaces places) {
        String name = Wording.skyName(trail.track().kind() == Trails.Kind.STAR, trail.track().name());
        List<double[]> points = trail.track().trail().points().stream().map(point -> new double[] {
            MARGIN + inside(point.xMm()), HEAD + height / 2 - point.yMm() / mmAPaperMm}).toList();
        places.take(name, points).ifPresent(place -> svg.label(place.x(), place.y(), name, "class",
                place.end() ? "name end" : "name", "stroke-width", 0.4, "font-size", LETTER));
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
