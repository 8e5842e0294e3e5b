package gloam.ephemeris;

import gloam.units.BadInput;
import gloam.units.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Something in the sky by what it is called: the one meaning of such a word, wherever it stands.
 *
 * @param name   its name
 * @param target what it is; of a constellation the middle
 */
public record NamedTarget(String name, Target target) {

    private static final String GALACTIC_CENTRE = "galactic-centre";

    /**
     * What a word means: a body, {@code galactic-centre}, a place given as RA,DEC in degrees, a constellation
     * or a star of the catalogue, which is asked for only then; case does not matter.
     *
     * @throws BadInput when it means nothing in the sky
     */
    public static NamedTarget of(String word, Supplier<StarCatalogue> catalogue) {
        String wanted = word.strip();
        if (wanted.equalsIgnoreCase(GALACTIC_CENTRE)) {
            return new NamedTarget(Star.GALACTIC_CENTRE.name(), Star.GALACTIC_CENTRE);
        }
        Optional<Body> body = known(wanted);
        if (body.isPresent()) {
            return new NamedTarget(body.get().label(), body.get());
        }
        if (wanted.contains(",")) {
            return of(Star.parse(wanted));
        }
        StarCatalogue stars = catalogue.get();
        return Constellation.named(wanted).map(one -> one.middle(stars)).or(() -> stars.named(wanted))
                .map(NamedTarget::of).orElseThrow(() -> unknown(word, stars));
    }

    /** The body of that name. */
    public static Body body(String word) {
        List<String> bodies = Arrays.stream(Body.values()).map(Body::label).toList();
        return known(word.strip()).orElseThrow(() -> new BadInput("body \"" + word + "\" is unknown; "
                + Nearest.question(word, bodies).orElse("it is one of " + String.join(", ", bodies))));
    }

    private static NamedTarget of(Star star) {
        return new NamedTarget(star.name(), star);
    }

    private static Optional<Body> known(String word) {
        return Arrays.stream(Body.values()).filter(body -> body.label().equalsIgnoreCase(word)).findFirst();
    }

    private static BadInput unknown(String word, StarCatalogue stars) {
        List<String> names = Stream.of(Stream.of(GALACTIC_CENTRE),
                        Arrays.stream(Body.values()).map(Body::label),
                        Constellation.all().stream().map(Constellation::name),
                        stars.stars().stream().map(Star::name))
                .flatMap(some -> some).toList();
        return new BadInput("nothing in the sky is named \"" + word + "\"; " + Nearest.question(word, names)
                .orElse("give a body, a constellation, a star such as Vega or \"α Lyr\", galactic-centre, "
                        + "or RA,DEC in degrees"));
    }
}
