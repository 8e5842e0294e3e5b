package gloam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {

    @Test
    void numbersStandRightAndWordsLeft() {
        Table table = new Table(2, Table.words("wish"), Table.numbers("trail mm")).row("pole", "7").row("Mars", "128");
        assertEquals(List.of("  wish  trail mm", "  pole         7", "  Mars       128"), table.lines());
    }

    @Test
    void wideLettersTakeTwoColumnsAndMarksNone() {
        Table table = new Table(0, Table.words("site"), Table.numbers("h")).row("星空", "1").row("e\u0301te\u0301", "2");
        assertEquals(List.of("site  h", "星空  1", "e\u0301te\u0301   2"), table.lines());
    }

    @Test
    void tooWideWordsRunOnBelow() {
        Table table = new Table(0, Table.numbers("rank"), Table.words("why")).row("1", "dark all night ".repeat(12));
        assertEquals(3, table.lines().size());
        assertTrue(table.lines().stream().allMatch(line -> line.length() <= 100));
    }

    @Test
    void notesStandUnderTheirRow() {
        Table table = new Table(2, Table.words("a")).row("x").note("because").row("y");
        assertEquals(List.of("  a", "  x", "      because", "  y"), table.lines());
    }

    @Test
    void aRowHasACellForEachColumn() {
        Table table = new Table(0, Table.words("a"), Table.words("b"));
        assertThrows(IllegalArgumentException.class, () -> table.row("x"));
    }
}
