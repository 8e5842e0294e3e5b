package gloam.report;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an exposure is asked for.
 *
 * @param source           where the sky's brightness comes from, in words
 * @param skyMagArcsec2    brightness of the sky at the frame's centre, when the shutter opens if it changes
 * @param skyCdM2          the same as a luminance
 * @param film             name of the film
 * @param iso              its speed
 * @param focalLengthMm    of the lens
 * @param toneStops        the sky tone aimed at, where the time is asked for
 * @param lastsS           the time, where the tone is asked for
 * @param site             where, if a site was given
 * @param openAt           when the shutter opens, if an instant was given
 * @param azimuthDeg       where the camera points
 * @param altitudeDeg      where the camera points
 * @param starDeclinationDeg declination of the star whose trail limit is given
 * @param extinctionMag    what the air takes from it
 */
public record Situation(String source, double skyMagArcsec2, double skyCdM2, String film, double iso,
                        double focalLengthMm, OptionalDouble toneStops, OptionalDouble lastsS, Optional<Place> site,
                        Optional<OffsetDateTime> openAt, OptionalDouble azimuthDeg, OptionalDouble altitudeDeg,
                        double starDeclinationDeg, double extinctionMag) {
}
