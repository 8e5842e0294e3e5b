package gloam.view;

import java.io.IOException;

/** Plain text for reading on a terminal or on paper; sheets given to other programs are comma-separated values. */
final class TextRenderer implements Renderer {

    @Override
    public void render(Report report, Appendable out) throws IOException {
        render(report, OutputFormat.WIDTH, out);
    }

    /** The same for a terminal of so many columns. */
    void render(Report report, int columns, Appendable out) throws IOException {
        if (report instanceof JournalExportReport) {
            new CsvRenderer().render(report, out);
            return;
        }
        StringBuilder text = new StringBuilder();
        lines(report).at(columns).forEach(line -> text.append(line).append('\n'));
        out.append(text);
    }

    private static Lines lines(Report report) {
        if (report instanceof PlanReport plan) {
            return PlanText.lines(plan);
        }
        if (report instanceof NightsReport nights) {
            return NightsText.lines(nights);
        }
        if (report instanceof NightReport night) {
            return NightText.lines(night);
        }
        if (report instanceof ApproachesReport approaches) {
            return ApproachesText.lines(approaches);
        }
        if (report instanceof HighReport high) {
            return HighText.lines(high);
        }
        if (report instanceof InstantReport instant) {
            return InstantText.lines(instant);
        }
        if (report instanceof ExposureReport exposure) {
            return ExposureText.lines(exposure);
        }
        if (report instanceof TrailReport trail) {
            return TrailText.lines(trail);
        }
        if (report instanceof ProofReport proof) {
            return ProofText.lines(proof.figures());
        }
        if (report instanceof LevelReport level) {
            return LevelText.lines(level);
        }
        if (report instanceof JournalReport journal) {
            return JournalText.lines(journal);
        }
        return CheckText.lines((CheckReport) report);
    }
}
