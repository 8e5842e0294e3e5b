package gloam.cli;

import gloam.ephemeris.Body;
import gloam.ephemeris.Constellation;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.Target;
import gloam.store.Nearest;
import gloam.units.BadInput;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something in the sky called by a name.
 *
 * @param name   its name
 * @param target what it is; of a constellation the middle
 */
record SkyTarget(String name, Target target) {

    private static final String GALACTIC_CENTRE = "galactic-centre";

    /** The body, galactic centre, constellation or star of that name. */
    static SkyTarget of(String word, StarCatalogue stars) {
        if (word.strip().equalsIgnoreCase(GALACTIC_CENTRE)) {
            return new SkyTarget(Star.GALACTIC_CENTRE.name(), Star.GALACTIC_CENTRE);
        }
        Optional<SkyTarget> body = Arrays.stream(Body.values()).filter(one -> one.label().equalsIgnoreCase(word.strip()))
                .map(one -> new SkyTarget(one.label(), one)).findFirst();
        return body.or(() -> Constellation.named(word).map(one -> one.middle(stars)).or(() -> stars.named(word))
                .map(star -> new SkyTarget(star.name(), star))).orElseThrow(() -> unknown(word, stars));
    }

    private static BadInput unknown(String word, StarCatalogue stars) {
        List<String> names = Stream.of(Stream.of(GALACTIC_CENTRE), Arrays.stream(Body.values()).map(Body::label),
                        Constellation.all().stream().map(Constellation::name), stars.stars().stream().map(Star::name))
                .flatMap(some -> some).toList();
        return new BadInput("nothing in the sky is named \"" + word + "\"; " + Nearest.to(word, names)
                .map(near -> "did you mean " + near + "?")
                .orElse("give galactic-centre, a body, a constellation or a star, such as Orion or Vega"));
    }
}
