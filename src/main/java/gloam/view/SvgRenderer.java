package gloam.view;

import java.io.IOException;

/** Drawings as SVG 1.1: of framings, timetables, ranges of nights, a fitted film's curve, the words for tones. */
final class SvgRenderer implements Renderer {

    @Override
    public boolean suits(Report report) {
        return report instanceof TrailReport || report instanceof ProofReport || report instanceof PlanReport
                || report instanceof NightsReport || report instanceof JournalFitReport
                || report instanceof JournalGuideReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(drawing(report)).append('\n');
    }

    private static String drawing(Report report) {
        if (report instanceof PlanReport plan) {
            return NightStrip.of(plan);
        }
        if (report instanceof NightsReport nights) {
            return NightCalendar.of(nights);
        }
        if (report instanceof JournalFitReport fit) {
            return JournalCurveDrawing.of(fit);
        }
        if (report instanceof JournalGuideReport guide) {
            return ToneGuideDrawing.of(guide);
        }
        return report instanceof ProofReport proof ? TrailDrawing.over(proof) : TrailDrawing.of((TrailReport) report);
    }
}
