package gloam.journal;

import java.util.ArrayList;
import java.util.List;

/**
 * One point of the fitted curve of corrected over metered time.
 *
 * @param meteredS   metered time in seconds, by the published film's rated speed and offset
 * @param publishedS corrected time by the published film, in seconds
 * @param fittedS    the same by the fitted film
 * @param leastS     lower edge of the band that contains the time with a probability of 95 %
 * @param mostS      its upper edge
 */
public record CurvePoint(double meteredS, double publishedS, double fittedS, double leastS, double mostS) {

    private static final int POINTS_A_DECADE = 6;

    /** Points evenly spaced in the logarithm from one metered time to another. */
    public static List<CurvePoint> of(FilmFit fit, double fromS, double toS) {
        int panels = (int) Math.ceil(Math.log10(toS / fromS) * POINTS_A_DECADE);
        List<CurvePoint> points = new ArrayList<>();
        for (int i = 0; i <= panels; i++) {
            double meteredS = fromS * Math.pow(toS / fromS, (double) i / panels);
            SteadyLight.Times times = SteadyLight.of(fit.posterior(), meteredS, 0).times();
            points.add(new CurvePoint(meteredS, fit.published().reciprocity().correctedS(meteredS),
                    fit.correctedS(meteredS), times.leastS(), times.mostS()));
        }
        return points;
    }
}
