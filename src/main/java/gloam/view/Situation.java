package gloam.view;

import gloam.gear.Site;
import gloam.answer.LightFound;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an exposure is asked for.
 *
 * @param source             where the sky's brightness comes from, in words
 * @param skyMagArcsec2      brightness of the sky at the frame's centre, when the shutter opens if it changes
 * @param skyCdM2            the same as a luminance
 * @param otherSkies         what else tells it
 * @param skyColour          colour of a computed sky
 * @param ground             the ground exposed for in place of the sky
 * @param film               name of the film
 * @param iso                its speed
 * @param reciprocity        its law in words
 * @param focalLengthMm      of the lens
 * @param focusM             what it is focused at, where that is not infinity
 * @param transmittance      share of light it passes
 * @param cornerStops        light in the frame's corners against its centre, where the frame is known, at the
 *                           widest f-number asked for; minus is less
 * @param cornerStopsStopped the same at the narrowest f-number asked for
 * @param toneStops          the tone aimed at, where the time is asked for
 * @param sheets             how many sheets may be spent on it
 * @param lastsS             the time, where the tone is asked for
 * @param site               where, if a site was given
 * @param earlier            openings already made on the same sheet
 * @param openAt             when the shutter opens, if an instant was given
 * @param latestCloseAt      when it must be closed at the latest, if the sky changes
 * @param events             what happens in the sky till then
 * @param azimuthDeg         where the camera points
 * @param altitudeDeg        where the camera points
 * @param starDeclinationDeg declination of the star whose trail limit is given
 * @param aimDeclinationDeg  that of the star at the frame's centre, which draws but a point about a pole of the sky
 * @param extinctionMag      what the air takes from it
 * @param leastDifferenceDensity least difference from the sky's tone by which its trail shows
 */
public record Situation(String source, double skyMagArcsec2, double skyCdM2, List<OtherSky> otherSkies,
                        Optional<LightFound.Colour> skyColour, Optional<LightFound.Ground> ground, String film,
                        int fittedToSheets, double iso, String reciprocity, double focalLengthMm, OptionalDouble focusM, double transmittance,
                        OptionalDouble cornerStops, OptionalDouble cornerStopsStopped, OptionalDouble toneStops,
                        int sheets, OptionalDouble lastsS, Optional<Site> site, List<Opening> earlier,
                        Optional<OffsetDateTime> openAt, Optional<OffsetDateTime> latestCloseAt,
                        List<NightRow.EventRow> events, OptionalDouble azimuthDeg, OptionalDouble altitudeDeg,
                        double starDeclinationDeg, double aimDeclinationDeg, double extinctionMag, double leastDifferenceDensity) {

    /** How long a tone takes that is not reached in the time there is. */
    String never() {
        return latestCloseAt.isPresent() ? "never" : Wording.exposure(Double.POSITIVE_INFINITY);
    }

    /**
     * Another reading of the same sky.
     *
     * @param source        where it comes from, in words
     * @param skyMagArcsec2 its brightness
     * @param brighterStops by how much it is brighter than the one exposed for; minus is darker
     */
    public record OtherSky(String source, double skyMagArcsec2, double brighterStops) {
    }

    /**
     * An opening of the shutter.
     *
     * @param openAt  when it opened
     * @param closeAt when it closed
     */
    public record Opening(OffsetDateTime openAt, OffsetDateTime closeAt) {
    }
}
