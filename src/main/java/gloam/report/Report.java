package gloam.report;

import java.time.OffsetDateTime;

/**
 * What a command answers: a tree of records with nothing left to compute.
 *
 * <p>The names of the components are the names of the JSON fields. Numbers are cut to the accuracy claimed and times
 * stand in the site's zone, so that no two renderings can disagree.
 */
public sealed interface Report permits ApproachesReport, CheckReport, ExposureReport, HighReport, InstantReport,
        JournalReport, LevelReport, NightReport, NightsReport, PlanReport, ProofReport, TrailReport {

    /** Name of the contract that the JSON fields keep. */
    String SCHEMA = "gloam/1";

    /** When the report was made. */
    OffsetDateTime generatedAt();

    /** What of it is words and numbers: all but pictures. */
    default Record figures() {
        return (Record) this;
    }

    /** Whether nothing of what was asked for was found. */
    default boolean empty() {
        return false;
    }
}
