package gloam.frame;

import gloam.gear.FNumber;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a frame says of how it was taken.
 *
 * @param fNumber         the f-number, as marked
 * @param exposure        the exposure time
 * @param iso             the ISO setting
 * @param index           what the ISO setting counts
 * @param focalLengthMm   the focal length
 * @param sameAs35Mm      the focal length that sees as much on a frame of 36 × 24 mm
 * @param openedAt        when the shutter opened, by the camera's clock
 * @param offset          that clock's offset from UTC
 * @param camera          the camera's name for itself
 * @param rendered        whether the camera says that it laid a curve of its own over the levels
 */
public record FrameData(Optional<FNumber> fNumber, Optional<Duration> exposure, OptionalDouble iso,
        Index index,
                        OptionalDouble focalLengthMm, OptionalDouble sameAs35Mm,
                        Optional<LocalDateTime> openedAt, Optional<ZoneOffset> offset,
                        Optional<String> camera, boolean rendered) {

    /** A frame that says nothing. */
    public static final FrameData NONE = new FrameData(Optional.empty(), Optional.empty(),
            OptionalDouble.empty(), Index.UNKNOWN, OptionalDouble.empty(), OptionalDouble.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), false);

    /** What an ISO setting counts (Exif 2.31, SensitivityType). */
    public enum Index {
        /** Standard output sensitivity: where level 118 of 255 lies. */
        OUTPUT,
        /** What the maker recommends. */
        RECOMMENDED,
        /** The frame does not say. */
        UNKNOWN
    }
}
