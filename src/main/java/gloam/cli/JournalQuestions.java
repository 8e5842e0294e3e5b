package gloam.cli;

import gloam.cli.Questions.Question;
import java.util.List;
import java.util.function.Function;

/** Asks for a sheet one thing at a time. */
final class JournalQuestions {

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
    private static final Question OPENING = new Question("--open", "Open, such as 2027-02-08T21:35/4h or "
            + "2027-02-08T21:35/2027-02-09T01:35 (empty when there is no further opening): ", TimedOpening::parse);
    private static final List<Question> OUTCOME = List.of(
            new Question("--tone", "Tone of the sky (black, very-dark, dark, middle, light, white; empty if not known "
                    + "yet): "),
            new Question("--faintest", "Magnitude of the faintest star seen: "),
            new Question("--spoiled-by", "Spoiled by (cloud, dew, bump, light-leak, late-close, …): "),
            new Question("--note", "Note: "));

    private final Questions questions;

    /** Questions to a terminal, which gives an answer or, at its end, null. */
    JournalQuestions(Function<String, String> terminal) {
        this.questions = new Questions(terminal);
    }

    /** The answers as options. */
    List<String> asked() {
        EXPOSURE.forEach(questions::ask);
        while (questions.ask(OPENING)) {
            continue;
        }
        OUTCOME.forEach(questions::ask);
        questions.askWhether("Kept (yes, no): ", "--kept", "--no-kept");
        return questions.options();
    }
}
