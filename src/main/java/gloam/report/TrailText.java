package gloam.report;

import java.util.ArrayList;
import java.util.List;

/** Text of what runs across a framing. */
final class TrailText {

    private static final int WIDTH = 100;
    private static final int MOST_TRACKS = 20;

    private TrailText() {
    }

    static List<String> lines(TrailReport report) {
        List<String> lines = new ArrayList<>(heading(report));
        lines.add("");
        if (report.tracks().isEmpty()) {
            lines.add(report.sheet().isPresent() ? "  nothing in the frame leaves a trail"
                    : "  nothing asked for comes into the frame");
        } else {
            lines.addAll(tracks(report).lines());
            if (report.tracks().size() > MOST_TRACKS) {
                lines.add("  … and " + (report.tracks().size() - MOST_TRACKS) + " fainter; ask for json to see all");
            }
        }
        lines.add("");
        lines.addAll(here(report).lines());
        lines.add("");
        lines.addAll(TextWidth.wrapped("mm on the sheet from the frame's centre, x to the right and y up as seen in "
                + "the scene; directions of motion at mid exposure from right (0°) through up (90°).", WIDTH));
        return lines;
    }

    private static List<String> heading(TrailReport report) {
        TrailReport.FrameRow frame = report.frame();
        List<String> lines = new ArrayList<>();
        lines.add("Azimuth " + Wording.plain(frame.azimuthDeg()) + "° " + Wording.bearing(frame.azimuthDeg())
                + ", altitude " + Wording.plain(frame.altitudeDeg()) + "°, roll " + Wording.plain(frame.rollDeg())
                + "°; " + Wording.plain(frame.focalLengthMm()) + " mm on " + Wording.plain(frame.widthMm()) + " × "
                + Wording.plain(frame.heightMm()) + " mm" + (frame.airless() ? "; without refraction" : ""));
        lines.add(Wording.date(Wording.secondDate(frame.openAt())) + " " + Wording.second(frame.openAt()) + " to "
                + Wording.second(frame.closeAt()) + " (" + Wording.lasting(frame.lastsS()) + ")");
        lines.add("at " + PlaceText.of(report.site()));
        report.sheet().ifPresent(sheet -> lines.addAll(TextWidth.wrapped(sheet(sheet), WIDTH)));
        lines.add(pole(report.pole()));
        return lines;
    }

    private static String sheet(TrailReport.SheetRow sheet) {
        return sheet.film() + " at " + Wording.fNumber(sheet.fNumber()) + ": sky tone "
                + Wording.signed(sheet.skyToneStops(), 1) + " stops from the mid-tone; "
                + (sheet.trailLimitMag().isPresent() ? "faintest star to leave a trail at the centre: magnitude "
                        + Wording.number(sheet.trailLimitMag().getAsDouble(), 1) : "no star leaves a trail");
    }

    private static String pole(TrailReport.PoleRow pole) {
        String name = "the " + pole.name() + " pole of the sky, altitude " + Wording.number(pole.altitudeDeg(), 1)
                + "°, ";
        if (pole.xMm().isEmpty()) {
            return name + "is behind the camera";
        }
        return name + (pole.inFrame() ? "stands in the frame at x " : "falls beside the frame at x ")
                + Wording.number(pole.xMm().getAsDouble(), 1) + " mm, y "
                + Wording.number(pole.yMm().orElseThrow(), 1) + " mm";
    }

    private static Table tracks(TrailReport report) {
        Table table = new Table(2, Table.words("trail of"), Table.words("kind"), Table.numbers("mag"),
                Table.words("shows"), Table.words("from"), Table.words("to"), Table.numbers("length mm"),
                Table.numbers("direction °"), Table.numbers("sagitta mm"), Table.words("leaves"));
        for (TrailReport.TrackRow track : report.tracks().subList(0, Math.min(MOST_TRACKS, report.tracks().size()))) {
            TrailReport.PointRow first = track.points().get(0);
            TrailReport.PointRow last = track.points().get(track.points().size() - 1);
            table.row(track.name(), track.kind(),
                    track.magnitude().isPresent() ? Wording.number(track.magnitude().getAsDouble(), 1) : "",
                    track.records().map(records -> records ? "yes" : "no").orElse(""),
                    Wording.minute(first.at()), Wording.minute(last.at()), Wording.number(track.lengthMm(), 2),
                    Wording.number(track.directionDeg(), 1), Wording.number(track.sagittaMm(), 2),
                    track.leavesFrame() ? "yes" : "no");
        }
        return table;
    }

    private static Table here(TrailReport report) {
        Table table = new Table(2, Table.words("a star here"), Table.numbers("x mm"), Table.numbers("y mm"),
                Table.numbers("length mm"), Table.numbers("direction °"), Table.numbers("sagitta mm"));
        for (TrailReport.HereRow here : report.starsHere()) {
            table.row(here.where().replace('-', ' '), Wording.number(here.xMm(), 1), Wording.number(here.yMm(), 1),
                    Wording.number(here.lengthMm(), 2), Wording.number(here.directionDeg(), 1),
                    Wording.number(here.sagittaMm(), 2));
        }
        return table;
    }
}
