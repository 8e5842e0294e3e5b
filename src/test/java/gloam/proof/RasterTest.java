package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.gear.Frame;
import gloam.units.BadInput;
import org.junit.jupiter.api.Test;

class RasterTest {

    @Test
    void pixelsAreSquareAndCoverTheFrame() {
        Raster raster = Raster.of(new Frame(84, 56), 600);
        assertEquals(600, raster.widthPx());
        assertEquals(400, raster.heightPx());
        assertEquals(-42 + 0.07, raster.xMm(0), 1e-12);
        assertEquals(28 - 0.07, raster.yMm(0), 1e-12);
    }

    @Test
    void placesAndPixelsAreEachOthersInverse() {
        Raster raster = Raster.of(new Frame(90, 120), 333);
        assertEquals(17.25, raster.column(raster.xMm(17.25)), 1e-9);
        assertEquals(200.5, raster.row(raster.yMm(200.5)), 1e-9);
    }

    @Test
    void refusesPicturesOfNothingAndOfTooMuch() {
        assertThrows(BadInput.class, () -> Raster.of(new Frame(80, 80), 2));
        assertThrows(BadInput.class, () -> Raster.of(new Frame(80, 80), 100_000));
    }
}
