package gloam.support;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A table of outside values under {@code src/test/resources/reference}, kept as it came.
 *
 * <p>Lines that start with {@code #} tell at least source, retrieved, units and tolerance (with the reason);
 * then a line of column names and one line a row, comma-separated without quotes.
 *
 * @param header  the lines that start with {@code #}
 * @param columns the columns' names
 * @param rows    the rows in order, at least one
 */
public record ReferenceTable(List<String> header, List<String> columns, List<Row> rows) {

    private static final List<String> TOLD = List.of("source", "retrieved", "units", "tolerance");

    /** The table of that path under the reference folder, such as {@code erfa/trails.csv}. */
    public static ReferenceTable read(String path) {
        return of(path, lines("/reference/" + path));
    }

    static ReferenceTable of(String path, List<String> lines) {
        List<String> header = lines.stream().filter(ReferenceTable::isHeader).toList();
        for (String what : TOLD) {
            if (header.stream().noneMatch(line -> line.contains(what))) {
                throw new IllegalArgumentException(path + " does not tell its " + what);
            }
        }
        List<List<String>> table = lines.stream().filter(line -> !isHeader(line)).map(ReferenceTable::cells)
                .toList();
        List<String> columns = table.get(0);
        List<Row> rows = table.stream().skip(1).map(cells -> Row.of(columns, cells)).toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(path + " has no rows");
        }
        return new ReferenceTable(header, columns, rows);
    }

    /** The rows, for {@code @MethodSource}. */
    public Stream<Row> stream() {
        return rows.stream();
    }

    private static boolean isHeader(String line) {
        return line.startsWith("#");
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",", -1)).map(String::strip).toList();
    }

    private static List<String> lines(String resource) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("no reference table " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A row of a table.
     *
     * @param cells the texts by column name, in order
     */
    public record Row(Map<String, String> cells) {

        private static Row of(List<String> columns, List<String> texts) {
            if (texts.size() != columns.size()) {
                throw new IllegalArgumentException("row " + texts + " does not fit columns " + columns);
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                cells.put(columns.get(i), texts.get(i));
            }
            return new Row(cells);
        }

        /** The text in a column. */
        public String text(String column) {
            String text = cells.get(column);
            if (text == null) {
                throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
            }
            return text;
        }

        /** Whether a column is filled in. */
        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        /** The number in a column. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** The instant in a column, written as ISO 8601 with Z. */
        public Instant instant(String column) {
            return Instant.parse(text(column));
        }

        @Override
        public String toString() {
            return String.join(" ", cells.values());
        }
    }
}
