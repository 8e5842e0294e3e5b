package gloam.planner;

import gloam.ephemeris.EarthTurn;
import gloam.film.FilmStock;
import gloam.film.ToneCurve;
import gloam.exposure.ExposureEngine;
import gloam.exposure.TrailLimit;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.units.Angle;
import gloam.units.Stops;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a wish is exposed with, and what that makes of light.
 *
 * @param camera       the camera
 * @param film         the wish's film, or the trip's
 * @param fNumbers     the f-numbers to choose from, growing
 * @param response     what the film makes of light
 * @param equatorial   by f-number, the limits of stars on the celestial equator near the frame's centre
 * @param slower       the same of images that are {@link #OCTAVES} octaves slower
 * @param blackStops   the darkest tone that shows
 * @param whiteStops   the lightest tone that shows
 */
record Equipment(Camera camera, FilmStock film, List<FNumber> fNumbers, FilmResponse response,
                 List<TrailLimits> equatorial, List<TrailLimits> slower, double blackStops,
                 double whiteStops) {

    /** How much slower the images of the second set of limits are, in octaves. */
    static final double OCTAVES = 2;

    /** The equipment for a wish on a trip. */
    static Equipment of(Trip trip, Wish wish) {
        List<FNumber> fNumbers = wish.fNumbers().isEmpty() ? trip.camera().lens().fNumbers()
                : wish.fNumbers().stream().sorted().toList();
        return of(trip.camera(), wish.film().orElse(trip.film()), fNumbers);
    }

    /** For each wish of a trip its equipment; wishes with the same film and f-numbers share one. */
    static List<Equipment> all(Trip trip) {
        Equipment[] all = new Equipment[trip.wishes().size()];
        for (int wish = 0; wish < all.length; wish++) {
            Wish wanted = trip.wishes().get(wish);
            int same = wish;
            all[wish] = IntStream.range(0, wish).filter(other -> sameKit(trip.wishes().get(other), wanted))
                    .mapToObj(other -> all[other]).findFirst()
                    .orElseGet(() -> of(trip, trip.wishes().get(same)));
        }
        return List.of(all);
    }

    private static boolean sameKit(Wish one, Wish other) {
        return one.film().equals(other.film()) && one.fNumbers().equals(other.fNumbers());
    }

    private static Equipment of(Camera camera, FilmStock film, List<FNumber> fNumbers) {
        double equatorMmS = equatorMmS(camera);
        ToneCurve tone = film.tone();
        return new Equipment(camera, film, fNumbers, new FilmResponse(film),
                limits(camera, film, fNumbers, equatorMmS, Angle.ZERO),
                limits(camera, film, fNumbers, equatorMmS * Math.pow(2, -OCTAVES), Angle.ZERO),
                ExposureEngine.toneStops(tone.leastShown(TrailLimit.LEAST_DIFFERENCE_DENSITY)),
                ExposureEngine.toneStops(tone.mostShown(TrailLimit.LEAST_DIFFERENCE_DENSITY)));
    }

    /** The same with other f-numbers to choose from. */
    Equipment through(List<FNumber> others) {
        return of(camera, film, others);
    }

    /** By f-number, the limits of something whose image runs at a speed. */
    List<TrailLimits> limits(double speedMmS, Angle semidiameter) {
        return limits(camera, film, fNumbers, speedMmS, semidiameter);
    }

    private static List<TrailLimits> limits(Camera camera, FilmStock film, List<FNumber> fNumbers,
            double speedMmS,
                                            Angle semidiameter) {
        return fNumbers.stream()
                .map(fNumber -> new TrailLimits(film, camera.lens(), fNumber, speedMmS, semidiameter))
                .toList();
    }

    /** Logarithm to base 2 of the square of an f-number, given by its place: stops from f/1. */
    double log2Squared(int number) {
        return Stops.between(1, fNumbers.get(number).squared());
    }

    /** Speed in mm/s of the image of a star on the celestial equator near the frame's centre. */
    static double equatorMmS(Camera camera) {
        return camera.lens().imageDistanceMm() * EarthTurn.RAD_S;
    }
}
