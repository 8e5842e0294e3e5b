package gloam.view;

import gloam.units.PlainText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;

/**
 * Rows of text in columns, as narrow as their contents allow, with notes that run under a row.
 *
 * <p>Where the columns are too wide together, titles and words run on below; where even that is too wide, each row is a
 * paragraph that says its titles.
 */
final class Table implements Lines.Block {

    private static final String GAP = "  ";
    private static final String NOTE_INDENT = "    ";
    /** Columns of words are made no narrower than this while titles of numbers can give way. */
    private static final int LEAST_WORDS = 16;

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
        rows.add(new Row(Arrays.stream(cells).map(PlainText::of).toList(), new ArrayList<>()));
        return this;
    }

    /** Adds a note under the last row. */
    Table note(String note) {
        rows.get(rows.size() - 1).notes.add(note);
        return this;
    }

    /** The table's lines without blanks at their ends: titles, then rows. */
    @Override
    public List<String> at(int width) {
        int[] widths = widths(width);
        boolean fits = total(widths) <= width;
        List<String> lines = new ArrayList<>();
        if (fits) {
            lines.addAll(lines(columns.stream().map(Column::title).toList(), widths));
        }
        for (Row row : rows) {
            lines.addAll(fits ? lines(row.cells, widths) : told(row).at(width));
            for (String note : row.notes) {
                lines.addAll(new Lines().add(indent + NOTE_INDENT, note).at(width));
            }
        }
        return lines;
    }

    private List<String> lines(List<String> cells, int[] widths) {
        List<List<String>> parts = new ArrayList<>();
        int height = 0;
        for (int i = 0; i < cells.size(); i++) {
            List<String> part = TextWidth.wrapped(cells.get(i), widths[i]);
            parts.add(part);
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
            text.append(i == 0 ? "" : GAP).append(columns.get(i).aligned(PlainText.isolated(cell), widths[i]));
        }
        return text.toString().stripTrailing();
    }

    /** A row as a paragraph: its first cell, then every other that says something behind its title. */
    private Lines told(Row row) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!row.cells.get(i).isEmpty()) {
                said.add((columns.get(i).title + " " + row.cells.get(i)).strip());
            }
        }
        return new Lines().add(indent + "- ", String.join(", ", said));
    }

    /** What the cells take; where that is too wide together, words give way first, then titles of numbers. */
    private int[] widths(int width) {
        int[] widths = new int[columns.size()];
        int[] least = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = widest(i, TextWidth::of);
            least[i] = columns.get(i).numbers ? leastOfNumbers(i) : widest(i, TextWidth::ofWidestWord);
        }
        narrow(widths, width, i -> columns.get(i).numbers ? widths[i] : Math.max(least[i], LEAST_WORDS));
        narrow(widths, width, i -> columns.get(i).numbers ? least[i] : widths[i]);
        narrow(widths, width, i -> least[i]);
        return widths;
    }

    private int leastOfNumbers(int column) {
        int widest = TextWidth.ofWidestWord(columns.get(column).title);
        for (Row row : rows) {
            widest = Math.max(widest, TextWidth.of(row.cells.get(column)));
        }
        return widest;
    }

    /** Takes from the widest column that can give, down to its floor, then from the next, until all fit. */
    private void narrow(int[] widths, int width, IntUnaryOperator floor) {
        for (int over = total(widths) - width; over > 0; over = total(widths) - width) {
            int giving = -1;
            for (int i = 0; i < widths.length; i++) {
                if (widths[i] > floor.applyAsInt(i) && (giving < 0 || widths[i] >= widths[giving])) {
                    giving = i;
                }
            }
            if (giving < 0) {
                return;
            }
            widths[giving] = Math.max(floor.applyAsInt(giving), widths[giving] - over);
        }
    }

    private int total(int... widths) {
        int all = indent.length() + GAP.length() * (widths.length - 1);
        for (int width : widths) {
            all += width;
        }
        return all;
    }

    private int widest(int column, ToIntFunction<String> width) {
        int widest = width.applyAsInt(columns.get(column).title);
        for (Row row : rows) {
            widest = Math.max(widest, width.applyAsInt(row.cells.get(column)));
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
