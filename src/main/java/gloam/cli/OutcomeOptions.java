package gloam.cli;

import gloam.journal.Outcome;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.store.Nearest;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** How a sheet came out: as it was said before, with whatever is given changed. */
final class OutcomeOptions {

    @Option(names = "--tone", paramLabel = "WORD", completionCandidates = Candidates.Tones.class, converter = Word.class,
            description = "The sky's tone: black, very-dark, dark, middle, light or white.")
    private Optional<ToneWord> tone;

    @Option(names = "--tone-stops", paramLabel = "STOPS",
            description = "The sky's tone measured, in stops from the film's mid-tone.")
    private Optional<Quantity> toneStops;

    @Option(names = "--tone-spread", paramLabel = "STOPS", defaultValue = "" + Verdict.USUAL_SPREAD_STOPS,
            description = "Its standard deviation, that of the light included (default: ${DEFAULT-VALUE}).")
    private Quantity toneSpreadStops;

    @Option(names = "--faintest", paramLabel = "MAG",
            description = "V magnitude of the faintest trail seen near the centre.")
    private Optional<Quantity> faintestMag;

    @Option(names = "--kept", negatable = true, description = "Whether the sheet is a keeper.")
    private Optional<Boolean> kept;

    @Option(names = "--spoiled-by", paramLabel = "WHAT", split = ",", converter = Cause.class,
            completionCandidates = Candidates.Spoilers.class,
            description = "cloud, dew, frost, bump, wind, light-leak, stray-light, late-open, late-close, early-close, "
                    + "double-exposure, development, old-film or other.")
    private List<Spoiler> spoiledBy = new ArrayList<>();

    /** The outcome. */
    Outcome outcome(Outcome before) {
        if (tone.isPresent() && toneStops.isPresent()) {
            throw new BadInput("give the tone as a word (--tone) or in stops (--tone-stops), not both");
        }
        Optional<Verdict> verdict = tone.<Verdict>map(Verdict.InWords::new).or(() -> toneStops.map(stops ->
                new Verdict.InStops(FromOption.checked("--tone-stops", Verdict.TONE, stops),
                        FromOption.checked("--tone-spread", Verdict.SPREAD, toneSpreadStops))));
        OptionalDouble faintest = faintestMag.map(mag -> OptionalDouble.of(
                FromOption.checked("--faintest", Outcome.MAGNITUDE, mag))).orElse(before.faintestMag());
        return new Outcome(verdict.or(before::verdict), faintest, kept.or(before::kept),
                spoiledBy.isEmpty() ? before.spoiledBy() : spoiledBy);
    }

    private static <E extends Enum<E>> E constant(String text, E[] constants) {
        List<String> words = Candidates.words(constants);
        int index = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
        if (index < 0) {
            throw new BadInput("expected " + String.join(", ", words) + ", found \"" + text + "\""
                    + Nearest.to(text, words).map(near -> "; did you mean " + near + "?").orElse(""));
        }
        return constants[index];
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
