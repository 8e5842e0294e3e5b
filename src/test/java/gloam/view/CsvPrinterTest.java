package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SheetCsvTest {

    @Test
    void formulasAreMadeHarmless() {
        // OWASP, CSV injection: texts that begin with = + - @, a tab or a carriage return
        assertEquals("'=1+1", SheetCsv.text("=1+1").replace("\"", ""));
        for (String start : List.of("=", "+", "-", "@", "\t")) {
            assertTrue(SheetCsv.text(start + "cmd").startsWith("\"'"), start);
        }
        assertEquals("dew 3", SheetCsv.text("dew 3").replace("\"", ""));
    }

    @Test
    void textsAreQuotedAsRfc4180Says() {
        assertEquals("\"a, \"\"b\"\"\"", SheetCsv.text("a, \"b\""));
        assertEquals("plain", SheetCsv.text("plain"));
        assertEquals("", SheetCsv.text(""));
        assertEquals("\"two lines\"", SheetCsv.text("two\r\nlines"));
    }

    @Test
    void everyLineHasACellForEachField() {
        List<String> lines = SheetCsv.lines(List.of(row("plain")));
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).startsWith("id,film,batch,site,openAt,closeAt,"));
        assertEquals(lines.get(0).split(",", -1).length, lines.get(1).split(",", -1).length);
        assertTrue(lines.get(1).endsWith(",dark,,,,,plain"), lines.get(1));
    }

    private static SheetRow row(String note) {
        Entry sheet = Sheets.steady("1", Films.print(640, Reciprocity.none()), 300, 600, Sheets.judged(ToneWord.DARK));
        return SheetRow.of(new Entry("1", Instant.EPOCH, Optional.empty(), false, sheet.exposed(), sheet.outcome(), note));
    }
}
