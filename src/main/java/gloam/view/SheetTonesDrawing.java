package gloam.view;

import gloam.answer.ToneGuide;
import gloam.journal.ToneWord;
import gloam.units.Label;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sheets of a journal by how long they were open, in a lane for each tone that the sky can have, the
 * lightest on top: kept, not kept, or not decided on.
 */
final class SheetTonesDrawing {

    private static final double WIDTH = 130;
    private static final double MARGIN = 6;
    private static final double LEFT = 36;
    private static final double PLOT = WIDTH - LEFT - 2 * MARGIN;
    private static final double TOP = 28;
    private static final double ROW = 5;
    private static final double LEAST_LANE = 11;
    private static final double FOOT = 33;
    private static final double LETTER = 3.4;
    private static final double MARK = 1.4;
    private static final double LETTER_WIDE = 2;
    private static final double APART = 15;
    private static final double LEAST_RATIO = 4;

    private final JournalListReport report;
    private final List<Lane> lanes;
    private final TimeAxis axis;
    private final double foot;
    private final Drawing svg;

    /**
     * The sheets of one tone.
     *
     * @param name  the tone
     * @param stops between what stops it lies, or nothing
     * @param patch its grey, if it has one
     * @param rows  its sheets in rows in which they stand clear of each other
     */
    private record Lane(String name, String stops, Optional<JournalGuideReport.WordRow> patch,
            List<List<SheetRow>> rows) {

        private double height() {
            return Math.max(LEAST_LANE, ROW * rows.size() + 2);
        }
    }

    private SheetTonesDrawing(JournalListReport report) {
        this.report = report;
        double least = report.sheets().stream().mapToDouble(SheetRow::openS).min().orElseThrow() / 1.2;
        double most = report.sheets().stream().mapToDouble(SheetRow::openS).max().orElseThrow() * 1.2;
        double name = LETTER_WIDE * report.sheets().stream().mapToInt(sheet -> TextWidth.of(name(sheet)))
                .max().orElseThrow();
        this.axis = new TimeAxis(least, Math.max(LEAST_RATIO * least, most), LEFT, PLOT - name);
        this.lanes = lanes();
        this.foot = TOP + lanes.stream().mapToDouble(Lane::height).sum();
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, foot + FOOT, LETTER, title(),
                "Exposure time across, the tone of the sky up: " + counts() + ".");
    }

    /** The drawing of sheets, of which there is one at least. */
    static String of(JournalListReport report, String made) {
        return new SheetTonesDrawing(report).drawn(made);
    }

    private static String title() {
        return "Tone of the sky by exposure time";
    }

    private String counts() {
        long kept = report.sheets().stream().filter(sheet -> sheet.kept().orElse(false)).count();
        long undecided = report.sheets().stream().filter(sheet -> sheet.kept().isEmpty()).count();
        return Wording.count(report.sheets().size(), "sheet") + ", " + kept + " kept"
                + (undecided > 0 ? ", " + undecided + " undecided" : "");
    }

    private String drawn(String made) {
        svg.label(MARGIN, 8, title(), "font-size", 4.6);
        svg.label(MARGIN, 13.5, counts());
        svg.label(MARGIN, 18.5, "opened " + days() + " by the clocks of each site");
        svg.label(MARGIN, 23.5, KeepersDrawing.shortened(places(), WIDTH - 2 * MARGIN));
        axis.ticks(APART).forEach(tick -> {
            svg.empty("path", "d", "M" + Markup.number(axis.x(tick)) + " " + Markup.number(TOP) + "V"
                    + Markup.number(foot + 1.5), "class", "grid");
            svg.label(axis.x(tick), foot + 5, Wording.exposure(tick), "class", "middle");
        });
        double top = TOP;
        for (Lane lane : lanes) {
            lane(lane, top);
            top += lane.height();
        }
        svg.label(LEFT + PLOT / 2, foot + 10.5, "exposure time, equal ratios alike", "class", "middle");
        legend(foot + 17);
        return svg.finished(MARGIN, made);
    }

    private String days() {
        List<String> days = report.sheets().stream().sorted(Comparator.comparing(SheetRow::openAt))
                .map(sheet -> sheet.openAt().toLocalDate().toString()).toList();
        String first = days.get(0);
        String last = days.get(days.size() - 1);
        return first.equals(last) ? first : first + " to " + last;
    }

    private String places() {
        return Stream.concat(report.sheets().stream().map(SheetRow::film), report.sheets().stream()
                .flatMap(sheet -> sheet.site().stream())).distinct().collect(Collectors.joining(", "));
    }

    private List<Lane> lanes() {
        List<Lane> lanes = new ArrayList<>();
        for (ToneGuide.Patch patch : ToneGuide.all().patches()) {
            ToneWord word = patch.word();
            JournalGuideReport.WordRow row = JournalGuideReport.WordRow.of(patch);
            lanes.add(new Lane(Label.words(word), JournalGuideReport.stops(row), Optional.of(row),
                    rows(report.sheets().stream().filter(sheet -> word(sheet).filter(word::equals)
                            .isPresent()))));
        }
        Collections.reverse(lanes);
        lanes.add(new Lane("not judged", "", Optional.empty(),
                rows(report.sheets().stream().filter(sheet -> word(sheet).isEmpty()))));
        return lanes;
    }

    /** The word that a sheet was judged by, or that its measured tone would have. */
    private static Optional<ToneWord> word(SheetRow sheet) {
        return Stream.of(ToneWord.values()).filter(word -> sheet.tone().isPresent()
                ? Label.of(word).equals(sheet.tone().get())
                : sheet.toneStops().isPresent() && sheet.toneStops().getAsDouble() <= word.upToStops())
                .findFirst();
    }

    private List<List<SheetRow>> rows(Stream<SheetRow> sheets) {
        List<List<SheetRow>> rows = new ArrayList<>();
        sheets.sorted(Comparator.comparingDouble(SheetRow::openS)).forEach(sheet -> rows.stream()
                .filter(row -> right(row.get(row.size() - 1)) < axis.x(sheet.openS()) - 2 * MARK).findFirst()
                .orElseGet(() -> {
                    rows.add(new ArrayList<>());
                    return rows.get(rows.size() - 1);
                }).add(sheet));
        return rows;
    }

    private double right(SheetRow sheet) {
        return axis.x(sheet.openS()) + 2 * MARK + LETTER_WIDE * TextWidth.of(name(sheet));
    }

    private static String name(SheetRow sheet) {
        return sheet.id() + (sheet.toneStops().isPresent()
                ? " (" + Wording.signed(sheet.toneStops().getAsDouble(), 1) + ")" : "");
    }

    private void lane(Lane lane, double top) {
        double height = lane.height();
        lane.patch().ifPresent(word -> svg.empty("rect", "x", MARGIN, "y", top + 0.3, "width", 4, "height",
                height - 0.6, "fill", word.patch(), "class", "edge shade", "stroke-width", 0.15, "style",
                "--light:" + Markup.number(word.reflectance())));
        svg.label(MARGIN + 6, top + height / 2 - (lane.stops().isEmpty() ? -1.2 : 0.6), lane.name());
        svg.label(MARGIN + 6, top + height / 2 + 3.6, lane.stops());
        svg.empty("path", "d", "M" + LEFT + " " + Markup.number(top) + "h" + Markup.number(PLOT) + "v"
                + Markup.number(height) + "h" + Markup.number(-PLOT), "class", "grid");
        double first = top + height / 2 - ROW * (lane.rows().size() - 1) / 2;
        for (int i = 0; i < lane.rows().size(); i++) {
            for (SheetRow sheet : lane.rows().get(i)) {
                sheet(sheet, first + ROW * i);
            }
        }
    }

    private void sheet(SheetRow sheet, double y) {
        double x = axis.x(sheet.openS());
        svg.open("g").words("title", "entry " + sheet.id() + ": open " + Wording.exposure(sheet.openS())
                + " at " + Wording.fNumber(sheet.fNumber()) + ", "
                + (sheet.verdict().isEmpty() ? "not judged" : sheet.verdict()));
        mark(x, y, sheet.kept());
        svg.label(x + 2 * MARK, y + 1.2, name(sheet));
        svg.close("g");
    }

    private void mark(double x, double y, Optional<Boolean> kept) {
        svg.empty("circle", "cx", x, "cy", y, "r", MARK, "class", kept.orElse(false) ? "entry" : "line",
                "stroke-width", 0.35);
        if (!kept.orElse(true)) {
            svg.empty("path", "d", "M" + Markup.number(x - MARK) + " " + Markup.number(y - MARK)
                    + "l2.8 2.8m0 -2.8l-2.8 2.8", "class", "line", "stroke-width", 0.35);
        }
    }

    private void legend(double y) {
        mark(MARGIN + MARK, y - 1.2, Optional.of(true));
        svg.label(MARGIN + 5, y, "kept");
        mark(MARGIN + 24, y - 1.2, Optional.of(false));
        svg.label(MARGIN + 27.5, y, "not kept");
        mark(MARGIN + 52, y - 1.2, Optional.empty());
        svg.label(MARGIN + 55.5, y, "undecided");
        svg.label(MARGIN, y + 5.5, "Beside each its entry, with the tone in stops where it was measured.");
    }
}
