package gloam.view;

import java.io.IOException;

/** Comma-separated values: of the journal's sheets. */
final class CsvRenderer implements Renderer {

    @Override
    public boolean suits(Report report) {
        return report instanceof JournalExportReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        for (String line : SheetCsv.lines(((JournalExportReport) report).sheets())) {
            out.append(line).append('\n');
        }
    }
}
