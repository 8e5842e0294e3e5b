package gloam.view;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells in typed columns, with notes that stand under a row. */
final class Table implements Block {

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    /** An empty table. */
    Table(Column... columns) {
        this.columns = List.of(columns);
    }

    /** A column of words. */
    static Column words(String title) {
        return new Column(title, "", false, 0);
    }

    /** A column of numbers without a unit, or whose cells say it. */
    static Column numbers(String title) {
        return numbers(title, "");
    }

    /** A column of numbers, all in one unit. */
    static Column numbers(String title, String unit) {
        return new Column(title, unit, true, 0);
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

    List<Column> columns() {
        return columns;
    }

    List<Row> rows() {
        return rows;
    }

    /**
     * A column.
     *
     * @param title   its title; may be empty where the unit or the cells say enough
     * @param unit    the unit of its numbers, or empty
     * @param numbers whether its cells are numbers, which stand under one another
     * @param leaves  order, from 1, in which this column leaves the table if the width is too small, to be
     *                printed under its row; 0 stays
     */
    record Column(String title, String unit, boolean numbers, int leaves) {

        /** The same, leaving as one of the first where there is no room. */
        Column leaving(int order) {
            return new Column(title, unit, numbers, order);
        }

        /** Title and unit. */
        String heading() {
            return (title + " " + unit).strip();
        }

        /** A cell with title and unit, as part of a sentence. */
        String told(String cell) {
            return before(cell) + cell + after(cell);
        }

        /** What stands before a cell in a sentence, with the blank between them. */
        String before(String cell) {
            String words = unitFollows(cell) ? title : heading();
            return words.isEmpty() || words.endsWith("/") ? words : words + " ";
        }

        /** The unit behind a cell in a sentence, with the blank between them where there is one. */
        String after(String cell) {
            return !unitFollows(cell) ? "" : unit.equals("\u00b0") ? unit : " " + unit;
        }

        private boolean unitFollows(String cell) {
            return !unit.isEmpty() && cell.matches(".*\\d");
        }
    }

    /** A row: a cell for each column, and the notes under it. */
    record Row(List<String> cells, List<String> notes) {
    }
}
