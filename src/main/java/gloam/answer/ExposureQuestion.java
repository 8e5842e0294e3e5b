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
 * A question about an exposure.
 *
 * @param film              the film
 * @param lens              the lens with all f-numbers to compare
 * @param frame             the exposed area, where it is known
 * @param skies             readings of the sky: the first is exposed for, the others are compared with it
 * @param groundReflectance share of the light that level ground reflects, 0 to 1, to expose for the ground;
 *                          empty to expose for the sky
 * @param earlier           earlier exposures on the same sheet
 * @param leastDifferenceDensity least difference in density from the sky at which a trail shows
 * @param unknown           what to find
 */
public record ExposureQuestion(FilmStock film, Lens lens, Optional<Frame> frame, List<KnownSky> skies,
                               OptionalDouble groundReflectance, List<Interval> earlier,
                               double leastDifferenceDensity, Unknown unknown) {

    /** Refuses, with {@link BadInput}, ground light and several openings unless the sky is computed. */
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

    /** What to find. */
    public sealed interface Unknown {
    }

    /**
     * The time for a tone.
     *
     * @param toneStops the tone in stops from the mid-tone
     * @param sheets    number of sheets to expose
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

    /** The same of another film. */
    public ExposureQuestion of(FilmStock another) {
        return new ExposureQuestion(another, lens, frame, skies, groundReflectance, earlier,
                leastDifferenceDensity, unknown);
    }

    /** The sky exposed for. */
    public KnownSky sky() {
        return skies.get(0);
    }

    /**
     * The computed reading of the sky, if any; it knows place, aim and time even if another is exposed for.
     */
    public Optional<KnownSky.Computed> computed() {
        return skies.stream().filter(KnownSky.Computed.class::isInstance)
                .map(KnownSky.Computed.class::cast).findFirst();
    }
}
