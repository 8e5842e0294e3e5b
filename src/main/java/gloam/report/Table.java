package gloam.report;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns, as narrow as their contents allow, with notes that run under a row. */
final class Table {

    private static final String GAP = "  ";
    private static final String NOTE_INDENT = "    ";
    private static final int WIDTH = 100;
    private static final int LEAST_WORDS = 10;

    private final String indent;
    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    /** An empty table that stands so many columns from the left edge. */
    Table(int indent, Column... columns) {
        this.indent = " ".repeat(indent);
        this.columns = List.of(columns);
    }

    /** A column of words. */
    static Column words(String title) {
        return new Column(title, false);
    }

    /** A column of numbers, aligned right; its title carries the unit. */
    static Column numbers(String title) {
        return new Column(title, true);
    }

    /** Adds a row with a cell for each column. */
    Table row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(new Row(List.of(cells), new ArrayList<>()));
        return this;
    }

    /** Adds a note under the last row. */
    Table note(String note) {
        rows.get(rows.size() - 1).notes.add(note);
        return this;
    }

    /** The table's lines without blanks at their ends: titles, then rows; too wide words run on below. */
    List<String> lines() {
        int[] widths = widths();
        List<String> lines = new ArrayList<>(lines(columns.stream().map(Column::title).toList(), widths));
        for (Row row : rows) {
            lines.addAll(lines(row.cells, widths));
            for (String note : row.notes) {
                TextWidth.wrapped(note, WIDTH - indent.length() - NOTE_INDENT.length())
                        .forEach(part -> lines.add(indent + NOTE_INDENT + part));
            }
        }
        return lines;
    }

    private List<String> lines(List<String> cells, int[] widths) {
        List<List<String>> parts = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            parts.add(columns.get(i).numbers ? List.of(cells.get(i)) : TextWidth.wrapped(cells.get(i), widths[i]));
        }
        int height = 0;
        for (List<String> part : parts) {
            height = Math.max(height, part.size());
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            lines.add(line(parts, line, widths));
        }
        return lines;
    }

    private String line(List<List<String>> parts, int line, int[] widths) {
        StringBuilder text = new StringBuilder(indent);
        for (int i = 0; i < parts.size(); i++) {
            String cell = line < parts.get(i).size() ? parts.get(i).get(line) : "";
            text.append(i == 0 ? "" : GAP).append(columns.get(i).aligned(cell, widths[i]));
        }
        return text.toString().stripTrailing();
    }

    /** What the cells take; where that is too wide together, the widest column of words gives way. */
    private int[] widths() {
        int[] widths = new int[columns.size()];
        int all = indent.length() + GAP.length() * (widths.length - 1);
        int widestWords = -1;
        for (int i = 0; i < widths.length; i++) {
            widths[i] = widest(i);
            all += widths[i];
            if (!columns.get(i).numbers && (widestWords < 0 || widths[i] >= widths[widestWords])) {
                widestWords = i;
            }
        }
        if (all > WIDTH && widestWords >= 0) {
            int least = Math.min(widths[widestWords], LEAST_WORDS);
            widths[widestWords] = Math.max(least, widths[widestWords] - (all - WIDTH));
        }
        return widths;
    }

    private int widest(int column) {
        int widest = TextWidth.of(columns.get(column).title);
        for (Row row : rows) {
            widest = Math.max(widest, TextWidth.of(row.cells.get(column)));
        }
        return widest;
    }

    /**
     * A column.
     *
     * @param title   its title, with the unit
     * @param numbers whether its cells are aligned right
     */
    record Column(String title, boolean numbers) {

        private String aligned(String text, int width) {
            return numbers ? TextWidth.right(text, width) : TextWidth.left(text, width);
        }
    }

    private record Row(List<String> cells, List<String> notes) {
    }
}
