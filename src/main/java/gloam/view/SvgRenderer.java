package gloam.view;

import java.io.IOException;

/** The drawing of a document as SVG 1.1, with its style sheet in it. */
final class SvgRenderer implements Renderer {

    private final Origin origin;

    /** Names what the drawing comes from. */
    SvgRenderer(Origin origin) {
        this.origin = origin;
    }

    @Override
    public boolean suits(Report report) {
        return report.document().drawing().isPresent();
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        String drawing = report.document().drawing().orElseThrow()
                .apply(origin.made(report.generatedAt()));
        int start = drawing.indexOf('>') + 1;
        out.append(drawing, 0, start).append("\n<style>\n").append(PagePart.DRAWING_STYLE.text())
                .append("</style>")
                .append(drawing, start, drawing.length()).append('\n');
    }
}
