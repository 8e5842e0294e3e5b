package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.ScanReading;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CsvPrinterTest {

    @Test
    void formulasAreMadeHarmless() {
        // OWASP, CSV injection: texts that begin with = + - @, a tab or a carriage return
        assertEquals("'=1+1", CsvPrinter.cell("=1+1").replace("\"", ""));
        for (String start : List.of("=", "+", "-", "@", "\t")) {
            assertTrue(CsvPrinter.cell(start + "cmd").startsWith("\"'"), start);
        }
        assertEquals("dew 3", CsvPrinter.cell("dew 3").replace("\"", ""));
    }

    @Test
    void textsAreQuotedAsRfc4180Says() {
        assertEquals("\"a, \"\"b\"\"\"", CsvPrinter.cell("a, \"b\""));
        assertEquals("plain", CsvPrinter.cell("plain"));
        assertEquals("", CsvPrinter.cell(""));
        assertEquals("\"two lines\"", CsvPrinter.cell("two\r\nlines"));
    }

    @Test
    void everyLineHasACellForEachField() {
        String printed = CsvPrinter.printed(
                JournalExportReport.of(List.of(sheet("plain")), Instant.EPOCH).document());
        assertTrue(printed.endsWith("\r\n") && printed.replace("\r\n", "").indexOf('\n') < 0,
                "RFC 4180, 2.1: lines end in CRLF");
        List<String> lines = printed.lines().toList();
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).startsWith("id,film,batch,site,openAt,closeAt,"));
        assertEquals(lines.get(0).split(",", -1).length, lines.get(1).split(",", -1).length);
        assertTrue(lines.get(1).endsWith(",dark,,,,,plain,,,,,"), lines.get(1));
    }

    @Test
    void aReadingIsOneCellOfWords() {
        Entry scanned = sheet("plain").cameOut(Sheets.scanned(
                new ScanReading.Tone(-1.25, 0.3, ScanReading.Bound.NONE), Optional.empty()));
        String printed = CsvPrinter.printed(
                JournalExportReport.of(List.of(scanned), Instant.EPOCH).document());
        assertTrue(printed.contains(" stops from the mid-tone, \u00b1 0.3"), printed);
        assertFalse(printed.contains("["), printed);
    }

    private static Entry sheet(String note) {
        Entry sheet = Sheets.steady("1", Films.print(640, Reciprocity.none()), 300, 600,
                Sheets.judged(ToneWord.DARK));
        return new Entry(Instant.EPOCH, sheet.exposed(), sheet.outcome(), note, Optional.empty()).named("1");
    }
}
