package gloam.cli;

import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.Target;
import gloam.store.Nearest;
import gloam.units.BadInput;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Finds what a word means in the sky. */
final class Targets {

    private Targets() {
    }

    /** A body by its name. */
    static Body body(String name) {
        return known(name).orElseThrow(() -> new BadInput("body \"" + name + "\" is unknown; "
                + Nearest.to(name, bodies()).map(near -> "did you mean " + near + "?")
                        .orElse("it is one of " + String.join(", ", bodies()))));
    }

    /** A body, a star of the catalogue by name, or a place given as RA,DEC in degrees. */
    static Target target(String text, Supplier<StarCatalogue> catalogue) {
        Optional<Body> body = known(text);
        if (body.isPresent()) {
            return body.get();
        }
        if (text.contains(",")) {
            return Converters.star(text);
        }
        StarCatalogue stars = catalogue.get();
        return stars.named(text).orElseThrow(() -> new BadInput("no body or star is called \"" + text + "\"; " + Nearest.to(text, Stream.concat(bodies().stream(), stars.stars().stream()
                        .map(Star::name)).toList()).map(near -> "did you mean " + near + "?")
                        .orElse("give a planet, a star such as Vega or \"α Lyr\", or RA,DEC in degrees")));
    }

    private static Optional<Body> known(String name) {
        return Arrays.stream(Body.values()).filter(body -> body.label().equals(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static List<String> bodies() {
        return Arrays.stream(Body.values()).map(Body::label).toList();
    }
}
