package gloam.view;

import gloam.units.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * A table as lines of text, its columns as narrow as their contents allow.
 *
 * <p>Where the columns are too wide together, titles and words run on below. Where that does not do, columns
 * leave in the order that they name and are printed under their row; where no table fits, each row is a
 * paragraph that says its titles.
 */
final class TableLayout {

    private static final String GAP = "  ";
    private static final String NOTE_INDENT = "    ";
    /** Columns of words are made no narrower than this while titles of numbers can give way. */
    private static final int LEAST_WORDS = 16;
    /** And no narrower than this, which a time with its day needs, while other columns can leave. */
    private static final int SHORT_WORDS = 10;

    private final TextPrinter text;
    private final String indent;
    private final List<Table.Column> all;
    private final List<Table.Row> rows;

    /** A table that stands behind an indent. */
    TableLayout(Table table, String indent, TextPrinter text) {
        this.text = text;
        this.indent = indent;
        this.all = table.columns();
        this.rows = table.rows().stream()
                .map(row -> new Table.Row(row.cells().stream().map(PlainText::of).toList(), row.notes()))
                .toList();
    }

    /** The table's lines without blanks at their ends: titles, then rows. */
    List<String> lines() {
        int leaving = all.stream().mapToInt(Table.Column::leaves).reduce(0, Math::max);
        for (int left = 0; left <= leaving; left++) {
            Widths widths = new Widths(staying(left));
            if (widths.fitted(left == leaving)) {
                return table(widths);
            }
        }
        return paragraphs();
    }

    /** The columns still there when so many have left. */
    private List<Integer> staying(int left) {
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).leaves() == 0 || all.get(i).leaves() > left).boxed().toList();
    }

    private List<String> table(Widths widths) {
        List<String> lines = new ArrayList<>(lines(all.stream().map(Table.Column::heading).toList(), widths));
        for (Table.Row row : rows) {
            lines.addAll(lines(row.cells(), widths));
            String told = told(row, IntStream.range(0, all.size())
                    .filter(i -> !widths.columns.contains(i)).boxed().toList());
            if (!told.isEmpty()) {
                lines.addAll(text.paragraph(indent + NOTE_INDENT, told));
            }
            notes(lines, row);
        }
        return lines;
    }

    private List<String> paragraphs() {
        List<String> lines = new ArrayList<>();
        for (Table.Row row : rows) {
            lines.addAll(text.paragraph(indent + "- ", told(row, staying(0))));
            notes(lines, row);
        }
        return lines;
    }

    private void notes(List<String> lines, Table.Row row) {
        row.notes().forEach(note -> lines.addAll(text.paragraph(indent + NOTE_INDENT, note)));
    }

    /** The cells of some columns that say something, each behind its title. */
    private String told(Table.Row row, List<Integer> columns) {
        List<String> said = new ArrayList<>();
        for (int i : columns) {
            if (!row.cells().get(i).isEmpty()) {
                said.add(all.get(i).told(row.cells().get(i)));
            }
        }
        return String.join(", ", said);
    }

    private List<String> lines(List<String> cells, Widths widths) {
        List<List<String>> parts = new ArrayList<>();
        int height = 0;
        for (int i = 0; i < widths.columns.size(); i++) {
            List<String> part = TextWidth.wrapped(cells.get(widths.columns.get(i)), widths.taken[i]);
            parts.add(part);
            height = Math.max(height, part.size());
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            lines.add(line(parts, line, widths));
        }
        return lines;
    }

    private String line(List<List<String>> parts, int line, Widths widths) {
        StringBuilder laid = new StringBuilder(indent);
        for (int i = 0; i < parts.size(); i++) {
            String cell = PlainText.isolated(line < parts.get(i).size() ? parts.get(i).get(line) : "");
            laid.append(i == 0 ? "" : GAP).append(widths.column(i).numbers()
                    ? TextWidth.right(cell, widths.taken[i]) : TextWidth.left(cell, widths.taken[i]));
        }
        return laid.toString().stripTrailing();
    }

    /** What the cells of some columns take. */
    private final class Widths {

        private final List<Integer> columns;
        private final int[] taken;

        Widths(List<Integer> columns) {
            this.columns = columns;
            this.taken = new int[columns.size()];
        }

        Table.Column column(int i) {
            return all.get(columns.get(i));
        }

        /**
         * Whether the columns fit: where they are too wide together, words give way first, then titles of
         * numbers, then words again: as far as two lines hold them, and where no more columns can leave, down
         * to the widest word.
         */
        boolean fitted(boolean toTheLast) {
            int[] least = new int[taken.length];
            for (int i = 0; i < taken.length; i++) {
                taken[i] = widest(i, TextWidth::of);
                least[i] = column(i).numbers() ? leastOfNumbers(i) : widest(i, TextWidth::ofWidestWord);
            }
            narrow(i -> column(i).numbers() ? taken[i] : Math.max(least[i], LEAST_WORDS));
            narrow(i -> column(i).numbers() ? least[i] : taken[i]);
            narrow(i -> column(i).numbers() ? least[i] : Math.max(SHORT_WORDS, inTwoLines(i, least[i])));
            if (toTheLast) {
                narrow(i -> least[i]);
            }
            return total() <= text.width();
        }

        /** The least width at which no cell takes more than two lines. */
        private int inTwoLines(int i, int least) {
            int width = least;
            for (Table.Row row : rows) {
                String cell = row.cells().get(columns.get(i));
                while (width < taken[i] && TextWidth.wrapped(cell, width).size() > 2) {
                    width++;
                }
            }
            return width;
        }

        private int leastOfNumbers(int i) {
            int widest = TextWidth.ofWidestWord(column(i).heading());
            for (Table.Row row : rows) {
                widest = Math.max(widest, TextWidth.of(row.cells().get(columns.get(i))));
            }
            return widest;
        }

        /**
         * Takes from the widest column that can give, down to its floor, then from the next, until all fit.
         */
        private void narrow(IntUnaryOperator floor) {
            for (int over = total() - text.width(); over > 0; over = total() - text.width()) {
                int giving = -1;
                for (int i = 0; i < taken.length; i++) {
                    if (taken[i] > floor.applyAsInt(i) && (giving < 0 || taken[i] >= taken[giving])) {
                        giving = i;
                    }
                }
                if (giving < 0) {
                    return;
                }
                taken[giving] = Math.max(floor.applyAsInt(giving), taken[giving] - over);
            }
        }

        private int total() {
            return indent.length() + GAP.length() * (taken.length - 1) + IntStream.of(taken).sum();
        }

        private int widest(int i, ToIntFunction<String> width) {
            int widest = width.applyAsInt(column(i).heading());
            for (Table.Row row : rows) {
                widest = Math.max(widest, width.applyAsInt(row.cells().get(columns.get(i))));
            }
            return widest;
        }
    }
}
