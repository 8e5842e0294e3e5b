package gloam.journal;

import gloam.units.Stops;
import java.util.List;

/**
 * What the fit changes in one light.
 *
 * @param name              the light in words
 * @param meteredS          metered time of the mid-tone on the published film, in seconds
 * @param publishedS        time to the mid-tone by the published film, in seconds
 * @param fittedS           the same by the fitted film
 * @param leastS            bound below which the right time lies with a probability of 2.5 %
 * @param mostS             bound above which it lies with a probability of 2.5 %
 * @param spreadBeforeStops standard deviation of the tone by the film alone, in stops, before any sheet was
 *                          judged
 * @param spreadStops       the same now
 */
public record Situation(String name, double meteredS, double publishedS, double fittedS, double leastS,
        double mostS,
                        double spreadBeforeStops, double spreadStops) {

    /** Lights that night work meets at a middling f-number; common practice, no source. */
    private static final List<Light> TYPICAL = List.of(new Light("late dusk", 30),
            new Light("moonlight", 240), new Light("dark sky", 900));

    /** By how many stops more the fitted film must be exposed than the published one; minus is less. */
    public double changeStops() {
        return Stops.between(publishedS, fittedS);
    }

    /** Three typical situations. */
    public static List<Situation> typical(FilmFit fit) {
        return TYPICAL.stream().map(light -> of(fit, light)).toList();
    }

    private static Situation of(FilmFit fit, Light light) {
        SteadyLight.Times before = SteadyLight.of(fit.prior(), light.meteredS, 0).times();
        SteadyLight.Times now = SteadyLight.of(fit.posterior(), light.meteredS, 0).times();
        return new Situation(light.name, light.meteredS,
                fit.published().reciprocity().correctedS(light.meteredS), fit.correctedS(light.meteredS),
                now.leastS(), now.mostS(), before.spreadStops(), now.spreadStops());
    }

    private record Light(String name, double meteredS) {
    }
}
