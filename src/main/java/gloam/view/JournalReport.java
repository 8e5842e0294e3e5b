package gloam.view;

/** What a command of the journal answers. */
public sealed interface JournalReport extends Report permits JournalAddedReport, JournalExportReport, JournalFitReport,
        JournalGuideReport, JournalListReport, JournalNextReport, JournalStatsReport {
}
