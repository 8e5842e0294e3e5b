package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Text of an exposure table: what to do, what to make of it, how it comes about. */
final class ExposureText {

    /** Closing times of shorter exposures are given to the second. */
    private static final double BRIEF_S = 600;

    private static final int MARKS = 3;

    private final List<FilmExposures> films;
    private final Situation situation;
    private final List<Line> lines;
    private final List<String> notes;

    /** Of one film, or of several under the same light through the same lens. */
    private ExposureText(List<FilmExposures> films) {
        this.films = films;
        this.situation = films.get(0).situation();
        this.lines = IntStream.range(0, films.get(0).exposures().size()).boxed().flatMap(i ->
                films.stream().map(film -> new Line(film.situation().film(), film.exposures().get(i))))
                .toList();
        this.notes = lines.stream().flatMap(line -> line.row.notes().stream()).distinct().toList();
    }

    static Document document(List<FilmExposures> films, Optional<Block> figure, List<String> remarks) {
        return new ExposureText(films).document(figure, remarks);
    }

    private Document document(Optional<Block> figure, List<String> remarks) {
        Document document = Document.named("Exposure")
                .add(situation.document(films.stream().map(film -> film.situation().ofFilm()).toList()));
        document.gap();
        document.add(table(doing()));
        document.gap();
        notes.forEach(note -> document.add(new Block.Term(mark(note), note, MARKS, true)));
        if (!notes.isEmpty()) {
            document.gap();
        }
        figure.ifPresent(document::add);
        document.text(key());
        remarks.forEach(document::text);
        document.add(sheets());
        document.gap();
        document.heading(2, "How it comes about");
        document.add(table(reasons()));
        return document;
    }

    private boolean timesWanted() {
        return situation.lastsS().isEmpty();
    }

    private List<Cells> doing() {
        List<Cells> columns = named();
        if (timesWanted()) {
            columns.addAll(List.of(new Cells(Table.numbers("expose"), row -> time(row.correctedS())),
                    new Cells(Table.numbers("at least").leaving(4), row -> time(row.correctedLowS())),
                    new Cells(Table.numbers("at most").leaving(4), row -> time(row.correctedHighS()))));
            if (situation.latestCloseAt().isPresent()) {
                columns.add(new Cells(Table.numbers("close at").leaving(3), row -> closing(row)));
            }
        }
        if (situation.ground().isPresent()) {
            columns.add(new Cells(Table.numbers("ground", "stops"), row -> text(row.groundToneStops(), "none",
                    stops -> spread(stops, row))));
            columns.add(new Cells(Table.numbers("sky", "stops"),
                    row -> Wording.signed(row.skyToneStops(), 1)));
        } else {
            columns.add(new Cells(Table.numbers("sky", "stops"), row -> spread(row.skyToneStops(), row)));
        }
        columns.add(new Cells(Table.numbers("faintest star", "mag").leaving(2),
                row -> text(row.trailLimitMag(), "none", mag -> Wording.number(mag, 1))));
        if (lines.stream().anyMatch(line -> line.row.cast().isPresent())) {
            columns.add(new Cells(Table.numbers("cast").leaving(1),
                    row -> cc(row.cast())));
            columns.add(new Cells(Table.numbers("filter").leaving(1),
                    row -> cc(row.filter())));
        }
        columns.add(new Cells(Table.words(""), row -> row.notes().stream().map(this::mark).sorted()
                .collect(Collectors.joining())));
        return columns;
    }

    private List<Cells> reasons() {
        List<Cells> columns = named();
        if (timesWanted()) {
            columns.add(new Cells(Table.numbers("metered"), row -> time(row.meteredS())));
        }
        columns.addAll(List.of(
                new Cells(Table.numbers("lost", "stops"),
                row -> text(row.reciprocityStops(), "-", stops -> Wording.number(stops, 1))),
                new Cells(Table.numbers("contrast").leaving(5),
                row -> "× " + Wording.number(row.contrast(), 2)),
                new Cells(Table.numbers("spot", "µm"), row -> Wording.number(row.spot().togetherUm(), 0))));
        if (films.size() == 1) {
            columns.addAll(ofLens());
        }
        return columns;
    }

    /** How the spot comes about, which no film changes. */
    private static List<Cells> ofLens() {
        return List.of(
                new Cells(Table.numbers("defocus").leaving(4),
                row -> Wording.number(row.spot().defocusUm(), 0)),
                new Cells(Table.numbers("diffraction").leaving(3),
                row -> Wording.number(row.spot().diffractionUm(), 0)),
                new Cells(Table.numbers("lens + film").leaving(2),
                row -> Wording.number(row.spot().lensAndFilmUm(), 0)),
                new Cells(Table.numbers("hyperfocal", "m").leaving(1),
                row -> metres(row.spot().hyperfocalM())));
    }

    private String cc(Optional<String> hue) {
        return hue.map(colour -> colour.replace(", CC", "")).orElse(films.size() == 1 ? "-" : "");
    }

    /** What tells the lines of a table apart. */
    private List<Cells> named() {
        return new ArrayList<>(List.of(new Cells(Table.numbers("f/"), row -> Wording.plain(row.fNumber()))));
    }

    private Table table(List<Cells> columns) {
        boolean several = films.size() > 1;
        Stream<Table.Column> film = several ? Stream.of(Table.words("film")) : Stream.empty();
        Table table = new Table(Stream.concat(film, columns.stream().map(Cells::column))
                .toArray(Table.Column[]::new));
        lines.forEach(line -> table.row(Stream.concat(several ? Stream.of(line.film) : Stream.empty(),
                columns.stream().map(cells -> cells.cell.apply(line.row))).toArray(String[]::new)));
        return table;
    }

    private String key() {
        return "Stops count from the film's mid-tone, plus is lighter; two times in three the "
                + (timesWanted() ? "right time lies from \"at least\" to \"at most\"" : "tone lies within ±")
                + ". Faintest star: the faintest of declination "
                + Wording.number(situation.starDeclinationDeg(), 0) + "° whose trail shows"
                + (situation.aimDeclinationDeg() == situation.starDeclinationDeg() ? ""
                        : " (a star at the aim, next to the pole, draws little more than a point)") + ", by "
                + Wording.plain(situation.leastDifferenceDensity())
                + " in density; the atmosphere dims it by "
                + Wording.number(situation.extinctionMag(), 2) + " mag.";
    }

    private Document sheets() {
        int sheets = situation.sheets();
        if (sheets < 2) {
            return Document.part();
        }
        List<Cells> columns = named();
        for (int i = 0; i < sheets; i++) {
            int sheet = i;
            columns.add(new Cells(Table.numbers("sheet " + (sheet + 1)), row -> row.bracket()
                    .map(bracket -> Wording.exposure(bracket.exposuresS().get(sheet))).orElse("-")));
        }
        columns.add(new Cells(Table.numbers("together").leaving(1), row -> row.bracket()
                .map(bracket -> Wording.exposure(bracket.togetherS().orElse(Double.POSITIVE_INFINITY)))
                .orElse("-")));
        columns.add(new Cells(Table.numbers("one is right"), row -> row.bracket()
                .map(bracket -> Wording.percent(bracket.chanceOfOneHit())).orElse("-")));
        return Document.part().gap().heading(2, sheets + " sheets, a stop of tone apart").add(table(columns));
    }

    private String mark(String note) {
        return String.valueOf((char) ('a' + notes.indexOf(note)));
    }

    private static String spread(double toneStops, ExposureRow row) {
        return Wording.tone(toneStops, row.skyToneSpreadStops());
    }

    private static String closing(ExposureRow row) {
        boolean brief = row.correctedS().orElse(0) < BRIEF_S;
        return row.closeAt().map(brief ? Wording::second : Wording::minute).orElse("never");
    }

    private String time(OptionalDouble seconds) {
        return text(seconds, situation.never(), Wording::exposure);
    }

    private static String metres(double metres) {
        return Wording.number(metres, metres < 9.95 ? 1 : 0);
    }

    private static String text(OptionalDouble value, String none, DoubleFunction<String> form) {
        return value.isPresent() ? form.apply(value.getAsDouble()) : none;
    }

    /** A line of the table: a film at an f-number. */
    private record Line(String film, ExposureRow row) {
    }

    /** A column of the table and what it says of an f-number. */
    private record Cells(Table.Column column, Function<ExposureRow, String> cell) {
    }
}
