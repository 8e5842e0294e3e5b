package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.units.Stops;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The computed picture of a sheet and what it shows.
 *
 * @param figures what of it is words and numbers
 * @param picture the sheet as it looks when developed
 */
public record ProofReport(@JsonUnwrapped Figures figures, @JsonIgnore Picture picture) implements Report {

    /** What the picture says of itself. */
    public static final String STATEMENT = "Computed picture, not a photograph";

    private static final double DARKEST_STOPS = -99;

    @Override
    public OffsetDateTime generatedAt() {
        return figures.generatedAt;
    }

    /** The report on a proof with the trails of its framing. */
    public static ProofReport of(Proof proof, TrailReport trail, Instant now) {
        SiteClock clock = new SiteClock(ZoneId.of(trail.site().zone()));
        Picture picture = proof.picture();
        List<ToneRow> tones = Stream.of(StarHere.Where.values()).map(where -> ToneRow.of(proof, where)).toList();
        return new ProofReport(new Figures(clock.asked(now), STATEMENT, picture.widthPx(), picture.heightPx(),
                picture.channels() == 3, tones, trail), picture);
    }

    /**
     * What of a proof is words and numbers.
     *
     * @param generatedAt when it was made
     * @param statement   what the picture is
     * @param widthPx     pixels in a row
     * @param heightPx    rows
     * @param colour      whether it is in colour
     * @param tones       tones at the frame's centre and in its corners
     * @param trail       the framing and its trails
     */
    public record Figures(OffsetDateTime generatedAt, String statement, int widthPx, int heightPx, boolean colour,
                          List<ToneRow> tones, TrailReport trail) {
    }

    /**
     * The tone of a point of the sheet, whatever stands there.
     *
     * @param toneStops of each layer, in stops from the mid-tone; -99 where no light falls
     */
    public record ToneRow(String where, double xMm, double yMm, List<Double> toneStops) {

        static ToneRow of(Proof proof, StarHere.Where where) {
            Raster raster = proof.raster();
            Framing.Point point = where.on(raster.frame());
            int column = inside(raster.column(point.xMm()), raster.widthPx());
            int row = inside(raster.row(point.yMm()), raster.heightPx());
            return new ToneRow(where.name().toLowerCase(Locale.ROOT).replace('_', '-'), point.xMm(),
                    point.yMm(), IntStream.range(0, proof.layers()).mapToObj(layer ->
                            Math.max(DARKEST_STOPS, Stops.between(1, proof.progress(layer, column, row)))).toList());
        }

        private static int inside(double pixel, int count) {
            return (int) Math.max(0, Math.min(count - 1, Math.round(pixel)));
        }
    }
}
