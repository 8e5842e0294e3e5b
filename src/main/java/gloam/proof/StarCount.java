package gloam.proof;

import gloam.ephemeris.FainterStars;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.exposure.TrailLimit;
import gloam.trail.FramedTrails;
import java.util.List;

/**
 * How many stars of the catalogue mark a sheet.
 *
 * @param recorded how many leave a visible trail
 * @param spread   by how many that may be wrong, as the trail limit may by {@link TrailLimit#SPREAD_MAG}
 * @param crossing how many run over the sheet above the skyline
 * @param fainter  about how many fainter than the catalogue's leave one too, by {@link FainterStars}
 */
public record StarCount(int recorded, int spread, int crossing, int fainter) {

    /**
     * A star that runs over the sheet.
     *
     * @param magnitude its V magnitude
     * @param limitMag  the faintest that leaves a visible trail where it runs; negative infinity if none does
     */
    public record Crossing(double magnitude, double limitMag) {

        private boolean recordsWith(double deeperMag) {
            return magnitude <= limitMag + deeperMag;
        }
    }

    /** The count of the catalogue's stars on a sheet. */
    public static StarCount of(List<Star> catalogue, FramedTrails trails, ExposedFrame sheet) {
        return of(catalogue.parallelStream().flatMap(star -> trails.passage(star).stream()
                .map(passage -> new Crossing(star.magnitude(), sheet.limitMag(passage)))).toList());
    }

    /** The count of stars of the catalogue that run over a sheet. */
    public static StarCount of(List<Crossing> stars) {
        int most = count(stars, TrailLimit.SPREAD_MAG);
        int least = count(stars, -TrailLimit.SPREAD_MAG);
        double fainter = stars.stream().mapToDouble(star ->
                FainterStars.each(StarCatalogue.FAINTEST_MAG, star.limitMag)).sum();
        return new StarCount(count(stars, 0), (int) Math.round((most - least) / 2.0), stars.size(),
                (int) Math.round(fainter));
    }

    /** The counts of two openings of a sheet together; what is wrong in one is so in the other. */
    public StarCount plus(StarCount other) {
        return new StarCount(recorded + other.recorded, spread + other.spread, crossing + other.crossing,
                fainter + other.fainter);
    }

    private static int count(List<Crossing> stars, double deeperMag) {
        return (int) stars.stream().filter(star -> star.recordsWith(deeperMag)).count();
    }
}
