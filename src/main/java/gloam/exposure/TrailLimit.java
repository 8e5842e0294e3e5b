package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.ToneCurve;
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
     * A star's image on its way over a sheet.
     *
     * @param sheet         the sheet; no image dwells longer than it is exposed
     * @param imageSpeedMmS speed of the star's image on the film, 0 or more
     * @param lossMag       light lost on the way: extinction times airmass, fall-off of the lens
     */
    public record Passing(ExposedSheet sheet, double imageSpeedMmS, double lossMag) {

        /** Refuses what is not finite. */
        public Passing {
            Finite.check(imageSpeedMmS, "speed of a star's image in mm/s");
            Finite.check(lossMag, "light lost in the air in mag");
        }
    }

    /** Faintest V magnitude that leaves a visible trail; negative infinity where not even -30 does. */
    public static double magnitude(Passing on) {
        return magnitude(on, Angle.ZERO);
    }

    /** The same of a body with a disc of that semidiameter, over which its light is spread. */
    public static double magnitude(Passing on, Angle semidiameter) {
        return magnitude(on, LEAST_DIFFERENCE_DENSITY, semidiameter);
    }

    /**
     * The same for another least visible difference of tone in density, more than 0.
     *
     * <p>Backwards through the model: the tone that shows asks for a progress, that in the dwell for a rate,
     * that for an illuminance, and that for a star.
     */
    public static double magnitude(Passing on, double leastDifferenceDensity) {
        return magnitude(on, leastDifferenceDensity, Angle.ZERO);
    }

    private static double magnitude(Passing on, double leastDifferenceDensity, Angle semidiameter) {
        StarSpot zeroMag = spot(on, 0, semidiameter);
        double starLx = illuminanceLx(on.sheet, leastDifferenceDensity, dwellS(on, zeroMag));
        double zeroMagLx = zeroMag.illuminanceLx();
        double magnitude = 2.5 * Math.log10(zeroMagLx / starLx) - VISIBLE_SIDE_MAG;
        return magnitude >= BRIGHTEST_MAG ? Math.min(FAINTEST_MAG, magnitude) : Double.NEGATIVE_INFINITY;
    }

    /**
     * What a star must add to the sky's illuminance to show, infinite where no tone is left to show it by.
     */
    private static double illuminanceLx(ExposedSheet sheet, double leastDifferenceDensity, double dwellS) {
        ToneCurve tone = sheet.film().tone();
        double density = tone.density(sheet.skyProgress())
                + Math.signum(tone.gamma()) * leastDifferenceDensity;
        double extraProgress = tone.progress(density) - sheet.skyProgress();
        double ratePerS = ExposureEngine.ratePerS(sheet.film(), sheet.skyLx()) + extraProgress / dwellS;
        return ExposureEngine.illuminanceLx(sheet.film(), ratePerS) - sheet.skyLx();
    }

    /**
     * How many stops the trail of something of that V magnitude stands over the sky around it, 0 or more; the
     * light of a disc of that semidiameter, such as the Moon's, is spread over it.
     */
    public static double stopsOverSky(Passing on, double magnitude, Angle semidiameter) {
        double extra = extraProgress(on, magnitude, semidiameter);
        return Stops.between(on.sheet.skyProgress(), on.sheet.skyProgress() + extra);
    }

    /** Whether the trail of a body differs from the sky by the least visible difference of tone. */
    public static boolean records(Passing on, double magnitude, Angle semidiameter) {
        return differenceDensity(on, magnitude, semidiameter) >= LEAST_DIFFERENCE_DENSITY;
    }

    private static double differenceDensity(Passing on, double magnitude, Angle semidiameter) {
        ToneCurve tone = on.sheet.film().tone();
        double sky = on.sheet.skyProgress();
        return Math.abs(tone.density(sky + extraProgress(on, magnitude, semidiameter)) - tone.density(sky));
    }

    private static double extraProgress(Passing on, double magnitude, Angle semidiameter) {
        StarSpot spot = spot(on, magnitude, semidiameter);
        FilmStock film = on.sheet.film();
        double skyLx = on.sheet.skyLx();
        return dwellS(on, spot) * (ExposureEngine.ratePerS(film, skyLx + spot.illuminanceLx())
                - ExposureEngine.ratePerS(film, skyLx));
    }

    private static StarSpot spot(Passing on, double magnitude, Angle semidiameter) {
        return StarSpot.of(on.sheet.lens(), on.sheet.fNumber(), magnitude + on.lossMag, semidiameter);
    }

    private static double dwellS(Passing on, StarSpot spot) {
        return Math.min(on.sheet.exposureS(), spot.widthMm() / on.imageSpeedMmS);
    }
}
