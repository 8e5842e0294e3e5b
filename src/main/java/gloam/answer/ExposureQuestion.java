package gloam.answer;

import gloam.exposure.Bracket;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.light.GroundLight;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked about an exposure.
 *
 * @param film              the film
 * @param lens              the lens, all of whose f-numbers are set side by side
 * @param frame             the exposed area, where it is known
 * @param skies             what tells the brightness of the sky; the first is exposed for, the others
 *                          compared with it
 * @param groundReflectance of level ground, where that is to be exposed for in place of the sky
 * @param earlier           openings already made on the same sheet
 * @param leastDifferenceDensity least difference from the sky's tone by which a trail shows
 * @param unknown           what is wanted to know
 */
public record ExposureQuestion(FilmStock film, Lens lens, Optional<Frame> frame, List<KnownSky> skies,
                               OptionalDouble groundReflectance, List<Interval> earlier,
                               double leastDifferenceDensity, Unknown unknown) {

    /** Refuses what only a computed sky can answer, of any other, with {@link BadInput}. */
    public ExposureQuestion {
        skies = List.copyOf(skies);
        earlier = List.copyOf(earlier);
        TrailLimit.LEAST_DIFFERENCE.check(leastDifferenceDensity);
        if (groundReflectance.isPresent()) {
            GroundLight.REFLECTANCE.check(groundReflectance.getAsDouble());
            if (!(skies.get(0) instanceof KnownSky.Computed)) {
                throw new BadInput("light on the ground is computed from Sun and Moon; "
                        + "add a site and --at or --from");
            }
        }
        boolean changes = skies.get(0) instanceof KnownSky.Computed computed && !computed.steady();
        if (!earlier.isEmpty() && !changes) {
            throw new BadInput("openings by the clock need a sky computed as it changes; "
                    + "add a site and --from");
        }
    }

    /** What is wanted to know. */
    public sealed interface Unknown {
    }

    /**
     * The time for a tone.
     *
     * @param toneStops the tone in stops from the mid-tone
     * @param sheets    how many sheets may be spent on it
     */
    public record TimeFor(double toneStops, int sheets) implements Unknown {

        /** Refuses a number of sheets out of range with {@link BadInput}. */
        public TimeFor {
            Bracket.SHEETS.check(sheets);
        }
    }

    /**
     * The tone after a time.
     *
     * @param lasts how long the shutter is open
     */
    public record ToneAfter(Duration lasts) implements Unknown {
    }

    /** The sky exposed for. */
    public KnownSky sky() {
        return skies.get(0);
    }

    /** The computed one of the skies, which knows place, aim and time, whether it is exposed for or not. */
    public Optional<KnownSky.Computed> computed() {
        return skies.stream().filter(KnownSky.Computed.class::isInstance)
                .map(KnownSky.Computed.class::cast).findFirst();
    }
}
