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

/** What a correction can take back: how an entry is without it, and the options that say it. */
enum Clearable {
    TONE(outcome(was -> new Outcome(Optional.empty(), was.faintestMag(), was.kept(), was.spoiledBy(),
            was.reading())),
            "--tone", "--tone-stops", "--tone-spread"),
    FAINTEST(outcome(was -> new Outcome(was.verdict(), OptionalDouble.empty(), was.kept(),
            was.spoiledBy(), was.reading())), "--faintest"),
    KEPT(outcome(was -> new Outcome(was.verdict(), was.faintestMag(), Optional.empty(), was.spoiledBy(),
            was.reading())),
            "--kept"),
    SPOILED_BY(outcome(was -> new Outcome(was.verdict(), was.faintestMag(), was.kept(), List.of(),
            was.reading())), "--spoiled-by"),
    READING(outcome(was -> was.read(Optional.empty()))),
    NOTE(was -> said(was, was.withdrawn(), was.outcome(), "", was.wish(), was.picture()), "--note"),
    WISH(was -> said(was, was.withdrawn(), was.outcome(), was.note(), Optional.empty(), was.picture()),
            "--wish"),
    PICTURE(was -> said(was, was.withdrawn(), was.outcome(), was.note(), was.wish(), Optional.empty()),
            "--picture"),
    BATCH(exposed(was -> of(was, "", was.place(), was.aim(), was.measured(), was.temperatureC())),
            "--batch"),
    TEMPERATURE(exposed(was -> of(was, was.batch(), was.place(), was.aim(), was.measured(),
            OptionalDouble.empty())), "--temperature"),
    AIM(exposed(was -> of(was, was.batch(), was.place(), Optional.empty(), was.measured(),
            was.temperatureC())), "--azimuth", "--altitude", "--plan"),
    SITE(exposed(was -> of(was, was.batch(), Optional.empty(), was.aim(), was.measured(),
            was.temperatureC())), "--trip", "--site", "--place", "--lat", "--lon", "--height", "--zone"),
    SKY(exposed(was -> of(was, was.batch(), was.place(), was.aim(), false, was.temperatureC())),
            "--sky-mag-arcsec2"),
    WITHDRAW(was -> said(was, false, was.outcome(), was.note(), was.wish(), was.picture()), "--withdraw");

    private final UnaryOperator<Entry> without;
    private final List<String> options;

    Clearable(UnaryOperator<Entry> without, String... options) {
        this.without = without;
        this.options = List.of(options);
    }

    /** An entry that does not say it. */
    Entry without(Entry entry) {
        return without.apply(entry);
    }

    /** The options that say it. */
    List<String> options() {
        return options;
    }

    private static UnaryOperator<Entry> outcome(UnaryOperator<Outcome> change) {
        return was -> said(was, was.withdrawn(), change.apply(was.outcome()), was.note(), was.wish(),
                was.picture());
    }

    private static UnaryOperator<Entry> exposed(UnaryOperator<Exposed> change) {
        return was -> was.exposed(change.apply(was.exposed()));
    }

    private static Entry said(Entry was, boolean withdrawn, Outcome outcome, String note,
            Optional<String> wish, Optional<String> picture) {
        return new Entry(was.id(), was.identity(), was.writtenAt(), withdrawn, was.exposed(), outcome, note,
                wish, was.plannedToneStops(), picture);
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
