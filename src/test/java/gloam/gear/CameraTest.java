package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class CameraTest {

    private static final Lens LENS =
            new Lens(120, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE);

    @Test
    void refusesAChangeoverThatCannotBe() {
        Frame frame = new Frame(80, 80);
        assertEquals("changeover -1 min is out of range; give 0 … 240 min", assertThrows(BadInput.class,
                () -> new Camera("camera", LENS, frame, Duration.ofMinutes(-1))).getMessage());
        assertEquals(Duration.ofSeconds(90), new Camera("camera", LENS, frame, Duration.ofSeconds(90))
                .changeover());
    }
}
