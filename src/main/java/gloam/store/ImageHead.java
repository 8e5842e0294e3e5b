package gloam.store;

import com.drew.lang.ByteArrayReader;
import com.drew.lang.RandomAccessFileReader;
import gloam.units.BadInput;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What an image file says before anything of it is decoded: all that a decoder could be led astray by.
 *
 * @param kind  its kind
 * @param tags  its tags
 * @param scans how often a decoder has to go over the whole image
 */
record ImageHead(Kind kind, FrameTags tags, int scans) {

    private static final int MOST_TAGS = 1 << 20;
    private static final String SAVE_AS = "save it as JPEG, as PNG or as TIFF of 8 or 16 bits";
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    /** Kinds of images that are read, as Java's decoders are called. */
    enum Kind { JPEG, PNG, TIFF }

    /**
     * The head of a file.
     *
     * @throws BadInput when it is no such image, or one that is not read
     */
    static ImageHead of(Path file) throws IOException {
        long begin = begin(file);
        if (begin >>> 40 == 0xFFD8FF) {
            return jpeg(file);
        }
        if (begin == PNG) {
            return png(file);
        }
        int tiff = (int) (begin >>> 32);
        if (tiff == 0x49492A00 || tiff == 0x4D4D002A) {
            return tiff(file);
        }
        throw new BadInput("it is no JPEG, PNG or TIFF image; " + SAVE_AS);
    }

    private static long begin(Path file) throws IOException {
        try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
            return in.readLong();
        } catch (EOFException shortFile) {
            return 0;
        }
    }

    private static ImageHead jpeg(Path file) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file),
                1 << 16))) {
            return jpeg(in);
        } catch (EOFException cut) {
            throw new BadInput("it is cut off: its end is missing; copy it again");
        }
    }

    private static ImageHead jpeg(DataInputStream in) throws IOException {
        FrameTags tags = FrameTags.none();
        int scans = 0;
        in.readUnsignedShort();
        int marker = marker(in);
        while (marker != 0xD9) {
            int length = in.readUnsignedShort() - 2;
            if (length < 0) {
                throw new BadInput("it is damaged; copy it again");
            }
            boolean frame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8
                    && marker != 0xCC;
            byte[] part = marker == 0xE1 || frame ? in.readNBytes(length) : new byte[0];
            in.skipNBytes(length - part.length);
            if (frame && part.length > 5 && part[5] == 4) {
                throw new BadInput("its colours are those of print (CMYK); " + SAVE_AS + " in sRGB");
            }
            if (marker == 0xE1 && part.length > EXIF.length
                    && new String(part, 0, EXIF.length, StandardCharsets.US_ASCII).equals("Exif\0\0")) {
                tags = FrameTags.of(new ByteArrayReader(part, EXIF.length));
            }
            if (marker == 0xDA) {
                scans++;
            }
            marker = marker == 0xDA ? afterScan(in) : marker(in);
        }
        return new ImageHead(Kind.JPEG, tags, scans);
    }

    private static int marker(DataInputStream in) throws IOException {
        if (in.readUnsignedByte() != 0xFF) {
            throw new BadInput("it is damaged; copy it again");
        }
        int marker = 0xFF;
        while (marker == 0xFF) {
            marker = in.readUnsignedByte();
        }
        return marker;
    }

    /** The first marker behind the coded levels of a scan, in which zeros and restarts follow 0xFF. */
    private static int afterScan(DataInputStream in) throws IOException {
        int before = 0;
        while (true) {
            int now = in.readUnsignedByte();
            if (before == 0xFF && now != 0 && now != 0xFF && (now < 0xD0 || now > 0xD7)) {
                return now;
            }
            before = now;
        }
    }

    private static ImageHead png(Path file) throws IOException {
        FrameTags tags = FrameTags.none();
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            in.seek(Long.BYTES);
            String name = "";
            while (!name.equals("IEND")) {
                long length = Integer.toUnsignedLong(in.readInt());
                byte[] letters = new byte[4];
                in.readFully(letters);
                name = new String(letters, StandardCharsets.US_ASCII);
                long next = in.getFilePointer() + length + 4;
                if (next > in.length()) {
                    throw new EOFException();
                }
                if (name.equals("acTL")) {
                    throw new BadInput("it moves; give one picture alone");
                }
                if (name.equals("IHDR")) {
                    in.skipBytes(8);
                    refusePng(in.readUnsignedByte(), in.readUnsignedByte());
                }
                if (name.equals("eXIf") && length < MOST_TAGS) {
                    byte[] part = new byte[(int) length];
                    in.readFully(part);
                    tags = FrameTags.of(new ByteArrayReader(part));
                }
                in.seek(next);
            }
        } catch (EOFException cut) {
            throw new BadInput("it is cut off: its end is missing; copy it again");
        }
        return new ImageHead(Kind.PNG, tags, 1);
    }

    private static void refusePng(int bits, int colours) {
        if (bits < 8 || colours == 3) {
            throw new BadInput("it has few colours or shades; " + SAVE_AS);
        }
    }

    private static ImageHead tiff(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            FrameTags tags = FrameTags.of(new RandomAccessFileReader(in));
            int photometric = tags.number(0x0106, 2);
            if (tags.has(0xC612) || photometric > 8) {
                throw new BadInput("it is a raw file, the curve of whose levels is not known; develop it and "
                        + SAVE_AS);
            }
            if (photometric == 5) {
                throw new BadInput("its colours are those of print (CMYK); " + SAVE_AS + " in sRGB");
            }
            int bits = tags.number(0x0102, 8);
            if (photometric != 1 && photometric != 2 && photometric != 6 || bits != 8 && bits != 16
                    || tags.number(0x0153, 1) != 1) {
                throw new BadInput("its levels are of a kind that is not read; " + SAVE_AS);
            }
            refuseLargeParts(tags, bits);
            return new ImageHead(Kind.TIFF, tags, 1);
        }
    }

    /** A decoder takes strips and tiles whole. */
    private static void refuseLargeParts(FrameTags tags, int bits) {
        long width = Integer.toUnsignedLong(tags.number(0x0142, tags.number(0x0100, 0)));
        long rows = Math.min(Integer.toUnsignedLong(tags.number(0x0101, 0)),
                Integer.toUnsignedLong(tags.number(0x0116, Integer.MAX_VALUE)));
        double most = (double) width * (tags.has(0x0143) ? Integer.toUnsignedLong(tags.number(0x0143, 0))
                : rows)
                * tags.number(0x0115, 3) * bits / 8;
        if (most > FrameFile.MOST_PART_BYTES || tags.number(0x0115, 3) > 4) {
            throw new BadInput("it is laid down in parts that are too large to read; save it as PNG");
        }
    }
}
