package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.film.FilmStock;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.units.Stops;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The computed picture of a sheet and what it shows.
 *
 * @param trails  what runs across it
 * @param picture the sheet as it looks when developed
 * @param tones   tones at the frame's centre and in its corners
 * @param awayFromMoonToneStops where the Moon is in the frame, the tone of each layer away from it, in stops
 *                              from the mid-tone: that of the picture
 */
public record SheetProof(Trails trails, Picture picture, List<PointTone> tones,
                         Optional<List<Double>> awayFromMoonToneStops) {

    private static final Duration POINTS_EVERY = Duration.ofMinutes(5);
    private static final double DARKEST_STOPS = -99;

    /** Copies the list. */
    public SheetProof {
        tones = List.copyOf(tones);
        awayFromMoonToneStops = awayFromMoonToneStops.map(List::copyOf);
    }

    /**
     * The tone of sky or land at one point of the sheet, trails left out.
     *
     * @param where     the point's name
     * @param point     the point
     * @param toneStops tone of each layer in stops from the mid-tone; -99 where no light falls
     */
    public record PointTone(StarHere.Where where, Framing.Point point, List<Double> toneStops) {

        private static PointTone of(Proof proof, StarHere.Where where) {
            Framing.Point point = where.on(proof.raster().frame());
            return new PointTone(where, point, stops(proof.skyProgress(point)));
        }
    }

    private static List<Double> stops(double[] layers) {
        return Arrays.stream(layers).mapToObj(progress ->
                Math.max(DARKEST_STOPS, Stops.between(1, progress))).toList();
    }

    /**
     * Computes the picture of a sheet under the Moon, the planets and the stars of a catalogue. Its trails
     * are those of the sheet's first setting.
     *
     * @param groundReflectance share of the light that the land reflects, 0 to 1; empty for black land
     * @param as                a negative as itself, or as the print made from it
     * @throws gloam.units.BadInput if the shutter would be open by day or the Sun shines into the frame
     */
    public static SheetProof of(Ephemeris ephemeris, Sheet sheet, OptionalDouble groundReflectance,
                                List<Star> catalogue, Raster raster, FilmStock.Kind as) {
        FrameQuestion question = new FrameQuestion(sheet.site(), sheet.first(), POINTS_EVERY, false);
        Trails trails = Trails.ofAll(ephemeris, question, Optional.of(sheet), catalogue);
        Proof proof = Proof.of(ephemeris, sheet, groundReflectance, catalogue, raster);
        return new SheetProof(trails, proof.picture(as),
                Stream.of(StarHere.Where.values()).map(where -> PointTone.of(proof, where)).toList(),
                proof.awayFromMoon().map(SheetProof::stops));
    }
}
