package gloam.view;

import gloam.answer.Keepers;
import gloam.journal.Tally;
import java.util.List;
import java.util.Optional;

/**
 * How the sheets of a journal came out, a bar for each group with a part for each sheet: kept, not kept, not
 * decided on, and what is left in its pack; and what spoiled sheets.
 */
final class KeepersDrawing {

    private static final double WIDTH = 130;
    private static final double MARGIN = 6;
    private static final double PLOT = WIDTH - 2 * MARGIN;
    private static final double TOP = 28;
    private static final double ROW = 10;
    private static final double HEADING = 9;
    private static final double BAR = 3.4;
    private static final double MOST_PART = 6;
    private static final double LEAST_GAP_PART = 1.5;
    private static final double LETTER = 3.4;
    private static final int LONGEST_NAME = 30;

    private final JournalStatsReport report;
    private final double part;
    private final Markup rows = new Markup();
    private double y = TOP;

    private KeepersDrawing(JournalStatsReport report) {
        this.report = report;
        Keepers keepers = report.keepers();
        int most = keepers.packs().stream().mapToInt(pack -> pack.sheets() + left(pack.group()))
                .reduce(keepers.all().sheets(), Math::max);
        this.part = Math.min(MOST_PART, PLOT / keepers.stock().stream()
                .mapToInt(Keepers.Stock::sheetsLeft).reduce(most, Math::max));
    }

    /** The drawing of keepers, of which there is one sheet at least. */
    static String of(JournalStatsReport report, String made) {
        return new KeepersDrawing(report).drawn(made);
    }

    /** As much of a text as a line of that length has room for. */
    static String shortened(String text, double length) {
        List<String> lines = TextWidth.wrapped(text, (int) (length / (Drawing.LETTER_WIDE * LETTER)) - 1);
        return lines.get(0) + (lines.size() > 1 ? "…" : "");
    }

    private String drawn(String made) {
        Keepers keepers = report.keepers();
        group(keepers.all());
        heading("packs", !keepers.packs().isEmpty() || !keepers.stock().isEmpty());
        keepers.packs().forEach(this::group);
        keepers.stock().stream().filter(stock -> keepers.packs().stream().noneMatch(pack ->
                pack.group().equals(stock.pack()))).forEach(this::unopened);
        several("films", keepers.films());
        several("seasons", keepers.seasons());
        heading("wishes", !keepers.wishes().isEmpty());
        keepers.wishes().forEach(this::group);
        heading("what spoiled sheets", !keepers.all().spoilers().isEmpty());
        keepers.all().spoilers().forEach(this::spoiled);
        Drawing svg = new Drawing(Drawing.Unit.MM, WIDTH, y + 8, LETTER, title(), said(keepers.all(), 0));
        svg.label(MARGIN, 8, title(), "font-size", 4.6);
        svg.label(MARGIN, 13.5, "a part of a bar for each sheet");
        legend(svg);
        svg.add(rows.toString());
        return svg.finished(MARGIN, made);
    }

    private static String title() {
        return "Keepers and what spoils sheets";
    }

    private static void legend(Drawing svg) {
        double x = MARGIN;
        for (Kind kind : Kind.values()) {
            svg.empty("rect", "x", x, "y", 16.5, "width", 4, "height", BAR, "class", kind.style,
                    "stroke-width", 0.25);
            svg.label(x + 5.5, 19.3, kind.words);
            x += 9 + Drawing.LETTER_WIDE * LETTER * kind.words.length() + 3;
        }
    }

    /** What became of a sheet, and how that is drawn. */
    private enum Kind {
        KEPT("kept", "entry"), LOST("not kept", "dark edge"), UNDECIDED("undecided", "sheet edge"),
        LEFT("left in the pack", "line doubted");

        private final String words;
        private final String style;

        Kind(String words, String style) {
            this.words = words;
            this.style = style;
        }
    }

    private void several(String name, List<Tally> groups) {
        if (groups.size() > 1) {
            heading(name, true);
            groups.forEach(this::group);
        }
    }

    private void heading(String name, boolean any) {
        if (any) {
            rows.label(MARGIN, y + 4.5, name, "class", "bold");
            y += HEADING;
        }
    }

    private void group(Tally tally) {
        int left = left(tally.group());
        row(tally.group(), said(tally, left));
        int lost = tally.sheets() - tally.kept() - tally.undecided();
        double x = parts(MARGIN, Kind.KEPT, tally.kept());
        x = parts(x, Kind.LOST, lost);
        x = parts(x, Kind.UNDECIDED, tally.undecided());
        parts(x, Kind.LEFT, left);
        y += ROW;
    }

    private void unopened(Keepers.Stock stock) {
        row(stock.pack(), Wording.count(stock.sheetsLeft(), "sheet") + " left");
        parts(MARGIN, Kind.LEFT, stock.sheetsLeft());
        y += ROW;
    }

    private void spoiled(Tally.Spoiled spoiled) {
        row(spoiled.by(), Wording.count(spoiled.sheets(), "sheet"));
        parts(MARGIN, Kind.LOST, spoiled.sheets());
        y += ROW;
    }

    private void row(String name, String words) {
        rows.label(MARGIN, y + 1, shortened(name, LONGEST_NAME * Drawing.LETTER_WIDE * LETTER) + ": "
                + words);
    }

    /** Sheets of a kind, one beside the other; the place after the last. */
    private double parts(double from, Kind kind, int sheets) {
        boolean apart = part >= LEAST_GAP_PART;
        int pieces = apart ? sheets : Math.min(1, sheets);
        double width = apart ? part : part * sheets;
        for (int i = 0; i < pieces; i++) {
            rows.empty("rect", "x", from + i * width, "y", y + 2.4, "width", width - (apart ? 0.5 : 0),
                    "height", BAR, "class", kind.style, "stroke-width", 0.25);
        }
        return from + pieces * width;
    }

    private static String said(Tally tally, int left) {
        return tally.kept() + " of " + Wording.count(tally.sheets(), "sheet") + " kept"
                + (tally.undecided() > 0 ? ", " + tally.undecided() + " undecided" : "")
                + (left > 0 ? ", " + left + " left" : "");
    }

    private int left(String pack) {
        Optional<Keepers.Stock> stock = report.keepers().stock().stream()
                .filter(known -> known.pack().equals(pack)).findFirst();
        return stock.map(known -> Math.max(0, known.sheetsLeft())).orElse(0);
    }
}
