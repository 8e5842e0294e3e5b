package gloam.store;

import gloam.units.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A table of plain values: cells separated by commas, below a header; lines that begin with {@code #} are
 * skipped.
 *
 * <p>Quotes mean nothing, so no cell holds a comma.
 */
final class Csv {

    private final Source source;
    private final List<String> header;

    private Csv(Source source, List<String> header) {
        this.source = source;
        this.header = header;
    }

    /**
     * What a reader makes of each row of a file; every row is tried before a fault stops the reading.
     *
     * @param source the file
     * @param header the columns it must have, in this order
     * @param reader is given the cells of a row
     */
    static <T> List<T> read(Source source, List<String> header, Function<List<Item>, T> reader) {
        return new Csv(source, header).rows(source.text(), reader);
    }

    private <T> List<T> rows(String text, Function<List<Item>, T> reader) {
        List<T> rows = new ArrayList<>();
        int number = 0;
        boolean headed = false;
        boolean complete = true;
        for (String line : text.lines().toList()) {
            number++;
            if (line.isBlank() || line.stripLeading().startsWith("#")) {
                continue;
            }
            if (headed) {
                Optional<T> row = whole(line, number).attempt(item -> reader.apply(cells(item)));
                row.ifPresent(rows::add);
                complete &= row.isPresent();
            } else {
                checkHeader(whole(line, number));
                headed = true;
            }
        }
        if (!complete) {
            throw Fault.alreadyNoted();
        }
        if (rows.isEmpty()) {
            throw whole("", Math.max(1, number))
                    .fault("no rows. Begin with the line " + String.join(",", header)
                    + " and give a line a point.");
        }
        return rows;
    }

    private void checkHeader(Item line) {
        if (!line.text().replace(" ", "").equals(String.join(",", header))) {
            throw line.fault("expected the header " + String.join(",", header) + ", found "
                    + Shown.quoted(line.text()) + hint(line.text()));
        }
    }

    private String hint(String found) {
        return Arrays.stream(found.split(",")).map(String::strip).filter(name -> !header.contains(name))
                .flatMap(name -> Nearest.sentence(name, header).stream()).findFirst().map(". "::concat)
                .orElse("");
    }

    private List<Item> cells(Item line) {
        String[] cells = line.text().split(",", -1);
        if (cells.length != header.size()) {
            throw line.fault("expected " + header.size() + " cells (" + String.join(",", header) + "), found "
                    + cells.length + ". Give each, with commas between.");
        }
        List<Item> items = new ArrayList<>();
        int column = line.node().column();
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i].strip();
            int indent = cells[i].length() - cells[i].stripLeading().length();
            items.add(new Item(new Node.Scalar(cell, Node.Kind.NUMBER, line.node().line(), column + indent),
                    header.get(i), source));
            column += cells[i].length() + 1;
        }
        return items;
    }

    private Item whole(String line, int number) {
        int indent = line.length() - line.stripLeading().length();
        return new Item(new Node.Scalar(line.strip(), Node.Kind.TEXT, number, indent + 1), "", source);
    }
}
