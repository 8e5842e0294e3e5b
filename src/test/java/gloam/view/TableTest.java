package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {

    @Test
    void numbersStandRightAndWordsLeft() {
        Table table = new Table(2, Table.words("wish"), Table.numbers("trail mm")).row("pole", "7").row("Mars", "128");
        assertEquals(List.of("  wish  trail mm", "  pole         7", "  Mars       128"), table.at(100));
    }

    @Test
    void wideLettersTakeTwoColumnsAndMarksNone() {
        Table table = new Table(0, Table.words("site"), Table.numbers("h")).row("星空", "1").row("e\u0301te\u0301", "2");
        assertEquals(List.of("site  h", "星空  1", "e\u0301te\u0301   2"), table.at(100));
    }

    @Test
    void tooWideWordsRunOnBelow() {
        Table table = new Table(0, Table.numbers("rank"), Table.words("why")).row("1", "dark all night ".repeat(12));
        assertEquals(3, table.at(100).size());
        assertTrue(table.at(100).stream().allMatch(line -> line.length() <= 100));
    }

    @Test
    void whereColumnsDoNotFitWordsGiveWayFirst() {
        Table table = new Table(0, Table.words("wish"), Table.numbers("faintest star mag"), Table.words("site"))
                .row("The long arm of the galaxy", "5.2", "Loma").note("because");
        assertEquals(List.of("wish              faintest star mag  site", "The long arm of                 5.2  Loma", "the galaxy",
                "    because"), table.at(41));
    }

    @Test
    void thenTitlesOfNumbers() {
        Table table = new Table(0, Table.words("wish"), Table.numbers("faintest star mag"), Table.words("site"))
                .row("The long arm of the galaxy", "5.2", "Loma");
        assertEquals(List.of("wish              faintest  site", "                  star mag",
                "The long arm of        5.2  Loma", "the galaxy"), table.at(32));
    }

    @Test
    void rowsThatFitInNoColumnsAreToldOneAfterTheOther() {
        Table table = new Table(0, Table.words(""), Table.numbers("opened"), Table.numbers("f/"), Table.words("film"))
                .row("Mars", "2027-02-08", "11", "instant-mono-640").note("because").row("Moon", "2027-02-09", "8", "");
        assertEquals(List.of("- Mars, opened", "  2027-02-08, f/ 11,", "  film", "  instant-mono-640", "    because", "- Moon, opened",
                "  2027-02-09, f/ 8"), table.at(20));
    }

    @Test
    void notesStandUnderTheirRow() {
        Table table = new Table(2, Table.words("a")).row("x").note("because").row("y");
        assertEquals(List.of("  a", "  x", "      because", "  y"), table.at(100));
    }

    @Test
    void aRowHasACellForEachColumn() {
        Table table = new Table(0, Table.words("a"), Table.words("b"));
        assertThrows(IllegalArgumentException.class, () -> table.row("x"));
    }
}
