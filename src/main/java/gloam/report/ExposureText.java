package gloam.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** Text of an exposure table. */
final class ExposureText {

    private ExposureText() {
    }

    static List<String> lines(ExposureReport report) {
        List<String> notes = report.exposures().stream().flatMap(row -> row.notes().stream()).distinct().toList();
        List<String> lines = new ArrayList<>(situation(report.situation()));
        lines.add("");
        lines.addAll(table(report, notes).lines());
        lines.add("");
        notes.forEach(note -> lines.add("  " + mark(notes, note) + "  " + note));
        lines.addAll(notes.isEmpty() ? List.of() : List.of(""));
        lines.addAll(TextWidth.wrapped("Trail limit: faintest star of declination "
                + Wording.number(report.situation().starDeclinationDeg(), 0) + "° that marks the sheet, the air taking "
                + Wording.number(report.situation().extinctionMag(), 2) + " mag. A longer exposure lengthens a trail "
                + "and lightens the sky; it never brightens the trail.", 100));
        return lines;
    }

    private static List<String> situation(Situation situation) {
        List<String> lines = new ArrayList<>();
        lines.add("Sky   " + situation.source() + ": " + Wording.number(situation.skyMagArcsec2(), 2)
                + " mag/arcsec²");
        situation.site().ifPresent(place -> lines.add("Site  " + PlaceText.of(place)));
        situation.openAt().ifPresent(at -> lines.add("Open  " + Wording.date(Wording.secondDate(at)) + " "
                + Wording.second(at) + " (" + Wording.offset(at) + "), azimuth "
                + Wording.plain(situation.azimuthDeg().orElseThrow()) + "°, altitude "
                + Wording.plain(situation.altitudeDeg().orElseThrow()) + "°"));
        lines.add("Film  " + situation.film() + ", ISO " + Wording.plain(situation.iso()));
        lines.add("Lens  " + Wording.plain(situation.focalLengthMm()) + " mm");
        lines.add("Want  " + wanted(situation));
        return lines;
    }

    private static String wanted(Situation situation) {
        return situation.lastsS().isPresent()
                ? "the sky's tone after " + Wording.lasting(situation.lastsS().getAsDouble())
                : "a sky tone of " + Wording.signed(situation.toneStops().orElseThrow(), 1)
                        + " stops from the mid-tone";
    }

    private static String mark(List<String> notes, String note) {
        return String.valueOf((char) ('a' + notes.indexOf(note)));
    }

    private static Table table(ExposureReport report, List<String> notes) {
        boolean timesWanted = report.situation().lastsS().isEmpty();
        List<Table.Column> columns = new ArrayList<>(List.of(Table.numbers("f/")));
        if (timesWanted) {
            columns.addAll(List.of(Table.numbers("metered"), Table.numbers("exposure"), Table.numbers("at least"),
                    Table.numbers("at most")));
        }
        columns.addAll(List.of(Table.numbers("lost stops"), Table.numbers("tone stops"),
                Table.numbers("trail limit mag"), Table.words("")));
        Table table = new Table(2, columns.toArray(Table.Column[]::new));
        report.exposures().forEach(row -> table.row(cells(row, timesWanted, notes)));
        return table;
    }

    private static String[] cells(ExposureReport.Row row, boolean timesWanted, List<String> notes) {
        List<String> cells = new ArrayList<>(List.of(Wording.plain(row.fNumber())));
        if (timesWanted) {
            cells.addAll(List.of(time(row.meteredS()), time(row.correctedS()), time(row.correctedLowS()),
                    time(row.correctedHighS())));
        }
        cells.add(text(row.reciprocityStops(), "-", stops -> Wording.signed(stops, 1)));
        cells.add(Wording.signed(row.skyToneStops(), 1) + " ± " + Wording.number(row.skyToneSpreadStops(), 1));
        cells.add(text(row.trailLimitMag(), "none", mag -> Wording.number(mag, 1)));
        cells.add(row.notes().stream().map(note -> mark(notes, note)).sorted().collect(Collectors.joining()));
        return cells.toArray(String[]::new);
    }

    private static String time(OptionalDouble seconds) {
        return text(seconds, "never", Wording::exposure);
    }

    private static String text(OptionalDouble value, String none, DoubleFunction<String> form) {
        return value.isPresent() ? form.apply(value.getAsDouble()) : none;
    }
}
