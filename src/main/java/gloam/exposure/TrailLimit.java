package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.ToneCurve;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Range;
import gloam.units.Stops;

/**
 * The faintest star that leaves a visible trail.
 *
 * <p><b>Model.</b> A star's light, gathered by the entrance pupil, falls on a spot that passes each point
 * of the sheet in a short dwell; the film works at the rate of sky and star together, so that the star is
 * spared most of the sky's reciprocity failure. The trail shows when the tone curve sets it off from the sky.
 * Form as in work on satellite and meteor photography: exposure F/(s v) by flux, width of the spot and
 * speed of the image. <b>Valid.</b> Trails longer than their width. <b>Error.</b> About 0.5 mag, the spot's
 * width the weakest number. <b>Departures.</b> The spot is taken as evenly lit over its width; light spread
 * within the film is left out.
 *
 * <p>A longer exposure lengthens a trail and does not brighten it.
 */
public final class TrailLimit {

    /** Allowed least visible differences of tone. */
    public static final Range LEAST_DIFFERENCE = new Range("least visible difference", 0.005, 1, "density");

    /** Least visible difference of tone where none is given, in density; common practice, no source. */
    public static final double LEAST_DIFFERENCE_DENSITY = 0.1;

    /** Standard deviation of the limit, in mag: the model's error. */
    public static final double SPREAD_MAG = 0.5;

    private static final double BRIGHTEST_MAG = -30;
    private static final double FAINTEST_MAG = 30;

    /** Margin by which the limit is moved to the visible side of the computed one, against rounding. */
    private static final double VISIBLE_SIDE_MAG = 1e-9;

    private TrailLimit() {
    }

    /**
     * What a star's image meets on its way over the sheet.
     *
     * @param film             the film
     * @param lens             the lens
     * @param fNumber          its f-number
     * @param exposureS        how long the shutter is open, more than 0: no image dwells longer
     * @param skyProgress      the sky's progress at the end of the exposure, 0 or more
     * @param skyIlluminanceLx illuminance of the sky on the film while the star passes, 0 or more
     * @param imageSpeedMmS    speed of the star's image on the film, 0 or more
     * @param lossMag          light lost on the way: extinction times airmass, fall-off of the lens
     */
    public record Circumstances(FilmStock film, Lens lens, FNumber fNumber, double exposureS,
                                double skyProgress, double skyIlluminanceLx, double imageSpeedMmS,
                                double lossMag) {

        /** Refuses what is not finite. */
        public Circumstances {
            Finite.check(exposureS, "exposure in s");
            Finite.check(skyProgress, "progress of the sky");
            Finite.check(skyIlluminanceLx, "illuminance of the sky in lx");
            Finite.check(imageSpeedMmS, "speed of a star's image in mm/s");
            Finite.check(lossMag, "light lost in the air in mag");
        }
    }

    /** Faintest V magnitude that leaves a visible trail; negative infinity where not even -30 does. */
    public static double magnitude(Circumstances circumstances) {
        return magnitude(circumstances, Angle.ZERO);
    }

    /** The same of a body with a disc of that semidiameter, over which its light is spread. */
    public static double magnitude(Circumstances circumstances, Angle semidiameter) {
        return magnitude(circumstances, LEAST_DIFFERENCE_DENSITY, semidiameter);
    }

    /**
     * The same for another least visible difference of tone in density, more than 0.
     *
     * <p>Backwards through the model: the tone that shows asks for a progress, that in the dwell for a rate,
     * that for an illuminance, and that for a star.
     */
    public static double magnitude(Circumstances circumstances, double leastDifferenceDensity) {
        return magnitude(circumstances, leastDifferenceDensity, Angle.ZERO);
    }

    private static double magnitude(Circumstances circumstances, double leastDifferenceDensity,
            Angle semidiameter) {
        StarSpot zeroMag = spot(circumstances, 0, semidiameter);
        double starLx = illuminanceLx(circumstances, leastDifferenceDensity, dwellS(circumstances, zeroMag));
        double zeroMagLx = zeroMag.illuminanceLx();
        double magnitude = 2.5 * Math.log10(zeroMagLx / starLx) - VISIBLE_SIDE_MAG;
        return magnitude >= BRIGHTEST_MAG ? Math.min(FAINTEST_MAG, magnitude) : Double.NEGATIVE_INFINITY;
    }

    /**
     * What a star must add to the sky's illuminance to show, infinite where no tone is left to show it by.
     */
    private static double illuminanceLx(Circumstances on, double leastDifferenceDensity, double dwellS) {
        ToneCurve tone = on.film().tone();
        double density = tone.density(on.skyProgress()) + Math.signum(tone.gamma()) * leastDifferenceDensity;
        double extraProgress = tone.progress(density) - on.skyProgress();
        double ratePerS = ExposureEngine.ratePerS(on.film(), on.skyIlluminanceLx()) + extraProgress / dwellS;
        return ExposureEngine.illuminanceLx(on.film(), ratePerS) - on.skyIlluminanceLx();
    }

    /** How many stops the trail of a star of that V magnitude stands over the sky around it, 0 or more. */
    public static double stopsOverSky(Circumstances circumstances, double magnitude) {
        return stopsOverSky(circumstances, magnitude, Angle.ZERO);
    }

    /** The same for a body with a disc of that semidiameter, such as the Moon, over which it is spread. */
    public static double stopsOverSky(Circumstances circumstances, double magnitude, Angle semidiameter) {
        double extra = extraProgress(circumstances, magnitude, semidiameter);
        return Stops.between(circumstances.skyProgress(), circumstances.skyProgress() + extra);
    }

    /** Whether the trail of a body differs from the sky by the least visible difference of tone. */
    public static boolean records(Circumstances circumstances, double magnitude, Angle semidiameter) {
        return differenceDensity(circumstances, magnitude, semidiameter) >= LEAST_DIFFERENCE_DENSITY;
    }

    private static double differenceDensity(Circumstances on, double magnitude, Angle semidiameter) {
        double trail = on.skyProgress() + extraProgress(on, magnitude, semidiameter);
        return Math.abs(on.film().tone().density(trail) - on.film().tone().density(on.skyProgress()));
    }

    private static double extraProgress(Circumstances on, double magnitude, Angle semidiameter) {
        StarSpot spot = spot(on, magnitude, semidiameter);
        return dwellS(on, spot) * (ExposureEngine.ratePerS(on.film(), on.skyIlluminanceLx()
                + spot.illuminanceLx()) - ExposureEngine.ratePerS(on.film(), on.skyIlluminanceLx()));
    }

    private static StarSpot spot(Circumstances on, double magnitude, Angle semidiameter) {
        return StarSpot.of(on.lens(), on.fNumber(), magnitude + on.lossMag(), semidiameter);
    }

    private static double dwellS(Circumstances on, StarSpot spot) {
        return Math.min(on.exposureS(), spot.widthMm() / on.imageSpeedMmS());
    }
}
