package gloam.cli;

import gloam.journal.Outcome;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.BadInput;
import gloam.units.Label;
import gloam.units.Nearest;
import gloam.units.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;

/** How a sheet came out: as it was said before, with whatever is given changed. */
final class OutcomeOptions extends OptionGroup {

    /** What of it can be taken back. */
    static final List<Clearable> CLEARABLE = List.of(
            Clearable.ofOutcome("tone", was -> new Outcome(Optional.empty(), was.faintestMag(), was.kept(),
                    was.spoiledBy(), was.reading()), "--tone", "--tone-stops", "--tone-spread"),
            Clearable.ofOutcome("faintest", was -> new Outcome(was.verdict(), OptionalDouble.empty(),
                    was.kept(), was.spoiledBy(), was.reading()), "--faintest"),
            Clearable.ofOutcome("kept", was -> new Outcome(was.verdict(), was.faintestMag(),
                    Optional.empty(), was.spoiledBy(), was.reading()), "--kept"),
            Clearable.ofOutcome("spoiled-by", was -> new Outcome(was.verdict(), was.faintestMag(),
                    was.kept(), List.of(), was.reading()), "--spoiled-by"),
            Clearable.ofOutcome("reading", was -> was.read(Optional.empty())));

    private final Option<ToneWord> tone = option("--tone", "WORD", ToneWord.class,
            "The sky's tone: black, very-dark, dark, middle, light or white.")
            .readBy(new Word()).completedBy(new Candidates.Tones());

    private final Option<Quantity> toneStops = option("--tone-stops", "STOPS", Quantity.class,
            "The sky's tone measured, in stops from the film's mid-tone.");

    private final Option<Quantity> toneSpreadStops = option("--tone-spread", "STOPS", Quantity.class,
            "Its standard deviation, that of the light included (default: " + Verdict.USUAL_SPREAD_STOPS
            + ").");

    private final Option<Quantity> faintestMag = option("--faintest", "MAG", Quantity.class,
            "V magnitude of the faintest trail seen near the centre.");

    private final Option<Boolean> kept = flag("--kept", "Whether the sheet is a keeper.").deniable();

    private final Option<List<Spoiler>> spoiledBy = repeated("--spoiled-by", "WHAT", Spoiler.class,
            "cloud, dew, bump, late-close, …; an unknown word lists all.")
            .readBy(new Cause()).completedBy(new Candidates.Spoilers()).withCommas();

    /** Whether anything is said. */
    boolean given() {
        return tone.given() || toneStops.given() || toneSpreadStops.given() || faintestMag.given()
                || kept.given() || spoiledBy.given();
    }

    /** The outcome. */
    Outcome outcome(Outcome before) {
        return new Outcome(verdict(before.verdict()), faintestMag.value().map(mag -> OptionalDouble.of(
                FromOption.checked("--faintest", Outcome.MAGNITUDE, mag))).orElse(before.faintestMag()),
                kept.value().or(before::kept), spoiledBy.get().isEmpty() ? before.spoiledBy()
                : spoiledBy.get(), before.reading());
    }

    private Optional<Verdict> verdict(Optional<Verdict> before) {
        if (tone.given() && toneStops.given()) {
            throw new BadInput("give the tone as a word (--tone) or in stops (--tone-stops), not both");
        }
        Optional<Verdict.InStops> was = before.filter(verdict -> !tone.given()
                && verdict instanceof Verdict.InStops)
                .map(Verdict.InStops.class::cast);
        if (toneSpreadStops.given() && !toneStops.given() && was.isEmpty()) {
            throw new BadInput("--tone-spread belongs to a tone in stops; add --tone-stops STOPS");
        }
        if (!toneStops.given() && !toneSpreadStops.given()) {
            return tone.value().<Verdict>map(Verdict.InWords::new).or(() -> before);
        }
        double spreadStops = toneSpreadStops.value().map(stops ->
                FromOption.checked("--tone-spread", Verdict.SPREAD, stops))
                .or(() -> was.map(Verdict.InStops::spreadStops)).orElse(Verdict.USUAL_SPREAD_STOPS);
        return Optional.of(new Verdict.InStops(toneStops.value().map(stops ->
                FromOption.checked("--tone-stops", Verdict.TONE, stops))
                .or(() -> was.map(Verdict.InStops::stops))
                .orElseThrow(), spreadStops));
    }

    /** The constant that a word names. */
    static <E extends Enum<E>> E constant(String text, E[] constants) {
        return Label.named(text, List.of(constants)).orElseThrow(() ->
                unknown(text, Label.all(List.of(constants))));
    }

    /** The refusal of a word that is none of some. */
    static BadInput unknown(String text, List<String> words) {
        return new BadInput("expected " + String.join(", ", words) + ", found \"" + text + "\""
                + Nearest.question(text, words).map("; "::concat).orElse(""));
    }

    /** A word for a tone. */
    static final class Word implements ITypeConverter<ToneWord> {

        @Override
        public ToneWord convert(String text) {
            return constant(text, ToneWord.values());
        }
    }

    /** A word for what spoils a sheet. */
    static final class Cause implements ITypeConverter<Spoiler> {

        @Override
        public Spoiler convert(String text) {
            return constant(text, Spoiler.values());
        }
    }
}
