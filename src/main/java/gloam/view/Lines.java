package gloam.view;

import gloam.units.PlainText;
import java.util.ArrayList;
import java.util.List;

/** Text to be read, line after line: paragraphs and tables, laid out once, for the width at which they are printed. */
final class Lines {

    private final List<Block> blocks = new ArrayList<>();

    /** A part that knows where it may be broken. */
    interface Block {

        /** Its lines, no wider than that wherever it can be broken. */
        List<String> at(int width);
    }

    /** Adds a paragraph; where its first line is indented the others are too. */
    Lines add(String text) {
        String words = text.stripLeading();
        return add(" ".repeat(text.length() - words.length()), words);
    }

    /** Adds a paragraph behind a start, such as a bullet or a name, under whose end its further lines stand. */
    Lines add(String start, String text) {
        blocks.add(new Paragraph(PlainText.of(start), PlainText.of(text)));
        return this;
    }

    /** Adds a table. */
    Lines add(Table table) {
        blocks.add(table);
        return this;
    }

    /** Adds all of other text. */
    Lines add(Lines more) {
        blocks.addAll(more.blocks);
        return this;
    }

    /** The lines at a width in columns. */
    List<String> at(int width) {
        return blocks.stream().flatMap(block -> block.at(width).stream()).toList();
    }

    private record Paragraph(String start, String text) implements Block {

        @Override
        public List<String> at(int width) {
            int indent = TextWidth.of(start);
            List<String> lines = new ArrayList<>();
            for (String part : TextWidth.wrapped(text, Math.max(1, width - indent))) {
                lines.add(PlainText.isolated(((lines.isEmpty() ? start : " ".repeat(indent)) + part).stripTrailing()));
            }
            return lines;
        }
    }
}
