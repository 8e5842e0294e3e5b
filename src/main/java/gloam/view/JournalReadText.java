package gloam.view;

import gloam.view.JournalReadReport.ReadOpeningRow;
import gloam.view.JournalReadReport.ReadTrailRow;
import gloam.view.JournalReadReport.ReadTrailsRow;
import java.util.List;
import java.util.OptionalDouble;

/** The text of what a scan of a spent sheet shows. */
final class JournalReadText {

    private JournalReadText() {
    }

    /** The whole document. */
    static Document of(JournalReadReport report) {
        Document document = Document.headed("Entry " + report.entry() + " as " + report.scan() + " shows it");
        document.text("Sky in the middle: " + report.tone().text() + " of "
                + report.film() + ".");
        if (report.drawn().isEmpty()) {
            return document.under("The sheet is blank: no trail is on it, so that nothing shows where the "
                    + "camera pointed.").gap().text(kept(report));
        }
        ReadTrailsRow row = report.drawn().get();
        document.text((row.bump().isPresent() ? "At first the camera" : "The camera") + " pointed to "
                + row.found().text() + ", ± 0.1°; noted: " + report.noted().text() + ", "
                + Wording.number(row.offAimDeg(), 1) + "° away.");
        document.under("Focal length " + Wording.number(row.found().focalLengthMm(), 1)
                + " mm; the trails lie "
                + "where they should to " + Wording.number(row.residualMm(), 2) + " mm"
                + (row.mirrored() ? "; the scan is mirrored" : "") + ".");
        document.figure("predicted and found trails", made -> ReadDrawing.of(report, made));
        document.gap();
        document.add(times(row));
        document.under(row.bump().map(bump -> bump.text() + " The ends of its trails show no times.")
                .orElse("The ends of trails show how long each opening was and how far apart they were; "
                + "all times shifted alike look as if the camera were turned about the pole."));
        row.clouds().forEach(cloud -> document.under("No trail was drawn from " + Wording.minute(
                cloud.openAt()) + " to " + Wording.minute(cloud.closeAt()) + ": clouds, or a covered lens."));
        document.gap();
        document.text(row.trailsSeen() + " of the " + Wording.count(row.trailsPredicted(), "trail")
                + " predicted are on it"
                + (row.faintestSeenMag().isEmpty() ? "." : ", the faintest of magnitude "
                + Wording.number(row.faintestSeenMag().getAsDouble(), 1) + ".")
                + (row.trailLimitMag().isEmpty()
                ? "" : " By all of them the faintest that leaves a visible trail in the middle is "
                + Wording.number(row.trailLimitMag().getAsDouble(), 1) + " ± "
                + Wording.number(row.limitErrorMag().getAsDouble(), 1) + "."));
        document.under("The scan has " + Wording.number(row.scanContrast(), 2) + " ± "
                + Wording.number(row.scanContrastSd(), 2) + " times the contrast of the sheet.");
        document.add(table(TrailText.listed(row.trails())));
        TrailText.sayLeftOut(document, row.trails());
        return document.gap().text(kept(report));
    }

    private static String kept(JournalReadReport report) {
        return report.kept().map(kept -> kept.already() ? "Nothing added: entry " + report.entry() + " of "
                + kept.journal() + " says so already." : "Written to entry " + report.entry() + " of "
                + kept.journal() + ".").orElse("Nothing is written; add --write to keep it with the entry.");
    }

    private static Table times(ReadTrailsRow drawn) {
        Table table = new Table(Table.words("opening"), Table.words("noted"), Table.words("found"),
                Table.numbers("by trails"));
        for (ReadOpeningRow row : drawn.openings()) {
            table.row("opens", Wording.second(row.openAt()), later(row.opensLaterS(), row.opensErrorS()),
                    String.valueOf(row.begins()));
            table.row("closes", Wording.second(row.closeAt()), later(row.closesLaterS(), row.closesErrorS()),
                    String.valueOf(row.ends()));
        }
        return table;
    }

    private static String later(OptionalDouble seconds, OptionalDouble error) {
        return seconds.isEmpty() ? "not shown" : Wording.number(Math.abs(seconds.getAsDouble()), 0) + " s "
                + (seconds.getAsDouble() < 0 ? "earlier" : "later") + " ± "
                + Wording.number(Math.max(1, error.getAsDouble()), 0) + " s";
    }

    private static Table table(List<ReadTrailRow> trails) {
        Table table = new Table(Table.words("trail"), Table.numbers("mag"),
                Table.numbers("predicted", "stops over sky"), Table.words("on the scan"),
                Table.numbers("level over sky", "%"), Table.numbers("±", "%").leaving(1));
        trails.forEach(trail -> table.row(Wording.skyName(trail.kind().equals("star"),
                trail.name()), Wording.number(trail.magnitude(), 1),
                Wording.number(trail.stopsOverSky(), 1), trail.seen() ? "seen" : "not seen",
                Wording.signed(100 * trail.levelFraction(), 1),
                Wording.number(100 * trail.errorFraction(), 1)));
        return table;
    }
}
