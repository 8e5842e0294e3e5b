package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How a table is laid out in lines; it stands two columns in. */
class TableTest {

    private static final Table LION = new Table(Table.words("wish"), Table.numbers("faintest star", "mag"),
            Table.words("site")).row("The long arm of the galaxy", "5.2", "Loma");

    @Test
    void numbersStandRightAndWordsLeft() {
        Table table = new Table(Table.words("wish"), Table.numbers("trail", "mm")).row("pole", "7")
                .row("Mars", "128");
        assertEquals(List.of("  wish  trail mm", "  pole         7", "  Mars       128"), at(100, table));
    }

    @Test
    void wideLettersTakeTwoColumnsAndMarksNone() {
        Table table = new Table(Table.words("site"), Table.numbers("h")).row("星空", "1")
                .row("e\u0301te\u0301", "2");
        assertEquals(List.of("  site  h", "  星空  1", "  e\u0301te\u0301   2"), at(100, table));
    }

    @Test
    void tooWideWordsRunOnBelow() {
        Table table = new Table(Table.numbers("rank"), Table.words("why"))
                .row("1", "dark all night ".repeat(12));
        assertEquals(3, at(100, table).size());
        assertTrue(at(100, table).stream().allMatch(line -> line.length() <= 100));
    }

    @Test
    void whereColumnsDoNotFitWordsGiveWayFirst() {
        assertEquals(List.of("  wish              faintest star mag  site",
                "  The long arm of                 5.2  Loma", "  the galaxy"), at(43, LION));
    }

    @Test
    void thenTitlesOfNumbers() {
        assertEquals(List.of("  wish              faintest  site", "                    star mag",
                "  The long arm of        5.2  Loma", "  the galaxy"), at(34, LION));
    }

    @Test
    void thenColumnsLeaveInTheirOrderAndAreToldUnderTheirRow() {
        Table table = new Table(Table.words("wish"), Table.numbers("faintest", "mag").leaving(2),
                Table.numbers("azimuth", "°").leaving(1), Table.words("moon").leaving(1))
                .row("The long arm of the galaxy", "5.2", "180", "").note("because")
                .row("Mars", "none", "7", "up");
        assertEquals(List.of("  wish                faintest mag", "  The long arm of              5.2",
                "  the galaxy", "      azimuth 180°", "      because", "  Mars                        none",
                "      azimuth 7°, moon up"), at(34, table));
        assertEquals(List.of("  wish", "  The long arm of the", "  galaxy", "      faintest 5.2 mag,",
                "      azimuth 180°",
                "      because", "  Mars", "      faintest mag none,", "      azimuth 7°, moon", "      up"),
                at(24, table));
    }

    /** One word a line is hard to read. */
    @Test
    void columnsLeaveRatherThanCellsTakeManyLines() {
        Table table = new Table(Table.words("wish"), Table.numbers("faintest", "mag").leaving(1))
                .row("The long arm of the galaxy", "5.2");
        assertEquals(List.of("  wish             faintest", "                        mag",
                "  The long arm of       5.2", "  the galaxy"), at(27, table));
        assertEquals(List.of("  wish", "  The long arm of the", "  galaxy", "      faintest 5.2 mag"),
                at(24, table));
    }

    @Test
    void rowsThatFitInNoColumnsAreToldOneAfterTheOther() {
        Table table = new Table(Table.words(""), Table.numbers("opened"), Table.numbers("f/"),
                Table.words("film"))
                .row("Mars", "2027-02-08", "11", "instant-mono-640").note("because")
                .row("Moon", "2027-02-09", "8", "");
        assertEquals(List.of("  - Mars, opened", "    2027-02-08, f/11,", "    film", "    instant-mono-640",
                "      because", "  - Moon, opened", "    2027-02-09, f/8"), at(22, table));
    }

    @Test
    void notesStandUnderTheirRow() {
        Table table = new Table(Table.words("a")).row("x").note("because").row("y");
        assertEquals(List.of("  a", "  x", "      because", "  y"), at(100, table));
    }

    @Test
    void aRowHasACellForEachColumn() {
        Table table = new Table(Table.words("a"), Table.words("b"));
        assertThrows(IllegalArgumentException.class, () -> table.row("x"));
    }

    private static List<String> at(int width, Table table) {
        return new TextPrinter(width).lines(Document.part().add(table));
    }
}
