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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a wish is exposed with, and what that makes of light.
 *
 * @param number       number of the camera in the trip, from 0
 * @param camera       the camera
 * @param film         the wish's film, or the camera's or the trip's
 * @param fNumbers     the f-numbers to choose from, growing
 * @param response     what the film makes of light
 * @param equatorial   by f-number, the limits of stars on the celestial equator near the frame's centre
 * @param slower       the same of images that are {@link #OCTAVES} octaves slower
 * @param blackStops   the darkest tone that shows
 * @param whiteStops   the lightest tone that shows
 */
record Equipment(int number, Camera camera, FilmStock film, List<FNumber> fNumbers, FilmResponse response,
                 List<TrailLimits> equatorial, List<TrailLimits> slower, double blackStops,
                 double whiteStops) {

    /** How much slower the images of the second set of limits are, in octaves. */
    static final double OCTAVES = 2;

    /** The equipment for a wish on a trip: with the first camera that may take it. */
    static Equipment of(Trip trip, Wish wish) {
        return of(trip, wish, trip.takers(wish).get(0));
    }

    /** The same with one of the cameras. */
    static Equipment of(Trip trip, Wish wish, int number) {
        Camera camera = trip.cameras().get(number).camera();
        List<FNumber> fNumbers = wish.fNumbers().isEmpty() ? camera.lens().fNumbers()
                : wish.fNumbers().stream().filter(wanted -> trip.cameras().size() == 1
                || camera.lens().fNumbers().contains(wanted)).sorted().toList();
        return of(number, camera, trip.film(wish, number), fNumbers);
    }

    /**
     * For each wish of a trip its equipment with every camera that may take it; wishes with the same film and
     * f-numbers share one.
     */
    static List<List<Equipment>> all(Trip trip) {
        Map<Kit, Equipment> known = new HashMap<>();
        return trip.wishes().stream().map(wish -> trip.takers(wish).stream()
                .map(number -> known.computeIfAbsent(new Kit(number, wish.film(), wish.fNumbers()),
                kit -> of(trip, wish, number))).toList()).toList();
    }

    /** What tells the equipment of one wish from that of another. */
    private record Kit(int camera, Optional<FilmStock> film, List<FNumber> fNumbers) {
    }

    private static Equipment of(int number, Camera camera, FilmStock film, List<FNumber> fNumbers) {
        double equatorMmS = equatorMmS(camera);
        ToneCurve tone = film.tone();
        return new Equipment(number, camera, film, fNumbers, new FilmResponse(film),
                limits(camera, film, fNumbers, equatorMmS, Angle.ZERO),
                limits(camera, film, fNumbers, equatorMmS * Math.pow(2, -OCTAVES), Angle.ZERO),
                ExposureEngine.toneStops(tone.leastShown(TrailLimit.LEAST_DIFFERENCE_DENSITY)),
                ExposureEngine.toneStops(tone.mostShown(TrailLimit.LEAST_DIFFERENCE_DENSITY)));
    }

    /** The same with other f-numbers to choose from. */
    Equipment through(List<FNumber> others) {
        return of(number, camera, film, others);
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
