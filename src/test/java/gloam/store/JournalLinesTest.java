package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class JournalLinesTest {

    private static JournalLines lines(String text) {
        return JournalLines.of(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String line(String id, String written, String says) {
        return "{\"gloam-journal\":1,\"id\":\"" + id + "\",\"written\":\"" + written + "\"," + says + "}";
    }

    /**
     * A line too damaged to have a name may be any entry, so that a name is never below the count of lines.
     */
    @Test
    void aFreeNameIsAboveEveryOther() {
        assertEquals("1", lines("").freeId());
        assertEquals("3", lines(line("1", "a", "x") + "\n" + line("2", "a", "x") + "\n").freeId());
        assertEquals("8", lines(line("7", "a", "x") + "\n" + line("2", "a", "x") + "\n").freeId());
        assertEquals("4", lines("damaged\n" + line("1", "a", "x") + "\ndamaged\n").freeId());
        assertEquals("2", lines(line("by hand", "a", "x") + "\n").freeId());
        assertEquals("2", lines(line("1234567890", "a", "x") + "\n").freeId());
    }

    /** Whenever it was written and under whichever name. */
    @Test
    void whatSaysTheSameIsFound() {
        JournalLines lines = lines(line("1", "a", "x") + "\n" + line("2", "b", "y") + "\n"
                + line("3", "c", "x") + "\n");
        assertEquals(List.of("1", "3"), lines.same(line("9", "d", "x")));
        assertEquals(List.of(), lines.same(line("9", "d", "z")));
    }

    @Test
    void aLineWithoutItsEndIsTorn() {
        assertEquals(new JournalLines(List.of("a", "b"), true), lines("a\nb"));
        assertEquals(new JournalLines(List.of("a", "b"), false), lines("a\nb\n"));
        assertEquals(new JournalLines(List.of(), false), lines(""));
    }
}
