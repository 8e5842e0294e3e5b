package gloam.planner;

import gloam.exposure.ExposureEngine;
import gloam.film.FilmStock;
import java.util.Arrays;

/**
 * What a film makes of steady light and how well that is known, read off tables since a timetable asks
 * millions of times: straight between steps of 1/32 stop within a ten-thousandth.
 */
final class FilmResponse {

    private static final int DARKEST = -60;
    private static final int LIGHTEST = 30;
    private static final int STEPS_A_STOP = 32;

    private final double[] ratesPerS = new double[(LIGHTEST - DARKEST) * STEPS_A_STOP + 1];
    private final double[] filmStops = new double[(LIGHTEST - DARKEST) * STEPS_A_STOP + 1];
    private final double[] steepness = new double[(LIGHTEST - DARKEST) * STEPS_A_STOP + 1];

    /** The response of a film. */
    FilmResponse(FilmStock film) {
        for (int step = 0; step < ratesPerS.length; step++) {
            double factor = Math.pow(2, DARKEST + (double) step / STEPS_A_STOP);
            ratesPerS[step] = ExposureEngine.ratePerS(film, factor);
            double meteredS = film.reciprocity().meteredS(1 / factor);
            filmStops[step] = ExposureEngine.filmSpreadStops(film, meteredS);
            steepness[step] = film.reciprocity().exponentAt(meteredS);
        }
    }

    /** Rate of progress in 1/s under an illuminance given as the logarithm to base 2 of lx. */
    double ratePerS(double log2Lx) {
        return at(ratesPerS, log2Lx);
    }

    /**
     * Standard deviation in stops of a tone made at a mean rate, given as the logarithm to base 2 of 1/s,
     * under a sky known to that many stops.
     */
    double spreadStops(double log2RatePerS, double skyStops) {
        double ofFilm = at(filmStops, log2RatePerS);
        double ofSky = at(steepness, log2RatePerS) * skyStops;
        return Math.sqrt(ofFilm * ofFilm + ofSky * ofSky);
    }

    /** No more than that spread is for tones made at mean rates from one to another under no better a sky. */
    double leastSpreadStops(double fromLog2RatePerS, double toLog2RatePerS, double skyStops) {
        int first = (int) Math.floor(step(fromLog2RatePerS));
        int after = (int) Math.ceil(step(toLog2RatePerS)) + 1;
        double ofFilm = Arrays.stream(filmStops, first, after).min().orElseThrow();
        double ofSky = Arrays.stream(steepness, first, after).min().orElseThrow() * skyStops;
        return Math.sqrt(ofFilm * ofFilm + ofSky * ofSky);
    }

    private static double step(double stops) {
        return (Math.max(DARKEST, Math.min(LIGHTEST, stops)) - DARKEST) * STEPS_A_STOP;
    }

    private static double at(double[] table, double stops) {
        double step = step(stops);
        int left = Math.min((int) step, table.length - 2);
        return table[left] + (step - left) * (table[left + 1] - table[left]);
    }
}
