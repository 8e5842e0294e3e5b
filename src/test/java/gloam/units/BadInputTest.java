package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BadInputTest {

    @Test
    void keepsALineAProblemInOrder() {
        BadInput bad = new BadInput(List.of("first", "second"));
        assertEquals(List.of("first", "second"), bad.problems());
        assertEquals("first\nsecond", bad.getMessage());
    }

    @Test
    void tellsWhereEachCameFrom() {
        assertEquals(List.of("first (--lat)", "second (--lat)"),
                new BadInput(List.of("first", "second")).from("--lat").problems());
    }
}
