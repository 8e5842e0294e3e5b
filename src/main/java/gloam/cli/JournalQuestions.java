package gloam.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Asks for a sheet one thing at a time; an empty answer leaves it out. */
final class JournalQuestions {

    private record Question(String option, String text) {
    }

    private static final List<Question> EXPOSURE = List.of(
            new Question("--trip", "Trip file, for site, film and camera: "),
            new Question("--plan", "Plan saved as JSON: "),
            new Question("--sheet", "  sheet of the plan: "),
            new Question("--site", "Site of the trip: "),
            new Question("--film", "Film: "),
            new Question("--batch", "Pack or batch: "),
            new Question("--f-number", "F-number: "),
            new Question("--azimuth", "Azimuth of the aim in degrees, from north through east: "),
            new Question("--altitude", "Altitude of the aim in degrees: "),
            new Question("--sky-mag-arcsec2", "Measured sky in mag/arcsec², empty to compute it: "),
            new Question("--temperature", "Temperature in °C: "));
    private static final List<Question> OUTCOME = List.of(
            new Question("--tone", "Tone of the sky (black, very-dark, dark, middle, light, white; empty if not known "
                    + "yet): "),
            new Question("--faintest", "Magnitude of the faintest star seen: "),
            new Question("--spoiled-by", "Spoiled by (cloud, dew, bump, light-leak, late-close, …): "),
            new Question("--note", "Note: "));

    private final Function<String, String> terminal;
    private final List<String> options = new ArrayList<>();

    /** Questions to a terminal, which gives an answer or, at its end, null. */
    JournalQuestions(Function<String, String> terminal) {
        this.terminal = terminal;
    }

    /** The answers as options. */
    List<String> asked() {
        EXPOSURE.forEach(this::ask);
        Question opening = new Question("--open", "Open, such as 2027-02-08T21:35/4h or 2027-02-08T21:35/2027-02-09T01:35 "
                + "(empty when there is no further opening): ");
        while (ask(opening)) {
            continue;
        }
        OUTCOME.forEach(this::ask);
        answer("Kept (yes, no): ").map(kept -> kept.startsWith("y") ? "--kept" : "--no-kept").ifPresent(options::add);
        return List.copyOf(options);
    }

    /** Whether there was an answer. */
    private boolean ask(Question question) {
        Optional<String> answer = answer(question.text);
        answer.ifPresent(given -> options.add(question.option + "=" + given));
        return answer.isPresent();
    }

    private Optional<String> answer(String question) {
        return Optional.ofNullable(terminal.apply(question)).map(String::strip).filter(answer -> !answer.isEmpty());
    }
}
