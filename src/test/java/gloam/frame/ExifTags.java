package gloam.frame;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Tags of an image as Exif 2.32 lays them down, little end first. */
public final class ExifTags {

    private record Tag(int number, int type, int count, byte[] value) {
    }

    private final List<Tag> first = new ArrayList<>();
    private final List<Tag> exif = new ArrayList<>();

    private static ByteBuffer bytes(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static Tag text(int number, String text) {
        byte[] ascii = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        return new Tag(number, 2, ascii.length, ascii);
    }

    private static Tag whole(int number, int value) {
        return new Tag(number, 3, 1, bytes(4).putShort((short) value).array());
    }

    private static Tag ratio(int number, double value) {
        return new Tag(number, 5, 1, bytes(8).putInt((int) Math.round(value * 1000)).putInt(1000).array());
    }

    public ExifTags camera(String name) {
        first.add(text(0x0110, name));
        return this;
    }

    public ExifTags orientation(int orientation) {
        first.add(whole(0x0112, orientation));
        return this;
    }

    public ExifTags exposureS(double seconds) {
        exif.add(ratio(0x829A, seconds));
        return this;
    }

    public ExifTags fNumber(double number) {
        exif.add(ratio(0x829D, number));
        return this;
    }

    public ExifTags iso(int iso) {
        exif.add(whole(0x8827, iso));
        return this;
    }

    /** What the ISO setting counts: 1 standard output sensitivity, 2 recommended exposure index. */
    public ExifTags index(int type) {
        exif.add(whole(0x8830, type));
        return this;
    }

    /** When the shutter opened, by a clock that keeps UTC and says so. */
    public ExifTags openedAt(Instant at) {
        exif.add(text(0x9003, DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT)
                .format(at.atOffset(ZoneOffset.UTC))));
        exif.add(text(0x9011, "+00:00"));
        return this;
    }

    public ExifTags focalMm(double mm) {
        exif.add(ratio(0x920A, mm));
        return this;
    }

    public ExifTags sameAs35Mm(int mm) {
        exif.add(whole(0xA405, mm));
        return this;
    }

    public ExifTags rendered() {
        exif.add(whole(0xA401, 1));
        return this;
    }

    /** The same without a tag. */
    public ExifTags without(int number) {
        exif.removeIf(tag -> tag.number == number);
        return this;
    }

    /** The block as it stands in a file. */
    public byte[] block() {
        List<Tag> top = new ArrayList<>(first);
        int exifAt = 8 + size(first.size() + 1, first);
        top.add(new Tag(0x8769, 4, 1, bytes(4).putInt(exifAt).array()));
        ByteBuffer all = bytes(exifAt + size(exif.size(), exif));
        all.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        directory(all, top);
        directory(all, exif);
        return all.array();
    }

    private static int size(int tags, List<Tag> of) {
        return 2 + 12 * tags + 4 + of.stream()
                .mapToInt(tag -> tag.value.length > 4 ? tag.value.length + 1 & ~1 : 0)
                .sum();
    }

    private static void directory(ByteBuffer all, List<Tag> tags) {
        int data = all.position() + 2 + 12 * tags.size() + 4;
        all.putShort((short) tags.size());
        for (Tag tag : tags.stream().sorted(Comparator.comparingInt(Tag::number)).toList()) {
            all.putShort((short) tag.number).putShort((short) tag.type).putInt(tag.count);
            if (tag.value.length <= 4) {
                all.put(java.util.Arrays.copyOf(tag.value, 4));
            } else {
                all.putInt(data);
                int here = all.position();
                all.position(data);
                all.put(tag.value);
                data = all.position() + 1 & ~1;
                all.position(here);
            }
        }
        all.putInt(0);
        all.position(data);
    }

    /** A JPEG with them. */
    public byte[] into(byte[] jpeg) {
        byte[] block = block();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        int length = block.length + 8;
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
        out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(block);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
