package gloam.view;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * What a command answers: a tree of records with nothing left to compute.
 *
 * <p>The names of the components are the names of the JSON fields, those of numbers ending in a unit that
 * {@link Accuracy} knows. Times are cut to the accuracy claimed and stand in the site's zone.
 */
public sealed interface Report permits ApproachesReport, CheckReport, ExposureReport, HighReport, InstantReport,
        JournalAddedReport, JournalExportReport, JournalFitReport, JournalGuideReport,
        JournalListReport, JournalNextReport, JournalStatsReport, LevelReport, NightReport, NightsReport, PlanReport,
        ProofReport, TrailReport {

    /** Name of the contract that the JSON fields keep. */
    String SCHEMA = "gloam/2";

    /** When the report was made. */
    OffsetDateTime generatedAt();

    /** The zone of its moments. */
    default ZoneId zone() {
        return ZoneOffset.UTC;
    }

    /** What it shows. */
    Document document();

    /** Whether nothing of what was asked for was found. */
    default boolean empty() {
        return false;
    }
}
