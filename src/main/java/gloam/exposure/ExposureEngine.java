package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Turns light on the film into time and tone. */
public final class ExposureEngine {

    /** Standard deviations in stops; common sense, no source but the scatter of skies and of film tables. */
    private static final double SKY_STOPS = 0.3;
    private static final double SPEED_STOPS = 0.3;
    private static final double RECIPROCITY_STOPS = 0.5;
    private static final double RECIPROCITY_STOPS_PER_DECADE = 0.5;

    private static final long LONGEST_STEP_MS = 60_000;
    private static final int LEAST_STEPS = 64;

    private ExposureEngine() {
    }

    /** Rate of progress in 1/s under an illuminance in lx: 1 / tc(H0/E), 0 in the dark. */
    public static double ratePerS(FilmStock film, double illuminanceLx) {
        return ProgressCurve.ratePerS(film.reciprocity(), film.midToneLxS(), illuminanceLx);
    }

    /** Illuminance in lx that makes progress at that rate in 1/s: the inverse of {@link #ratePerS}. */
    static double illuminanceLx(FilmStock film, double ratePerS) {
        return film.midToneLxS() / film.reciprocity().meteredS(1 / ratePerS);
    }

    /** Progress of the film over a span: ∫ dt / tc(H0/E), 1 at the mid-tone. */
    public static double progress(FilmStock film, LightCurve light, Interval span) {
        return curve(film, light, span).progress(span.start(), span.endExclusive());
    }

    /** Sky tone in stops from the mid-tone after that progress: log2 p, negative infinity in the dark. */
    public static double toneStops(double progress) {
        return Stops.between(1, progress);
    }

    /** How long from {@code open} until the tone is reached; empty when not by {@code latest}. */
    public static Optional<Duration> untilTone(FilmStock film, LightCurve light, Instant open, Instant latest,
                                               double toneStops) {
        return curve(film, light, new Interval(open, latest)).reached(open, Stops.factor(toneStops))
                .map(close -> Duration.between(open, close));
    }

    /** The exposure that makes a tone under changing light, from the start of a span to its end at most. */
    public static Exposure exposure(FilmStock film, LightCurve light, Interval available, double toneStops) {
        ProgressCurve curve = curve(film, light, available);
        Instant open = available.start();
        double progress = Stops.factor(toneStops);
        double correctedS = seconds(open, curve.reached(open, progress));
        double meteredS = seconds(open, curve.reachedWithoutFailure(open, progress));
        boolean never = Double.isInfinite(correctedS);
        double made = never ? curve.progress(open, available.endExclusive()) : progress;
        double evenMeteredS = film.reciprocity().meteredS((never ? available.seconds() : correctedS) / made);
        double spreadStops = spreadStops(film, evenMeteredS);
        double lowS = seconds(open, curve.reached(open, progress * Stops.factor(-spreadStops)));
        double highS = seconds(open, curve.reached(open, progress * Stops.factor(spreadStops)));
        return new Exposure(meteredS, correctedS, lowS, highS,
                never ? Double.POSITIVE_INFINITY : Math.max(0, Stops.between(meteredS, correctedS)),
                film.reciprocity().extrapolated(evenMeteredS), never, toneStops(made), spreadStops);
    }

    /** The exposure that makes a tone under constant light, told by the mid-tone's metered time in s. */
    public static Exposure exposure(FilmStock film, double midToneMeteredS, double toneStops) {
        Reciprocity law = film.reciprocity();
        double share = Stops.factor(toneStops);
        double correctedS = share * law.correctedS(midToneMeteredS);
        double spreadStops = spreadStops(film, midToneMeteredS);
        return new Exposure(share * midToneMeteredS, correctedS, correctedS * Stops.factor(-spreadStops),
                correctedS * Stops.factor(spreadStops), Stops.between(share * midToneMeteredS, correctedS),
                law.extrapolated(midToneMeteredS), false, toneStops, spreadStops);
    }

    /**
     * Standard deviation of a tone in stops: sky model and speed, both steepened by the law, and the law
     * itself, half a stop inside what its source covers and half a stop more a decade beyond.
     *
     * @param meteredS metered time of the mid-tone in s, which tells how dim the light is
     */
    public static double spreadStops(FilmStock film, double meteredS) {
        Reciprocity law = film.reciprocity();
        double decadesBeyond = Math.max(0, Math.log10(meteredS / law.coveredToS()));
        double lawStops = law instanceof Reciprocity.None
                ? 0 : RECIPROCITY_STOPS + RECIPROCITY_STOPS_PER_DECADE * decadesBeyond;
        return Math.hypot(lawStops, law.exponentAt(meteredS) * Math.hypot(SKY_STOPS, SPEED_STOPS));
    }

    private static ProgressCurve curve(FilmStock film, LightCurve light, Interval span) {
        long stepMs = Math.max(1, Math.min(LONGEST_STEP_MS, span.lasts().toMillis() / LEAST_STEPS));
        return new ProgressCurve(film, light, span, Duration.ofMillis(stepMs));
    }

    private static double seconds(Instant open, Optional<Instant> close) {
        return close.map(at -> Duration.between(open, at).toNanos() * 1e-9).orElse(Double.POSITIVE_INFINITY);
    }
}
