package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Text of an exposure table: what to do, what to make of it, how it comes about. */
final class ExposureText {

    /** Exposures shorter than this are told to the second. */
    private static final double BRIEF_S = 600;

    private final ExposureReport report;
    private final List<String> notes;

    private ExposureText(ExposureReport report) {
        this.report = report;
        this.notes = report.exposures().stream().flatMap(row -> row.notes().stream()).distinct().toList();
    }

    static Lines lines(ExposureReport report) {
        return new ExposureText(report).lines();
    }

    private Lines lines() {
        Lines lines = SituationText.lines(report.situation());
        lines.add("");
        lines.add(table(doing()));
        lines.add("");
        notes.forEach(note -> lines.add("  " + mark(note) + "  ", note));
        if (!notes.isEmpty()) {
            lines.add("");
        }
        lines.add(key());
        report.remarks().forEach(lines::add);
        lines.add(sheets());
        lines.add("");
        lines.add("How it comes about");
        lines.add(table(reasons()));
        return lines;
    }

    private boolean timesWanted() {
        return report.situation().lastsS().isEmpty();
    }

    private List<Cells> doing() {
        List<Cells> columns = new ArrayList<>(List.of(fNumber()));
        if (timesWanted()) {
            columns.addAll(List.of(new Cells("expose", row -> time(row.correctedS())),
                    new Cells("at least", row -> time(row.correctedLowS())),
                    new Cells("at most", row -> time(row.correctedHighS()))));
            if (report.situation().latestCloseAt().isPresent()) {
                columns.add(new Cells("close at", row -> closing(row)));
            }
        }
        if (report.situation().ground().isPresent()) {
            columns.add(new Cells("ground stops", row -> text(row.groundToneStops(), "none",
                    stops -> spread(stops, row))));
            columns.add(new Cells("sky stops", row -> Wording.signed(row.skyToneStops(), 1)));
        } else {
            columns.add(new Cells("sky stops", row -> spread(row.skyToneStops(), row)));
        }
        columns.add(new Cells("stars to mag", row -> text(row.trailLimitMag(), "none", mag -> Wording.number(mag, 1))));
        if (report.exposures().stream().anyMatch(row -> row.cast().isPresent())) {
            columns.add(new Cells("cast", row -> row.cast().map(cast -> cast.replace(", CC", "")).orElse("-")));
        }
        columns.add(new Cells("", row -> row.notes().stream().map(this::mark).sorted().collect(Collectors.joining())));
        return columns;
    }

    private List<Cells> reasons() {
        List<Cells> columns = new ArrayList<>(List.of(fNumber()));
        if (timesWanted()) {
            columns.add(new Cells("metered", row -> time(row.meteredS())));
        }
        columns.addAll(List.of(
                new Cells("lost stops", row -> text(row.reciprocityStops(), "-", stops -> Wording.number(stops, 1))),
                new Cells("contrast", row -> "× " + Wording.number(row.contrast(), 2)),
                new Cells("spot µm", row -> Wording.number(row.spot().togetherUm(), 0)),
                new Cells("defocus", row -> Wording.number(row.spot().defocusUm(), 0)),
                new Cells("diffraction", row -> Wording.number(row.spot().diffractionUm(), 0)),
                new Cells("lens + film", row -> Wording.number(row.spot().lensAndFilmUm(), 0)),
                new Cells("hyperfocal m", row -> metres(row.spot().hyperfocalM()))));
        return columns;
    }

    private static Cells fNumber() {
        return new Cells("f/", row -> Wording.plain(row.fNumber()));
    }

    private Table table(List<Cells> columns) {
        Table table = new Table(2, columns.stream().map(column ->
                column.title.isEmpty() ? Table.words("") : Table.numbers(column.title)).toArray(Table.Column[]::new));
        report.exposures().forEach(row ->
                table.row(columns.stream().map(column -> column.cell.apply(row)).toArray(String[]::new)));
        return table;
    }

    private String key() {
        return "Stops count from the film's mid-tone, plus is lighter; two times in three the "
                + (timesWanted() ? "right time lies from \"at least\" to \"at most\"" : "tone lies within ±")
                + ". Stars to mag: the faintest of declination "
                + Wording.number(report.situation().starDeclinationDeg(), 0) + "° whose trail shows"
                + (report.situation().aimDeclinationDeg() == report.situation().starDeclinationDeg() ? ""
                        : " (a star at the aim, next to the pole, draws little more than a point)") + ", by "
                + Wording.plain(report.situation().leastDifferenceDensity()) + " in density, the air taking "
                + Wording.number(report.situation().extinctionMag(), 2) + " mag.";
    }

    private Lines sheets() {
        int sheets = report.situation().sheets();
        if (sheets < 2) {
            return new Lines();
        }
        List<Cells> columns = new ArrayList<>(List.of(fNumber()));
        for (int i = 0; i < sheets; i++) {
            int sheet = i;
            columns.add(new Cells("sheet " + (sheet + 1), row -> row.bracket()
                    .map(bracket -> Wording.exposure(bracket.exposuresS().get(sheet))).orElse("-")));
        }
        columns.add(new Cells("together", row -> row.bracket()
                .map(bracket -> Wording.exposure(bracket.togetherS().orElse(Double.POSITIVE_INFINITY))).orElse("-")));
        columns.add(new Cells("one is right", row -> row.bracket()
                .map(bracket -> Wording.number(100 * bracket.chanceOfOneHit(), 0) + " %").orElse("-")));
        return new Lines().add("").add(sheets + " sheets, a stop of tone apart").add(table(columns));
    }

    private String mark(String note) {
        return String.valueOf((char) ('a' + notes.indexOf(note)));
    }

    private static String spread(double toneStops, ExposureRow row) {
        return Wording.signed(toneStops, 1) + " ± " + Wording.number(row.skyToneSpreadStops(), 1);
    }

    private static String closing(ExposureRow row) {
        boolean brief = row.correctedS().orElse(0) < BRIEF_S;
        return row.closeAt().map(brief ? Wording::second : Wording::minute).orElse("never");
    }

    private String time(OptionalDouble seconds) {
        return text(seconds, report.situation().never(), Wording::exposure);
    }

    private static String metres(double metres) {
        return Wording.number(metres, metres < 9.95 ? 1 : 0);
    }

    private static String text(OptionalDouble value, String none, DoubleFunction<String> form) {
        return value.isPresent() ? form.apply(value.getAsDouble()) : none;
    }

    /** A column of the table: its title and what it says of an f-number. */
    private record Cells(String title, Function<ExposureRow, String> cell) {
    }
}
