package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Progress of a point of the sheet over a span of time, for any opening and closing in it at little cost.
 *
 * <p><b>Model.</b> Progress is ∫ dt / tc(H0/E): the film works at each moment at the rate that its
 * reciprocity law gives for the illuminance of that moment, all simultaneous light added before; 1 makes
 * the mid-tone. The basis is Kron's (Jahrbuch für Photographie 28, 1914, p. 6): equal density for equal
 * t·ψ(I). <b>Valid.</b> Any light that changes smoothly from step to step. <b>Error.</b> Of the integral,
 * below 0.5 % in twilight at steps of 2 min; of the film, see {@link ExposureEngine#spreadStops}.
 * <b>Departures.</b> The order of bright and dim light is taken not to matter and a gap between openings to
 * lose nothing; on real film bright light first is somewhat more effective.
 */
public final class ProgressCurve {

    /** Within which the rate counts as exponential. */
    private static final Duration LONGEST_PANEL = Duration.ofSeconds(30);

    private final double midToneLxS;
    private final RunningSum progress;
    private final RunningSum exposureLxS;

    /**
     * The curve of a film's time-setting layer over a span.
     *
     * @param step how often the light is asked for; in between it is interpolated smoothly
     */
    public ProgressCurve(FilmStock film, LightCurve light, Interval span, Duration step) {
        this(film.midToneLxS(), film.reciprocity(), light, span, step);
    }

    /** The curve of a layer with that mid-tone and law. */
    ProgressCurve(double midToneLxS, Reciprocity law, LightCurve light, Interval span, Duration step) {
        this.midToneLxS = midToneLxS;
        Grid grid = Grid.over(span, step.compareTo(LONGEST_PANEL) < 0 ? step : LONGEST_PANEL);
        double[] illuminancesLx = grid.sample(light.sampled(span, step)::illuminanceLx);
        double[] ratesPerS = new double[illuminancesLx.length];
        for (int i = 0; i < ratesPerS.length; i++) {
            ratesPerS[i] = ratePerS(law, midToneLxS, illuminancesLx[i]);
        }
        this.progress = new RunningSum(grid, ratesPerS);
        this.exposureLxS = new RunningSum(grid, illuminancesLx);
    }

    /** Rate of progress in 1/s at an illuminance in lx: 1 / tc(H0/E), 0 in the dark. */
    static double ratePerS(Reciprocity law, double midToneLxS, double illuminanceLx) {
        return illuminanceLx <= 0 ? 0 : 1 / law.correctedS(midToneLxS / illuminanceLx);
    }

    /** Progress made while the shutter is open; what lies outside the span counts nothing. */
    public double progress(Instant open, Instant close) {
        return progress.between(open, close);
    }

    /** Progress made in several openings on one sheet. */
    public double progress(List<Interval> openings) {
        return openings.stream().mapToDouble(open -> progress(open.start(), open.endExclusive())).sum();
    }

    /** Progress that several openings would make without reciprocity failure. */
    double withoutFailure(List<Interval> openings) {
        return openings.stream().mapToDouble(open -> exposureLxS.between(open.start(), open.endExclusive()))
                .sum() / midToneLxS;
    }

    /**
     * When a shutter opened at an instant has made a progress, at once where none is wanted; empty when not
     * by the end of the span.
     */
    public Optional<Instant> reached(Instant open, double progressWanted) {
        return progress.reached(open, progressWanted);
    }

    /** When it would have, without reciprocity failure; empty when not by the end of the span. */
    public Optional<Instant> reachedWithoutFailure(Instant open, double progressWanted) {
        return exposureLxS.reached(open, progressWanted * midToneLxS);
    }
}
