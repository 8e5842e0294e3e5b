package gloam.view;

import gloam.answer.MeasuredFrame;
import gloam.frame.Comparison;
import gloam.frame.Patch;
import gloam.frame.StarAim;
import gloam.light.SkyBrightness;
import gloam.trail.Framing;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A frame as it was measured.
 *
 * @param name            the name of its file
 * @param at              the middle of its exposure
 * @param exposureS       the exposure time
 * @param fNumber         the f-number
 * @param iso             the ISO setting
 * @param azimuthDeg      where it pointed
 * @param altitudeDeg     how high
 * @param rollDeg         the camera's turn, clockwise as seen from behind
 * @param heightFraction  its height as a share of its width
 * @param widthDeg        the angle it sees across its middle
 * @param pointsFound     points of light found
 * @param starsMatched    those of them that are stars of the catalogue, 0 if the aim is as it was given
 * @param aimErrorDeg     one standard deviation of aim and roll, by the stars
 * @param clockAheadS     by how much the camera's clock is ahead, if the aim given shows it
 * @param magArcsec2      the sky in the middle of the frame
 * @param luminanceCdM2   the same as a luminance
 * @param errorMag        one standard deviation of it
 * @param calibrated      whether the camera was calibrated
 * @param strongCurve     whether the camera says that it laid a curve of its own over the levels
 * @param brighterMag     by how much the sky is brighter than the model; minus is darker
 * @param modelErrorMag   one standard deviation of the model
 * @param slope           how that changes across the frame
 * @param pieces          the sky piece by piece
 * @param stars           the brightest stars found, fifty at most
 */
public record MeasuredFrameRow(String name, OffsetDateTime at, double exposureS, double fNumber, double iso,
                               double azimuthDeg, double altitudeDeg, double rollDeg,
                               double heightFraction, double widthDeg,
                               int pointsFound, int starsMatched, OptionalDouble aimErrorDeg,
                               OptionalDouble clockAheadS, OptionalDouble magArcsec2,
                               OptionalDouble luminanceCdM2, double errorMag, boolean calibrated,
                               boolean strongCurve, double brighterMag, double modelErrorMag,
                               Optional<SkySlopeRow> slope, List<SkyPieceRow> pieces,
                               List<MatchedStarRow> stars) {

    private static final int MOST_STARS = 50;

    static MeasuredFrameRow of(MeasuredFrame frame, SiteClock clock) {
        Framing framing = frame.sky().framing();
        Optional<SkyBrightness> middle = frame.middle();
        double halfMm = framing.camera().frame().widthMm() / 2;
        return new MeasuredFrameRow(frame.name(), clock.at(frame.taken().middle()),
                frame.taken().exposure().toNanos() * 1e-9, frame.taken().fNumber().marked(),
                frame.taken().iso(), framing.aim().azimuth().degrees(), framing.aim().altitude().degrees(),
                framing.roll().signed().degrees(),
                framing.camera().frame().heightMm() / framing.camera().frame().widthMm(),
                framing.toSky(-halfMm, 0).to(framing.toSky(halfMm, 0)).degrees(), frame.sky().seen(),
                frame.stars().size(), number(frame.sky().byStars().map(StarAim::errorDeg)),
                frame.clockAheadS(),
                number(middle.map(SkyBrightness::magArcsec2)), number(middle.map(SkyBrightness::cdM2)),
                frame.middleErrorMag(), frame.taken().calibration().known(), frame.taken().rendered(),
                frame.comparison().brighterMag(), frame.comparison().modelErrorMag(),
                frame.comparison().slope().map(SkySlopeRow::of),
                IntStream.range(0, frame.sky().patches().size()).mapToObj(i -> SkyPieceRow.of(frame, i))
                .toList(), frame.stars().stream().limit(MOST_STARS).map(MatchedStarRow::of).toList());
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    /**
     * How the difference from the model changes across the frame.
     *
     * @param azimuthDeg      where at the frame's edge the sky is brightest beside the model
     * @param altitudeDeg     how high
     * @param brighterMag     by how much it is brighter there
     * @param oppositeMag     by how much it is brighter at the opposite edge
     * @param errorMag        one standard deviation of half of the difference between the two
     * @param clear           whether that is more than chance
     * @param cornersMag      by how much the corners are brighter than the lens's law has them
     * @param cornersErrorMag one standard deviation of that
     * @param cornersClear    whether that is more than chance
     */
    public record SkySlopeRow(double azimuthDeg, double altitudeDeg, double brighterMag, double oppositeMag,
                           double errorMag, boolean clear, double cornersMag, double cornersErrorMag,
                           boolean cornersClear) {

        static SkySlopeRow of(Comparison.Slope slope) {
            return new SkySlopeRow(slope.towards().azimuth().degrees(), slope.towards().altitude().degrees(),
                    slope.thereMag(), slope.oppositeMag(), slope.errorMag(), slope.clear(),
                    slope.cornersMag(), slope.cornersErrorMag(), slope.cornersClear());
        }
    }

    /**
     * A piece of the sky.
     *
     * @param azimuthDeg       where its middle is seen
     * @param altitudeDeg      how high
     * @param magArcsec2       the sky there
     * @param scatterMag       how its parts differ, one standard deviation
     * @param modelMagArcsec2  the sky that is computed there
     * @param brighterMag      by how much it is brighter than that
     * @param xFraction        its place from the left edge of the frame
     * @param yFraction        its place from the upper edge
     * @param widthFraction    its width as a share of the frame's
     * @param heightFraction   its height as a share of the frame's
     */
    public record SkyPieceRow(double azimuthDeg, double altitudeDeg, double magArcsec2, double scatterMag,
                           double modelMagArcsec2, double brighterMag, double xFraction, double yFraction,
                           double widthFraction, double heightFraction) {

        static SkyPieceRow of(MeasuredFrame frame, int i) {
            Patch patch = frame.sky().patches().get(i);
            return new SkyPieceRow(patch.direction().azimuth().degrees(), patch.direction().altitude()
                    .degrees(), patch.brightness().magArcsec2(), patch.scatterMag(),
                    frame.model().get(i).total().magArcsec2(), frame.brighterMag(i), patch.xShare(),
                    patch.yShare(), patch.widthShare(), patch.heightShare());
        }
    }

    /**
     * A star that was found.
     *
     * @param name      its name
     * @param magnitude how bright it is seen, what the air takes included
     * @param xFraction its place from the left edge of the frame
     * @param yFraction its place from the upper edge
     */
    public record MatchedStarRow(String name, double magnitude, double xFraction, double yFraction) {

        static MatchedStarRow of(MeasuredFrame.StarFound star) {
            return new MatchedStarRow(star.name(), star.magnitude(), star.xShare(), star.yShare());
        }
    }
}
