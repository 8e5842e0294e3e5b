package gloam.cli;

import static gloam.cli.PlainFrames.TAKEN;
import static gloam.cli.PlainFrames.grey;
import static gloam.cli.PlainFrames.run;
import static gloam.cli.PlainFrames.written;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.ExifTags;
import gloam.frame.FrameMaker;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Images that are odd, damaged or hostile: measured, or refused in one line, soon and in little memory.
 */
class HostileFramesTest {

    @TempDir
    Path folder;

    private void refused(String name, byte[] content, String why) throws IOException {
        Run run = run(folder, name, content, TAKEN);
        assertEquals(2, run.exit(), name + ": " + run.out() + run.err());
        assertEquals(2, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith("cannot read " + folder.resolve(name) + ": " + why), run.err());
    }

    @Test
    void whatIsNoImageOrAnotherKindIsNamed() throws IOException {
        refused("text.jpg", "not an image at all, but words".getBytes(StandardCharsets.UTF_8),
                "it is no JPEG");
        refused("empty.jpg", new byte[0], "it is no JPEG");
        refused("moves.gif", written(grey(300, 200, BufferedImage.TYPE_INT_RGB, 0.2), "gif"),
                "it is no JPEG");
        refused("small.png", written(grey(20, 20, BufferedImage.TYPE_INT_RGB, 0.2), "png"),
                "it is only 20 × 20");
        refused("palette.png", written(grey(300, 200, BufferedImage.TYPE_BYTE_INDEXED, 0.2), "png"),
                "it has few colours");
        Run folderRun = Run.of(("measure " + folder + " " + TAKEN).split(" "));
        assertTrue(folderRun.err().contains("it is not a plain file"), folderRun.err());
        Run none = Run.of(("measure " + folder.resolve("none.jpg") + " " + TAKEN).split(" "));
        assertTrue(none.err().contains("no such file"), none.err());
    }

    @Test
    void cutAndDamagedImagesAreRefused() throws IOException {
        BufferedImage noise = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(4);
        for (int i = 0; i < 120_000; i++) {
            noise.setRGB(i % 400, i / 400, random.nextInt(1 << 24));
        }
        byte[] jpeg = FrameMaker.jpeg(noise, 0.9f);
        byte[] png = written(noise, "png");
        byte[] tiff = written(noise, "tiff");
        refused("cut.jpg", Arrays.copyOf(jpeg, jpeg.length * 2 / 3), "it is cut off");
        refused("cut.png", Arrays.copyOf(png, png.length * 2 / 3), "it is cut off");
        refused("cut.tif", Arrays.copyOf(tiff, tiff.length * 2 / 3), "it is damaged");
        for (int i = 0; i < 40; i++) {
            byte[] bad = (i % 3 == 0 ? jpeg : i % 3 == 1 ? png : tiff).clone();
            for (int hit = 0; hit < 1 + i; hit++) {
                bad[random.nextInt(i % 2 == 0 ? 600 : bad.length)] = (byte) random.nextInt();
            }
            Run run = run(folder, "bad" + i, bad, TAKEN);
            assertTrue(run.exit() == 0 || run.exit() == 2 && run.err().lines().count() == 2,
                    i + ": " + run.err());
        }
    }

    private static byte[] chunk(String name, byte[] content) {
        byte[] both = ByteBuffer.allocate(4 + content.length).put(name.getBytes(StandardCharsets.US_ASCII))
                .put(content).array();
        CRC32 sum = new CRC32();
        sum.update(both);
        return ByteBuffer.allocate(8 + both.length).putInt(content.length).put(both)
                .putInt((int) sum.getValue())
                .array();
    }

    private static byte[] png(int width, int height, byte[]... chunks) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        out.writeBytes(chunk("IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8)
                .put((byte) 2).array()));
        for (byte[] chunk : chunks) {
            out.writeBytes(chunk);
        }
        out.writeBytes(chunk("IEND", new byte[0]));
        return out.toByteArray();
    }

    private static byte[] zeros(int length) {
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[length]);
        deflater.finish();
        byte[] packed = new byte[length / 500 + 100];
        return Arrays.copyOf(packed, deflater.deflate(packed));
    }

    /**
     * What unfolds to more than anybody has is refused by its head, and what hides in a corner is not
     * unfolded.
     */
    @Test
    void bombsStayFolded() throws IOException {
        byte[] little = chunk("IDAT", zeros(1000));
        refused("wide.png", png(60_000, 60_000, little), "it has 3600 million pixels; at most 100 million");
        refused("moves.png", png(300, 200, chunk("acTL", new byte[8]), little), "it moves");
        byte[] note = ByteBuffer.allocate(5 + zeros(200_000_000).length).put("x".getBytes()).put((byte) 0)
                .put((byte) 0).put(zeros(200_000_000)).array();
        Run run = run(folder, "note.png",
                png(300, 200, chunk("zTXt", note), chunk("IDAT", zeros(200 * 901))), TAKEN);
        assertEquals(2, run.exit());
        assertTrue(run.err().startsWith("the frame is black"), run.err());
        byte[] jpeg = FrameMaker.jpeg(grey(300, 200, BufferedImage.TYPE_3BYTE_BGR, 0.2), 0.9f);
        for (int i = 2; i < jpeg.length - 8; i++) {
            if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0) {
                byte[] wide = jpeg.clone();
                wide[i + 5] = (byte) 0xEA;
                wide[i + 7] = (byte) 0xEA;
                refused("wide.jpg", wide, "it has ");
                byte[] print = jpeg.clone();
                print[i + 9] = 4;
                refused("print.jpg", print, "its colours are those of print (CMYK)");
            }
        }
    }

    /** Tags that lead in circles, point nowhere or claim to be endless say nothing, and do no harm. */
    @Test
    void hostileTagsSayNothing() throws IOException {
        byte[] bare = FrameMaker.jpeg(grey(300, 200, BufferedImage.TYPE_3BYTE_BGR, 0.2), 0.9f);
        byte[] block = new ExifTags().camera("A").iso(3200).fNumber(2.8).exposureS(10).block();
        Random random = new Random(9);
        for (int i = 0; i < 60; i++) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] bad = block.clone();
            for (int hit = 0; hit < 1 + i / 10; hit++) {
                bad[4 + random.nextInt(bad.length - 4)] = (byte) (random.nextBoolean() ? 0xFF
                        : random.nextInt());
            }
            out.write(bare, 0, 2);
            int length = bad.length + 8;
            out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
            out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
            out.writeBytes(bad);
            out.write(bare, 2, bare.length - 2);
            Run run = run(folder, "tags" + i + ".jpg", out.toByteArray(), TAKEN);
            assertEquals(0, run.exit(), i + ": " + run.err());
        }
    }
}
