package gloam.view;

import gloam.units.PlainText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Plain text for reading on a terminal or on paper: every block laid out once, for the width at which it is
 * read. What is for programs becomes comma-separated values, which are never broken.
 */
final class TextPrinter implements Renderer {

    private static final String SET_IN = "  ";
    private static final String BULLET = SET_IN + "- ";

    private final int width;

    /** A printer for so many columns. */
    TextPrinter(int width) {
        this.width = width;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        Document document = report.document();
        if (document.forPrograms()) {
            out.append(CsvPrinter.printed(document));
            return;
        }
        StringBuilder text = new StringBuilder();
        lines(document).forEach(line -> text.append(line).append('\n'));
        out.append(text);
    }

    /** The document's lines, no wider than the width wherever they can be broken. */
    List<String> lines(Document document) {
        List<String> lines = new ArrayList<>();
        document.blocks().forEach(block -> add(lines, block));
        return lines;
    }

    private void add(List<String> lines, Block block) {
        if (block instanceof Block.Heading heading) {
            lines.addAll(paragraph("", heading.text()));
        } else if (block instanceof Block.Paragraph paragraph) {
            lines.addAll(paragraph(paragraph.under() ? SET_IN : "", paragraph.text()));
        } else if (block instanceof Block.Hint hint) {
            lines.addAll(paragraph("", hint.text()));
        } else if (block instanceof Block.Item item) {
            lines.addAll(paragraph(BULLET, item.text()));
        } else if (block instanceof Block.Term term) {
            lines.addAll(term(term));
        } else if (block instanceof Block.Gap) {
            lines.add("");
        } else if (block instanceof Table table) {
            lines.addAll(new TableLayout(table, SET_IN, this).lines());
        }
    }

    private List<String> term(Block.Term term) {
        String name = PlainText.of(term.name());
        String start = term.under() ? SET_IN : "";
        boolean beside = TextWidth.of(name) < term.column();
        List<String> lines = new ArrayList<>(beside ? List.of() : paragraph(start, name));
        lines.addAll(paragraph(start + TextWidth.left(beside ? name : "", term.column()), term.text()));
        return lines;
    }

    /** A paragraph behind a start, under whose end its further lines stand. */
    List<String> paragraph(String start, String text) {
        int indent = TextWidth.of(start);
        List<String> lines = new ArrayList<>();
        for (String part : TextWidth.wrapped(PlainText.of(text),
                Math.max(1, Math.min(width, OutputFormat.WIDTH) - indent))) {
            String line = (lines.isEmpty() ? start : " ".repeat(indent)) + part;
            lines.add(PlainText.isolated(line.stripTrailing()));
        }
        return lines;
    }

    int width() {
        return width;
    }
}
