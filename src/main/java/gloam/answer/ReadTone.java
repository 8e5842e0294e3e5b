package gloam.answer;

import gloam.film.ToneCurve;
import gloam.frame.PictureTone;
import gloam.journal.ScanReading.Bound;
import gloam.journal.ScanReading.Tone;
import gloam.units.Stops;

/**
 * The tone of the sky in the middle of a sheet, read off its scan.
 *
 * <p><b>Model.</b> The sheet's border is as light as the film gets; the sky's density over it is the
 * logarithm of the ratio of their lights, over the scan's contrast, and the film's tone curve gives the
 * tone. Without a border the scan's white stands for it. <b>Valid.</b> Tones that the film tells from black
 * and from white. <b>Error.</b> That of the contrast, 0.03 by the border, 0.15 where there is none (common
 * practice, no source); towards the end of the film that is nearer, where it is more stops.
 * <b>Departures.</b> The tone curve of the sheet at hand.
 */
final class ReadTone {

    private static final double OF_BORDER = 0.03;
    private static final double WITHOUT_BORDER = 0.15;
    private static final double TOLD_APART = 0.05;

    private ReadTone() {
    }

    /** The tone of a picture on a film, scanned with a contrast. */
    static Tone of(PictureTone picture, ToneCurve curve, ScanContrast contrast) {
        double over = -Math.log10(picture.sky() / picture.border().orElse(1)) / contrast.factor();
        double density = curve.densityMin() + Math.max(0, over);
        double error = Math.hypot(contrast.error() * over, picture.border().isPresent() ? OF_BORDER
                : WITHOUT_BORDER);
        double darkest = curve.densityMax() - TOLD_APART;
        double lightest = curve.densityMin() + TOLD_APART;
        boolean positive = curve.gamma() < 0;
        if (density + error > darkest) {
            return new Tone(stops(curve, Math.max(lightest, Math.min(darkest, density - error))), 0,
                    positive ? Bound.AT_MOST : Bound.AT_LEAST);
        }
        if (density - error < lightest) {
            return new Tone(stops(curve, Math.min(darkest, Math.max(lightest, density + error))), 0,
                    positive ? Bound.AT_LEAST : Bound.AT_MOST);
        }
        double stops = stops(curve, density);
        return new Tone(stops, Math.max(Math.abs(stops(curve, density + error) - stops),
                Math.abs(stops(curve, density - error) - stops)), Bound.NONE);
    }

    private static double stops(ToneCurve curve, double density) {
        return Stops.between(1, curve.progress(density));
    }
}
