package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import org.junit.jupiter.api.Test;

class FrameTest {

    @Test
    void itsEdgeBelongsToIt() {
        Frame frame = new Frame(80, 60);
        assertTrue(frame.contains(40, -30));
        assertFalse(frame.contains(40.001, 0));
        assertFalse(frame.contains(0, -30.001));
    }

    @Test
    void refusesSidesThatNoSheetHas() {
        assertEquals("frame side 4 mm is out of range; give 5 … 1000 mm",
                assertThrows(BadInput.class, () -> new Frame(4, 60)).getMessage());
        assertThrows(BadInput.class, () -> new Frame(60, 1001));
    }
}
