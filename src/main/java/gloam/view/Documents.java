package gloam.view;

/** The document of every answer: the one place that knows which class lays out which. */
final class Documents {

    private Documents() {
    }

    /** What an answer shows. */
    static Document of(Report report) {
        if (report instanceof PlanReport plan) {
            return PlanText.document(plan);
        }
        if (report instanceof NightsReport nights) {
            return NightsText.document(nights);
        }
        if (report instanceof NightReport night) {
            return NightText.document(night);
        }
        if (report instanceof ApproachesReport approaches) {
            return ApproachesText.document(approaches);
        }
        if (report instanceof HighReport high) {
            return HighText.document(high);
        }
        if (report instanceof InstantReport instant) {
            return InstantText.document(instant);
        }
        if (report instanceof ExposureReport exposure) {
            return ExposureText.document(exposure);
        }
        if (report instanceof TrailReport trail) {
            return TrailText.document(trail);
        }
        if (report instanceof ProofReport proof) {
            return ProofText.document(proof);
        }
        if (report instanceof LevelReport level) {
            return LevelText.document(level);
        }
        if (report instanceof JournalExportReport export) {
            return JournalExportText.document(export);
        }
        if (report instanceof JournalReport journal) {
            return JournalText.document(journal);
        }
        return CheckText.document((CheckReport) report);
    }
}
