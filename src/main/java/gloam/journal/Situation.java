package gloam.journal;

import gloam.units.Stops;
import java.util.List;

/**
 * What the journal changes in one light.
 *
 * @param name              the light in words
 * @param meteredS          metered time of the mid-tone on the published film, in s
 * @param publishedS        time to the mid-tone by the published film, in s
 * @param fittedS           the same by the fitted film
 * @param leastS            the right time is below this once in forty
 * @param mostS             the right time is above this once in forty
 * @param spreadBeforeStops standard deviation of the tone from the film alone, before the journal
 * @param spreadStops       the same with it
 */
public record Situation(String name, double meteredS, double publishedS, double fittedS, double leastS, double mostS,
                        double spreadBeforeStops, double spreadStops) {

    /** Lights that night work meets at a middling f-number; common practice, no source. */
    private static final List<Light> TYPICAL = List.of(new Light("late dusk", 30), new Light("moonlight", 240),
            new Light("dark sky", 900));

    /** By how many stops the fitted film needs more light than the published one. */
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
                fit.prior().grid().published().reciprocity().correctedS(light.meteredS), now.timeS(), now.leastS(),
                now.mostS(), before.spreadStops(), now.spreadStops());
    }

    private record Light(String name, double meteredS) {
    }
}
