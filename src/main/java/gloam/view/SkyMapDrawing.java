package gloam.view;

import gloam.answer.SkyMap;
import gloam.ephemeris.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The whole sky as it stands overhead: the zenith in the middle, the horizon around it, north at the top and
 * east to the left, each cell as light as it is, the terrain over it, a legend beside.
 */
final class SkyMapDrawing {

    private static final double RADIUS = 70;
    private static final double MARGIN = 12;
    private static final double LEGEND = 44;
    private static final int STEPS_ACROSS = 4;
    private static final double LEGEND_HEIGHT = 64;
    private static final double LEAST_RANGE_MAG = 2;

    private final SkyMapReport report;
    private final double brightest;
    private final double darkest;
    private final double stepMag;
    private final Drawing svg;

    private SkyMapDrawing(SkyMapReport report) {
        this.report = report;
        double[] mags = report.cells().stream().flatMapToDouble(cell -> cell.magArcsec2().stream()).sorted()
                .toArray();
        double range = mags.length == 0 ? 0 : mags[mags.length - 1] - mags[0];
        this.stepMag = range <= 4 ? 0.5 : range <= 8 ? 1 : 2;
        this.darkest = mags.length == 0 ? 0 : stepMag * Math.ceil(mags[mags.length - 1] / stepMag);
        this.brightest = mags.length == 0 ? 0 : Math.min(stepMag * Math.floor(mags[0] / stepMag),
                darkest - LEAST_RANGE_MAG);
        this.svg = new Drawing(Drawing.Unit.MM, 2 * (RADIUS + MARGIN) + LEGEND, 2 * (RADIUS + MARGIN) + 18,
                3.4, "Brightness of the sky at " + report.site().name(),
                "The whole sky, the zenith in the middle, "
                + "north at the top, east to the left.");
    }

    /** The drawing of a sky. */
    static String of(SkyMapReport report, String made) {
        return new SkyMapDrawing(report).drawn(made);
    }

    private String drawn(String made) {
        svg.label(6, 8, report.site().name() + ", " + Wording.date(report.at().toLocalDate()) + " "
                + Wording.minute(report.at()) + " (" + report.site().zone() + ")", "font-size", 5);
        svg.empty("circle", "cx", x(Direction.ZENITH), "cy", y(Direction.ZENITH), "r", RADIUS, "class",
                "night");
        for (int i = 0; i < report.cells().size(); i++) {
            cell(report.cells().get(i), skyAtOrAbove(i));
        }
        skyline();
        if (report.moon().altitudeDeg() > 0) {
            Direction moon = Direction.ofDegrees(report.moon().azimuthDeg(), report.moon().altitudeDeg());
            svg.empty("circle", "cx", x(moon), "cy", y(moon), "r", 1.2, "class", "lit edge", "stroke-width",
                    0.2);
            svg.label(x(moon) + 2.2, y(moon) + 1.2, "Moon", "class", "name", "stroke-width", 0.6);
        }
        for (int azimuthDeg = 0; azimuthDeg < 360; azimuthDeg += 45) {
            double outside = (RADIUS + 5) / RADIUS;
            svg.label(middleX() - outside * RADIUS * Math.sin(Math.toRadians(azimuthDeg)),
                    middleY() - outside * RADIUS * Math.cos(Math.toRadians(azimuthDeg)) + 1.2,
                    Wording.bearing(azimuthDeg), "class", "middle");
        }
        legend();
        svg.label(6, middleY() + RADIUS + 13, "Looking up: the zenith in the middle, the horizon at the rim, "
                + "altitudes evenly between them.");
        return svg.finished(6, made);
    }

    /** The sky of a cell, behind land that of the lowest one over it. */
    private double skyAtOrAbove(int index) {
        int above = index;
        while (above < report.cells().size() - 1 && report.cells().get(above).magArcsec2().isEmpty()) {
            above++;
        }
        return report.cells().get(above).magArcsec2().orElse(darkest);
    }

    private void cell(SkyMapReport.CellRow cell, double magArcsec2) {
        double left = cell.azimuthDeg() - SkyMap.ACROSS_DEG / 2.0;
        double low = cell.altitudeDeg() - SkyMap.UP_DEG / 2.0;
        List<Direction> edge = new ArrayList<>();
        for (int step = 0; step <= STEPS_ACROSS; step++) {
            edge.add(Direction.ofDegrees(left + (double) step * SkyMap.ACROSS_DEG / STEPS_ACROSS, low));
        }
        for (int step = STEPS_ACROSS; step >= 0; step--) {
            edge.add(Direction.ofDegrees(left + (double) step * SkyMap.ACROSS_DEG / STEPS_ACROSS,
                    low + SkyMap.UP_DEG));
        }
        String grey = grey(magArcsec2);
        svg.empty("polygon", "points", points(edge), "fill", grey, "stroke", grey, "stroke-width", 0.15,
                "class", "shade", "style", "--light:" + Markup.number(light(magArcsec2)));
    }

    /** The terrain between the skyline and the horizon. */
    private void skyline() {
        if (report.skyline().stream().allMatch(point -> point.altitude().degrees() <= 0)) {
            return;
        }
        List<Direction> edge = new ArrayList<>(report.skyline().stream().map(point ->
                point.altitude().degrees() > 0 ? point : level(point)).toList());
        edge.add(edge.get(0));
        for (int i = edge.size() - 1; i >= 0; i--) {
            edge.add(level(edge.get(i)));
        }
        svg.empty("polygon", "points", points(edge), "class", "dark edge", "stroke-width", 0.15);
    }

    private static Direction level(Direction point) {
        return Direction.ofDegrees(point.azimuth().degrees(), 0);
    }

    private void legend() {
        double left = 2 * (RADIUS + MARGIN) + 2;
        svg.label(left, MARGIN + 14, "mag/arcsec²");
        int steps = (int) Math.round((darkest - brightest) / stepMag);
        double row = Math.min(8, LEGEND_HEIGHT / Math.max(1, steps));
        for (int step = 0; step <= steps; step++) {
            double mag = brightest + stepMag * step;
            double top = MARGIN + 18 + row * step;
            svg.empty("rect", "x", left, "y", top, "width", 10, "height", row, "fill", grey(mag), "class",
                    "edge shade", "stroke-width", 0.15, "style", "--light:" + Markup.number(light(mag)));
            svg.label(left + 13, top + row / 2 + 1.2, Wording.number(mag, 1));
        }
    }

    private String points(List<Direction> edge) {
        return edge.stream().map(point -> Markup.number(x(point)) + "," + Markup.number(y(point)))
                .collect(Collectors.joining(" "));
    }

    private double x(Direction direction) {
        return middleX() - fromMiddle(direction) * direction.azimuth().sin();
    }

    private double y(Direction direction) {
        return middleY() - fromMiddle(direction) * direction.azimuth().cos();
    }

    private static double fromMiddle(Direction direction) {
        return RADIUS * (90 - direction.altitude().degrees()) / 90;
    }

    private static double middleX() {
        return MARGIN + RADIUS;
    }

    private static double middleY() {
        return MARGIN + RADIUS + 8;
    }

    /** How light a sky is drawn, 0 to 1. */
    private double light(double mag) {
        return darkest > brightest ? Math.max(0, Math.min(1, (darkest - mag) / (darkest - brightest))) : 0;
    }

    /** A grey from near black for the darkest to near white for the brightest of this sky. */
    private String grey(double mag) {
        int level = (int) Math.round(25 + 220 * light(mag));
        return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, Math.min(255, level + 10));
    }
}
