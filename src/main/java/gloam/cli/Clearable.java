package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Outcome;
import gloam.journal.Place;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What a correction can take back.
 *
 * @param word    how {@code --clear} names it
 * @param without an entry that does not say it, by the entry that may
 * @param options the options that say it
 */
record Clearable(String word, UnaryOperator<Entry> without, List<String> options) {

    static final Clearable AIM = ofExposed("aim", was -> of(was, was.batch(), was.place(), Optional.empty(),
            was.measured(), was.temperatureC()), "--azimuth", "--altitude", "--plan");
    static final Clearable SITE = ofExposed("site", was -> of(was, was.batch(), Optional.empty(), was.aim(),
            was.measured(), was.temperatureC()),
            "--trip", "--site", "--place", "--lat", "--lon", "--height", "--zone");

    private static final List<Clearable> OF_EXPOSURE = List.of(
            ofExposed("batch", was -> of(was, "", was.place(), was.aim(), was.measured(),
                    was.temperatureC()), "--batch"),
            ofExposed("temperature", was -> of(was, was.batch(), was.place(), was.aim(), was.measured(),
                    OptionalDouble.empty()), "--temperature"),
            AIM, SITE,
            ofExposed("sky", was -> of(was, was.batch(), was.place(), was.aim(), false, was.temperatureC()),
                    "--sky-mag-arcsec2"),
            ofEntry("withdraw", was -> was.withdrawn(false), "--withdraw"));

    /** All that can be taken back. */
    static List<Clearable> all() {
        return Stream.of(OutcomeOptions.CLEARABLE, RemarkOptions.CLEARABLE, OF_EXPOSURE)
                .flatMap(List::stream).toList();
    }

    /** The words for all of it. */
    static List<String> words() {
        return all().stream().map(Clearable::word).toList();
    }

    /** What an entry says. */
    static Clearable ofEntry(String word, UnaryOperator<Entry> without, String... options) {
        return new Clearable(word, without, List.of(options));
    }

    /** What an entry says of how the sheet came out. */
    static Clearable ofOutcome(String word, UnaryOperator<Outcome> without, String... options) {
        return ofEntry(word, was -> was.cameOut(without.apply(was.outcome())), options);
    }

    private static Clearable ofExposed(String word, UnaryOperator<Exposed> without, String... options) {
        return ofEntry(word, was -> was.exposed(without.apply(was.exposed())), options);
    }

    /** The light and the stars stay; without an aim no opening has one of its own. */
    private static Exposed of(Exposed was, String batch, Optional<Place> place, Optional<Direction> aim,
            boolean measured, OptionalDouble temperatureC) {
        List<Opening> openings = aim.isPresent() ? was.openings() : was.openings().stream().map(opening ->
                opening.set(Optional.empty(), opening.fNumber())).toList();
        return new Exposed(was.film(), batch, place, aim, was.lens(), openings, measured, was.stars(),
                temperatureC);
    }
}
