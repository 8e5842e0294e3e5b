package gloam.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReferenceTableTest {

    private static final List<String> TABLE = List.of(
            "# source: a book", "# retrieved: 2027-01-01", "# units: mm", "# tolerance and why: 1, because",
            "utc, name, x_mm", "2027-02-06T22:00:00Z, first, -1.5", "2027-02-06T23:00:00Z, , 2");

    @Test
    void givesRowsByColumn() {
        ReferenceTable table = ReferenceTable.of("table", TABLE);
        assertEquals(List.of("utc", "name", "x_mm"), table.columns());
        assertEquals(4, table.header().size());
        ReferenceTable.Row row = table.rows().get(0);
        assertEquals(Instant.parse("2027-02-06T22:00:00Z"), row.instant("utc"));
        assertEquals("first", row.text("name"));
        assertEquals(-1.5, row.number("x_mm"));
        assertTrue(row.has("name"));
        assertFalse(table.rows().get(1).has("name"));
    }

    @Test
    void refusesATableThatDoesNotTellWhereItIsFrom() {
        for (int left = 0; left < 4; left++) {
            int without = left;
            List<String> lines = TABLE.stream().filter(line -> !line.equals(TABLE.get(without))).toList();
            assertThrows(IllegalArgumentException.class, () -> ReferenceTable.of("table", lines));
        }
    }

    @Test
    void refusesWhatIsMissing() {
        assertThrows(IllegalArgumentException.class, () -> ReferenceTable.read("nowhere/nothing.csv"));
        assertThrows(IllegalArgumentException.class, () -> ReferenceTable.of("table", TABLE.subList(0, 5)));
        assertThrows(IllegalArgumentException.class,
                () -> ReferenceTable.of("table", TABLE).rows().get(0).text("y_mm"));
    }
}
