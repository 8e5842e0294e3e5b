package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.FittedReciprocity;
import gloam.film.Reciprocity;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Turns light on the film into time and tone. */
public final class ExposureEngine {

    /** Standard deviations in stops; common sense, no source but the scatter of film tables. */
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
        return progress(film.midToneLxS(), film.reciprocity(), light, span);
    }

    /** The same of a single layer with that mid-tone and law. */
    static double progress(double midToneLxS, Reciprocity law, LightCurve light, Interval span) {
        return new ProgressCurve(midToneLxS, law, light, span, step(span))
                .progress(span.start(), span.endExclusive());
    }

    /** Sky tone in stops from the mid-tone after that progress: log2 p, negative infinity in the dark. */
    public static double toneStops(double progress) {
        return Stops.between(1, progress);
    }

    /** The exposure that makes a tone under changing light, from the start of a span to its end at most. */
    public static Exposure exposure(FilmStock film, LightCurve light, Interval available, double toneStops) {
        return exposure(film, light, Shutter.on(available), toneStops);
    }

    /**
     * The exposure that completes a tone under changing light on a sheet that may have been opened before.
     */
    public static Exposure exposure(FilmStock film, LightCurve light, Shutter shutter, double toneStops) {
        return exposure(film, light, shutter, toneStops, SkyDoubt.USUAL);
    }

    /** The same under light known as well as it is. */
    public static Exposure exposure(FilmStock film, LightCurve light, Shutter shutter, double toneStops,
                                    SkyDoubt doubt) {
        ProgressCurve curve = curve(film, light, shutter.span());
        Instant open = shutter.opensAt();
        double before = curve.progress(shutter.earlier());
        double wanted = Stops.factor(toneStops);
        Optional<Instant> close = curve.reached(open, wanted - before);
        double openS = seconds(open, Optional.of(close.orElse(shutter.available().endExclusive())));
        double made = close.isPresent() ? Math.max(wanted, before)
                : before + curve.progress(open, shutter.available().endExclusive());
        double withoutFailure = curve.withoutFailure(shutter.openings(openS));
        double evenMeteredS = film.reciprocity().meteredS((seconds(shutter.openBefore()) + openS) / made);
        double spreadStops = spreadStops(film, evenMeteredS, doubt.stops(shutter.openings(openS)));
        double meteredS = seconds(open,
                curve.reachedWithoutFailure(open, wanted - curve.withoutFailure(shutter.earlier())));
        return new Exposure(meteredS, seconds(open, close),
                seconds(open, curve.reached(open, wanted * Stops.factor(-spreadStops) - before)),
                seconds(open, curve.reached(open, wanted * Stops.factor(spreadStops) - before)),
                made > 0 ? Math.max(0, Stops.between(made, withoutFailure)) : Double.POSITIVE_INFINITY,
                film.reciprocity().exponentAt(evenMeteredS), film.reciprocity().extrapolated(evenMeteredS),
                close.isEmpty(), toneStops(made), spreadStops);
    }

    /** The exposure that makes a tone under constant light, given the mid-tone's metered time in s. */
    public static Exposure exposure(FilmStock film, double midToneMeteredS, double toneStops) {
        return exposure(film, midToneMeteredS, toneStops, SkyDoubt.USUAL);
    }

    static Exposure exposure(FilmStock film, double midToneMeteredS, double toneStops, SkyDoubt doubt) {
        Reciprocity law = film.reciprocity();
        double share = Stops.factor(toneStops);
        double correctedS = share * law.correctedS(midToneMeteredS);
        double spreadStops = spreadStops(film, midToneMeteredS, doubt.stops(List.of()));
        return new Exposure(orNever(share * midToneMeteredS), orNever(correctedS),
                orNever(correctedS * Stops.factor(-spreadStops)),
                orNever(correctedS * Stops.factor(spreadStops)),
                Stops.between(share * midToneMeteredS, correctedS), law.exponentAt(midToneMeteredS),
                law.extrapolated(midToneMeteredS), correctedS > Exposure.LONGEST_S,
                toneStops - Math.max(0, Stops.between(Exposure.LONGEST_S, correctedS)), spreadStops);
    }

    private static double orNever(double seconds) {
        return seconds > Exposure.LONGEST_S ? Double.POSITIVE_INFINITY : seconds;
    }

    /** Standard deviation of a tone in stops under a sky of which nothing more is known. */
    public static double spreadStops(FilmStock film, double meteredS) {
        return spreadStops(film, meteredS, SkyDoubt.USUAL.stops(List.of()));
    }

    /**
     * Standard deviation of a tone in stops: sky and speed, both steepened by the law, and the law itself,
     * half a stop inside what its source covers and half a stop more a decade beyond. Of a film fitted to
     * judged sheets speed and law are as well known as these show.
     *
     * @param meteredS metered time of the mid-tone in s, which measures how dim the light is
     * @param skyStops standard deviation of the sky's light
     */
    public static double spreadStops(FilmStock film, double meteredS, double skyStops) {
        return Math.hypot(filmSpreadStops(film, meteredS),
                film.reciprocity().exponentAt(meteredS) * skyStops);
    }

    /** What the film has of it. */
    public static double filmSpreadStops(FilmStock film, double meteredS) {
        Reciprocity law = film.reciprocity();
        double steepness = law.exponentAt(meteredS);
        double beyondStops =
                RECIPROCITY_STOPS_PER_DECADE * Math.max(0, Math.log10(meteredS / law.coveredToS()));
        return law instanceof Reciprocity.None ? steepness * SPEED_STOPS
                : law instanceof FittedReciprocity fitted
                ? Math.hypot(fitted.doubtStops(meteredS), beyondStops)
                : Math.hypot(RECIPROCITY_STOPS + beyondStops, steepness * SPEED_STOPS);
    }

    private static ProgressCurve curve(FilmStock film, LightCurve light, Interval span) {
        return new ProgressCurve(film, light, span, step(span));
    }

    private static Duration step(Interval span) {
        return Duration.ofMillis(Math.max(1,
                Math.min(LONGEST_STEP_MS, span.lasts().toMillis() / LEAST_STEPS)));
    }

    private static double seconds(Instant open, Optional<Instant> close) {
        return close.map(at -> seconds(Duration.between(open, at))).orElse(Double.POSITIVE_INFINITY);
    }

    private static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() * 1e-9;
    }
}
