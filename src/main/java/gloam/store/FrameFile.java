package gloam.store;

import gloam.frame.FrameData;
import gloam.frame.LightImage;
import gloam.frame.SrgbCurve;
import gloam.units.BadInput;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/**
 * Reads images, JPEG, PNG and TIFF, as light. What an image is like is known before it is decoded, and it is
 * decoded in strips, several pixels made one where there are many.
 */
public final class FrameFile {

    /** Most pixels of an image. */
    static final long MOST_PIXELS = 100_000_000;
    /** Most bytes that a decoder takes at once. */
    static final long MOST_PART_BYTES = 256L << 20;
    private static final long MOST_BYTES = 700L << 20;
    private static final int LEAST_SIDE = 200;
    /** Pixels that are kept. */
    private static final int KEPT_PIXELS = 6_000_000;
    private static final int STRIP_PIXELS = 8_000_000;
    /** Images that a decoder has to go over more than once are held by it whole. */
    private static final long MOST_PIXELS_OF_SCANS = 50_000_000;
    private static final int MOST_SCANS = 100;
    /** Levels from here on may be more than white. */
    private static final double CLIPPED = 250 / 255.0;
    private static final int ORIENTATION = 0x0112;

    private FrameFile() {
    }

    /**
     * An image as it was read.
     *
     * @param name  the name of its file
     * @param image its light
     * @param data  what it says of how it was taken
     */
    public record Read(String name, LightImage image, FrameData data) {
    }

    /**
     * Reads an image.
     *
     * @param linear whether its levels are proportional to light, where they follow the sRGB curve else
     * @throws BadInput when it cannot be read, with the name of the file
     */
    public static Read read(Input input, boolean linear) {
        Path file = input.file();
        try {
            if (!Files.exists(file)) {
                throw new BadInput("no such file; check the name and the folder you are in");
            }
            if (!Files.isRegularFile(file)) {
                throw new BadInput("it is not a plain file; name an image on disk");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new BadInput("it is larger than " + (MOST_BYTES >> 20) + " MiB; make it smaller");
            }
            ImageHead head = ImageHead.of(file);
            LightImage image = decoded(file, head, linear).turned(head.tags().number(ORIENTATION, 1));
            return new Read(input.shown(), image, head.tags().data());
        } catch (BadInput bad) {
            throw new BadInput("cannot read " + input.shown() + ": " + bad.getMessage());
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + input.shown()
                    + ": it is damaged or cannot be opened; copy it again");
        }
    }

    private static LightImage decoded(Path file, ImageHead head, boolean linear) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(head.kind().name().toLowerCase(Locale.ROOT))
                .next();
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            reader.setInput(in, false, true);
            return decoded(reader, head, linear);
        } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException
                | NegativeArraySizeException | ArithmeticException | NullPointerException
                | ClassCastException damaged) {
            // so Java's decoders answer what is damaged
            throw new IOException(damaged);
        } finally {
            reader.dispose();
        }
    }

    private static LightImage decoded(ImageReader reader, ImageHead head, boolean linear) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        long pixels = (long) width * height;
        if (pixels > MOST_PIXELS) {
            throw new BadInput("it has " + pixels / 1_000_000 + " million pixels; at most "
                    + MOST_PIXELS / 1_000_000 + " million are read; make it smaller");
        }
        if (Math.min(width, height) < LEAST_SIDE) {
            throw new BadInput("it is only " + width + " × " + height + " pixels; " + LEAST_SIDE
                    + " on each side are needed");
        }
        if (head.scans() > 1 && pixels > MOST_PIXELS_OF_SCANS || head.scans() > MOST_SCANS) {
            throw new BadInput("it is a progressive JPEG too large to read; save it as a plain one");
        }
        int together = (int) Math.ceil(Math.sqrt((double) pixels / KEPT_PIXELS));
        LightImage image = new LightImage(width / together, height / together);
        int rows = head.scans() > 1 ? height : Math.max(1, STRIP_PIXELS / width / together) * together;
        boolean[] damaged = {false};
        reader.addIIOReadWarningListener((source, warning) -> damaged[0] |= warning.contains("orrupt")
                || warning.contains("remature"));
        for (int top = 0; top < height; top += rows) {
            ImageReadParam part = reader.getDefaultReadParam();
            part.setSourceRegion(new Rectangle(0, top, width, Math.min(rows, height - top)));
            add(reader.read(0, part), image, top, together, linear);
        }
        if (damaged[0]) {
            throw new IOException("damaged");
        }
        return image;
    }

    /** Adds the light of a strip. */
    private static void add(BufferedImage strip, LightImage image, int top, int together, boolean linear) {
        Raster raster = strip.getRaster();
        int bands = raster.getNumBands();
        boolean colour = bands >= 3;
        float[] light = lights(raster.getDataBuffer().getDataType(), linear);
        int clipped = (int) (CLIPPED * (light.length - 1));
        float share = 1f / (together * together);
        int[] levels = new int[raster.getWidth() * bands];
        for (int row = 0; row < raster.getHeight(); row++) {
            int y = (top + row) / together;
            if (y >= image.height()) {
                return;
            }
            raster.getPixels(0, row, raster.getWidth(), 1, levels);
            for (int i = 0; i / together < image.width() && i < raster.getWidth(); i++) {
                int first = levels[i * bands];
                int second = colour ? levels[i * bands + 1] : first;
                int third = colour ? levels[i * bands + 2] : first;
                int x = i / together;
                image.add(x, y, share * (float) (SrgbCurve.LUMINANCE[0] * light[first]
                        + SrgbCurve.LUMINANCE[1] * light[second] + SrgbCurve.LUMINANCE[2] * light[third]));
                if (Math.max(first, Math.max(second, third)) >= clipped) {
                    image.clip(x, y);
                }
            }
        }
    }

    /** Light by level. */
    private static float[] lights(int type, boolean linear) {
        if (type != DataBuffer.TYPE_BYTE && type != DataBuffer.TYPE_USHORT) {
            throw new BadInput("its levels are of a kind that is not read; save it with 8 or 16 bits");
        }
        float[] light = new float[type == DataBuffer.TYPE_BYTE ? 1 << 8 : 1 << 16];
        for (int level = 0; level < light.length; level++) {
            double share = (double) level / (light.length - 1);
            light[level] = (float) (linear ? share : SrgbCurve.light(share));
        }
        return light;
    }
}
