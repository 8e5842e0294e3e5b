package gloam.store;

import com.drew.imaging.tiff.TiffProcessingException;
import com.drew.imaging.tiff.TiffReader;
import com.drew.lang.RandomAccessReader;
import com.drew.lang.Rational;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.tiff.DirectoryTiffHandler;
import gloam.frame.FrameData;
import gloam.frame.Taken;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Range;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * The tags of an image (Exif 2.32, TIFF 6.0): those of its first directory and of that on how it was taken.
 * Nothing long is read, nor what a maker notes for itself, nor previews.
 */
final class FrameTags {

    private static final int EXIF = 0x8769;
    private static final int LONGEST = 4096;
    private static final int CAMERA = 0x0110;
    private static final int F_NUMBER = 0x829D;
    private static final int EXPOSURE = 0x829A;
    private static final int ISO = 0x8827;
    private static final int INDEX = 0x8830;
    private static final int OUTPUT_SENSITIVITY = 0x8831;
    private static final int RECOMMENDED_INDEX = 0x8832;
    private static final int ISO_SPEED = 0x8833;
    /** The ISO setting of old is at most this, and then stands for a larger one told elsewhere. */
    private static final double ISO_LIMIT = 65535;
    private static final int TAKEN_AT = 0x9003;
    private static final int OFFSET = 0x9011;
    private static final int FOCAL_LENGTH = 0x920A;
    private static final int SAME_AS_35_MM = 0xA405;
    private static final int CUSTOM_RENDERED = 0xA401;
    private static final int CONTRAST = 0xA408;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss",
            Locale.ROOT);
    private static final Range SAME_AS = new Range("focal length as on 36 × 24 mm", 3, 4000, "mm");

    private final Metadata read = new Metadata();

    private FrameTags() {
    }

    /** No tags. */
    static FrameTags none() {
        return new FrameTags();
    }

    /** The tags that a reader has; those before the first damaged one where some are. */
    static FrameTags of(RandomAccessReader reader) {
        FrameTags tags = new FrameTags();
        try {
            new TiffReader().processTiff(reader, tags.new Handler(), 0);
        } catch (TiffProcessingException | IOException damaged) {
            return tags;
        }
        return tags;
    }

    private final class Handler extends DirectoryTiffHandler {

        Handler() {
            super(read, null);
        }

        @Override
        public void setTiffMarker(int marker) throws TiffProcessingException {
            if (marker != 0x2A) {
                throw new TiffProcessingException("no TIFF");
            }
            pushDirectory(ExifIFD0Directory.class);
        }

        @Override
        public boolean tryEnterSubIfd(int tag) {
            if (tag == EXIF) {
                pushDirectory(ExifSubIFDDirectory.class);
            }
            return tag == EXIF;
        }

        @Override
        public boolean hasFollowerIfd() {
            return false;
        }

        @Override
        public Long tryCustomProcessFormat(int tag, int format, long count) {
            return null;
        }

        @Override
        public boolean customProcessTag(int offset, Set<Integer> seen, int start, RandomAccessReader reader,
                int tag, int bytes) {
            return bytes > LONGEST;
        }
    }

    private <T> Optional<T> tag(int tag, Function<Directory, T> value) {
        for (Directory directory : read.getDirectories()) {
            if (directory.containsTag(tag)) {
                return Optional.ofNullable(value.apply(directory));
            }
        }
        return Optional.empty();
    }

    /** The number of a tag, of several the first; null where it is none. */
    private static Rational first(Directory directory, int tag) {
        Object value = directory.getObject(tag);
        return value instanceof int[] some && some.length > 0 ? new Rational(some[0], 1)
                : value instanceof long[] many && many.length > 0 ? new Rational(many[0], 1)
                : directory.getRational(tag);
    }

    /** A whole number, or another where the tag is not there. */
    int number(int tag, int otherwise) {
        return tag(tag, directory -> first(directory, tag)).map(Rational::intValue).orElse(otherwise);
    }

    /** Whether there is such a tag. */
    boolean has(int tag) {
        return read.getFirstDirectoryOfType(ExifIFD0Directory.class) != null
                && read.getFirstDirectoryOfType(ExifIFD0Directory.class).containsTag(tag);
    }

    private OptionalDouble number(int tag, Range allowed) {
        return tag(tag, directory -> first(directory, tag)).map(Rational::doubleValue)
                .filter(value -> value >= allowed.least() && value <= allowed.most())
                .map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private Optional<String> text(int tag) {
        return tag(tag, directory -> directory.getString(tag)).map(String::strip)
                .filter(text -> !text.isEmpty());
    }

    private OptionalDouble iso() {
        OptionalDouble iso = number(ISO, Taken.ISO);
        if (iso.isPresent() && iso.getAsDouble() < ISO_LIMIT) {
            return iso;
        }
        for (int tag : new int[] {OUTPUT_SENSITIVITY, RECOMMENDED_INDEX, ISO_SPEED}) {
            OptionalDouble more = number(tag, Taken.ISO);
            if (more.isPresent()) {
                return more;
            }
        }
        return iso;
    }

    private FrameData.Index index() {
        return switch (number(INDEX, 0)) {
            case 1, 4, 5, 7 -> FrameData.Index.OUTPUT;
            case 2, 6 -> FrameData.Index.RECOMMENDED;
            default -> FrameData.Index.UNKNOWN;
        };
    }

    /** What the tags say of how the frame was taken; nothing that cannot be. */
    FrameData data() {
        OptionalDouble fNumber = number(F_NUMBER, FNumber.RANGE);
        OptionalDouble exposureS = number(EXPOSURE, Taken.EXPOSURE);
        return new FrameData(fNumber.isPresent() ? Optional.of(FNumber.marked(fNumber.getAsDouble()))
                : Optional.empty(),
                exposureS.isPresent() ? Optional.of(
                Duration.ofNanos(Math.round(exposureS.getAsDouble() * 1e9)))
                : Optional.empty(), iso(), index(),
                number(FOCAL_LENGTH, new Range(Lens.FOCAL_LENGTH.what(), 1, Lens.FOCAL_LENGTH.most(), "mm")),
                number(SAME_AS_35_MM, SAME_AS), text(TAKEN_AT).flatMap(FrameTags::clock),
                text(OFFSET).flatMap(FrameTags::offset), text(CAMERA),
                number(CUSTOM_RENDERED, 0) != 0 || number(CONTRAST, 0) != 0);
    }

    private static Optional<LocalDateTime> clock(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text, CLOCK));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<ZoneOffset> offset(String text) {
        try {
            return Optional.of(ZoneOffset.of(text));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}
