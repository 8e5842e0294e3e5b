package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a run makes of the terminal it is on. */
class SessionTest {

    /** The convention of no-color.org: colour is left out where the variable is there and not empty. */
    @Test
    void colourIsForTerminalsThatHaveIt() {
        assertTrue(Session.coloured(true, Map.of("TERM", "xterm-256color")));
        assertTrue(Session.coloured(true, Map.of("TERM", "xterm", "NO_COLOR", "")));
        assertFalse(Session.coloured(true, Map.of("TERM", "xterm", "NO_COLOR", "1")));
        assertFalse(Session.coloured(true, Map.of("TERM", "dumb")));
        assertFalse(Session.coloured(true, Map.of()));
        assertFalse(Session.coloured(false, Map.of("TERM", "xterm")));
    }

    @ParameterizedTest
    @CsvSource({"80, 80", "200, 200", "300, 200", "12, 40", "'', 100", "-80, 100", "eighty, 100",
            "99999999999, 100"})
    void textTakesTheColumnsOfTheTerminal(String said, int columns) {
        assertEquals(columns, Session.columns(true, Map.of("COLUMNS", said)));
        assertEquals(100, Session.columns(false, Map.of("COLUMNS", said)), "redirected");
    }
}
