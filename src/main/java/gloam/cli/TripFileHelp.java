package gloam.cli;

import gloam.store.TripKey;
import gloam.store.TripKeys;
import java.io.PrintWriter;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.TextTable;

/** Lists the keys of the trip file: each with its unit, range and default, an example and its meaning. */
final class TripFileHelp {

    /** What the help command calls it. */
    static final String TOPIC = "trip-file";

    private static final int PATH_COLUMNS = 34;
    private static final int INDENT = 1;

    private TripFileHelp() {
    }

    /** Prints the list, no wider than that. */
    static void print(PrintWriter out, int columns) {
        TextTable table = TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF),
                new Column(PATH_COLUMNS, 0, Column.Overflow.SPAN),
                new Column(columns - PATH_COLUMNS, INDENT, Column.Overflow.WRAP));
        String before = "";
        for (TripKey key : TripKeys.all()) {
            String section = key.path().replaceFirst("[.\\[].*", "");
            if (!before.isEmpty() && !section.equals(before)) {
                table.addEmptyRow();
            }
            before = section;
            table.addRowValues(key.path(),
                    key.rules() + (key.rules().isEmpty() || key.example().isEmpty() ? "" : "; ")
                    + (key.example().isEmpty() ? "" : "e.g. " + key.example()));
            table.addRowValues("", key.meaning());
        }
        table.toString().lines().map(String::stripTrailing).forEach(out::println);
    }
}
