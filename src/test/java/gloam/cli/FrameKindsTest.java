package gloam.cli;

import static gloam.cli.PlainFrames.PLACE;
import static gloam.cli.PlainFrames.TAKEN;
import static gloam.cli.PlainFrames.grey;
import static gloam.cli.PlainFrames.run;
import static gloam.cli.PlainFrames.written;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.frame.ExifTags;
import gloam.frame.FrameMaker;
import gloam.support.Places;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.awt.image.Raster;
import java.awt.image.DataBuffer;
import java.awt.image.ComponentColorModel;
import java.awt.color.ColorSpace;
import java.awt.Transparency;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Images of every kind that cameras and programs write, held as they may be: one sky. */
class FrameKindsTest {

    @TempDir
    private Path folder;

    private double middle(String name, byte[] content, String options) throws IOException {
        Run run = run(folder, name, content, options + " --format json");
        assertEquals(0, run.exit(), name + ": " + run.err());
        JsonNode frame = JsonMapper.shared().readTree(run.out()).at("/frames/0");
        return frame.get("magArcsec2").doubleValue();
    }

    private static BufferedImage sixteenBits(double share) {
        ComponentColorModel model = new ComponentColorModel(ColorSpace.getInstance(ColorSpace.CS_sRGB), false,
                false, Transparency.OPAQUE, DataBuffer.TYPE_USHORT);
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, 300, 200, 3, null);
        int[] row = new int[900];
        Arrays.fill(row, (int) Math.round(share * 65535));
        for (int y = 0; y < 200; y++) {
            raster.setPixels(0, y, 300, 1, row);
        }
        return new BufferedImage(model, raster, false, null);
    }

    /**
     * The sky of level 60 of 255, by hand: linear 0.04519, of 0.18116 at level 118, so 7.795e-4 lx s at ISO
     * 3200; over 10 s at f/2√2 through 0.9 that is 8.82e-4 cd/m², 20.22 mag/arcsec² on the axis; the pieces
     * in the middle lie 3 mm aside and 3 mm up or down, 10 to 11° off it, and lost 0.07 to 0.08 mag by cos⁴.
     */
    @Test
    void everyKindOfImageIsTheSameSky() throws IOException {
        double level = 60 / 255.0;
        BufferedImage colour = grey(300, 200, BufferedImage.TYPE_3BYTE_BGR, level);
        double jpeg = middle("a.jpg", FrameMaker.jpeg(colour, 0.95f), TAKEN);
        assertEquals(20.22 - 0.075, jpeg, 0.02);
        assertEquals(jpeg, middle("a.png", written(colour, "png"), TAKEN), 0.011);
        assertEquals(jpeg, middle("a.tif", written(colour, "tiff"), TAKEN), 0.011);
        assertEquals(jpeg, middle("grey.png",
                written(grey(300, 200, BufferedImage.TYPE_BYTE_GRAY, level), "png"), TAKEN), 0.011);
        assertEquals(jpeg, middle("grey.jpg",
                FrameMaker.jpeg(grey(300, 200, BufferedImage.TYPE_BYTE_GRAY, level), 0.95f), TAKEN), 0.02);
        assertEquals(jpeg, middle("alpha.png",
                written(grey(300, 200, BufferedImage.TYPE_4BYTE_ABGR, level), "png"), TAKEN), 0.011);
        assertEquals(jpeg, middle("16.png", written(sixteenBits(level), "png"), TAKEN), 0.011);
        assertEquals(jpeg, middle("16.tif", written(sixteenBits(level), "tiff"), TAKEN), 0.011);
        assertEquals(jpeg, middle("linear.png", written(sixteenBits(0.04519), "png"), TAKEN + " --linear"),
                0.011);
        assertEquals(jpeg, middle("large.png",
                written(grey(4500, 3000, BufferedImage.TYPE_3BYTE_BGR, level), "png"), TAKEN), 0.011);
    }

    /** A camera held on its side says so; the frame is turned before its stars are looked for. */
    @Test
    void theFrameIsTurnedAsItsTagsSay() throws IOException {
        FrameMaker maker = new FrameMaker(Places.at(44.2, 9.7, 620));
        maker.width = 600;
        maker.height = 900;
        maker.widthMm = 24;
        maker.altitudeDeg = 45;
        BufferedImage upright = maker.picture();
        BufferedImage lying = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 900; y++) {
            for (int x = 0; x < 600; x++) {
                lying.setRGB(y, 599 - x, upright.getRGB(x, y));
            }
        }
        ExifTags tags = maker.tags().orientation(6);
        Run run = run(folder, "side.jpg", tags.into(FrameMaker.jpeg(lying, 0.92f)), PLACE + " --format json");
        assertEquals(0, run.exit(), run.err());
        JsonNode frame = JsonMapper.shared().readTree(run.out()).at("/frames/0");
        assertEquals(170, frame.get("azimuthDeg").doubleValue(), 0.05);
        assertEquals(45, frame.get("altitudeDeg").doubleValue(), 0.05);
        assertEquals(0, frame.get("rollDeg").doubleValue(), 0.1);
        assertEquals(1.5, frame.get("heightFraction").doubleValue(), 1e-6);
    }
}
