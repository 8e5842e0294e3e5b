package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.awt.image.DataBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;

/** Images without stars, and what is measured on them. */
final class PlainFrames {

    static final String PLACE = "--place 44.2,9.7,620 --zone UTC";
    static final String TAKEN = PLACE + " --f-number 2.8 --iso 3200 --exposure 10s --focal-length 24 "
            + "--frame 36x24 --at 2027-02-08T21:30Z --azimuth 170 --altitude 40";

    private PlainFrames() {
    }

    static Run run(Path folder, String name, byte[] content, String options) throws IOException {
        Path file = Files.write(folder.resolve(name), content);
        return Run.of(("measure " + file + " " + options).split(" "));
    }

    /** An even grey sky of a level of 255, as if taken. */
    static BufferedImage grey(int width, int height, int type, double share) {
        BufferedImage picture = new BufferedImage(width, height, type);
        WritableRaster raster = picture.getRaster();
        int most = raster.getDataBuffer().getDataType() == DataBuffer.TYPE_USHORT ? 65535 : 255;
        int[] row = new int[width * raster.getNumBands()];
        Arrays.fill(row, (int) Math.round(share * most));
        for (int y = 0; y < height; y++) {
            raster.setPixels(0, y, width, 1, row);
        }
        return picture;
    }

    static byte[] written(BufferedImage picture, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            assertTrue(ImageIO.write(picture, format, out), format);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return out.toByteArray();
    }
}
