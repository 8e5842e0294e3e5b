package gloam.report;

import java.io.IOException;

/** Drawings as SVG 1.1: of a framing's trails, over the computed picture where there is one. */
final class SvgRenderer implements Renderer {

    @Override
    public boolean suits(Report report) {
        return report instanceof TrailReport || report instanceof ProofReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(report instanceof ProofReport proof ? TrailDrawing.over(proof)
                : TrailDrawing.of((TrailReport) report)).append('\n');
    }
}
