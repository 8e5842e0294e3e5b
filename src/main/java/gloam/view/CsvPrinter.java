package gloam.view;

import gloam.units.PlainText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values (RFC 4180): the tables of a document for programs, a line a row, under a header of
 * titles.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, as OWASP advises
 * against CSV injection; line ends within a text become blanks, so that a row stays one line.
 */
final class CsvPrinter implements Renderer {

    /** The last four are the full-width forms, which some spreadsheets take for the others. */
    private static final String FORMULA_STARTS = "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20";
    private static final String END = "\r\n";

    @Override
    public boolean suits(Report report) {
        return report.document().forPrograms();
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(printed(report.document()));
    }

    /** The tables of a document. */
    static String printed(Document document) {
        StringBuilder text = new StringBuilder();
        for (Block block : document.blocks()) {
            if (block instanceof Table table) {
                text.append(table.columns().stream().map(column -> cell(column.heading()))
                        .collect(Collectors.joining(","))).append(END);
                table.rows().forEach(row -> text.append(line(table.columns(), row.cells())).append(END));
            }
        }
        return text.toString();
    }

    private static String line(List<Table.Column> columns, List<String> cells) {
        List<String> line = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            line.add(columns.get(i).numbers() ? cells.get(i) : cell(cells.get(i)));
        }
        return String.join(",", line);
    }

    /** A text in quotes where it needs them, harmless to spreadsheets. */
    static String cell(String text) {
        String line = text.replaceAll("\\R", " ");
        String words = PlainText.of(line.strip());
        boolean formula = !line.isEmpty() && FORMULA_STARTS.indexOf(line.charAt(0)) >= 0
                || !words.isEmpty() && FORMULA_STARTS.indexOf(words.charAt(0)) >= 0;
        String harmless = formula ? "'" + words : words;
        return harmless.matches(".*[,\"'\\s].*") ? '"' + harmless.replace("\"", "\"\"") + '"' : harmless;
    }
}
