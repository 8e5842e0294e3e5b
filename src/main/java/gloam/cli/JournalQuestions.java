package gloam.cli;

import gloam.cli.Questions.Question;
import gloam.ephemeris.Direction;
import gloam.gear.FNumbers;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.light.SkyBrightness;
import gloam.store.FilmFile;
import gloam.store.TripFile;
import gloam.units.Quantity;
import gloam.units.Range;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Asks for a sheet one thing at a time. */
final class JournalQuestions {

    private static final Question TRIP = new Question("--trip", "Trip file, for site, film and camera: ",
            file -> TripFile.read(Path.of(file)));
    private static final Question PLAN = new Question("--plan", "Plan saved as JSON: ");
    private static final Question SHEET = new Question("--sheet", "  sheet of the plan: ");
    private static final List<Question> EXPOSURE = List.of(
            new Question("--site", "Site of the trip: "),
            new Question("--film", "Film: ", FilmFile::film),
            new Question("--batch", "Pack or batch: "),
            new Question("--f-number", "F-number: ", FNumbers::of),
            number("--azimuth", "Azimuth of the aim in degrees, from north through east: ", Direction.AZIMUTH),
            number("--altitude", "Altitude of the aim in degrees: ", Direction.ALTITUDE),
            number("--sky-mag-arcsec2", "Measured sky in mag/arcsec², empty to compute it: ", SkyBrightness.MAG_ARCSEC2),
            number("--temperature", "Temperature in °C: ", Exposed.TEMPERATURE));
    private static final Question OPENING = new Question("--open", "Open, such as 2027-02-08T21:35/4h or "
            + "2027-02-08T21:35/2027-02-09T01:35 (empty when there is no further opening): ", TimedOpening::parse);
    private static final List<Question> OUTCOME = List.of(
            new Question("--tone", "Tone of the sky (black, very-dark, dark, middle, light, white; empty if not known "
                    + "yet): ", new OutcomeOptions.Word()::convert),
            number("--faintest", "Magnitude of the faintest star seen: ", Outcome.MAGNITUDE),
            new Question("--spoiled-by", "Spoiled by (cloud, dew, bump, light-leak, late-close, …): ", causes ->
                    Stream.of(causes.split(",")).forEach(new OutcomeOptions.Cause()::convert)),
            new Question("--note", "Note: "));

    private final Questions questions;

    /** Questions to a terminal, which gives an answer or, at its end, null. */
    JournalQuestions(Function<String, String> terminal) {
        this.questions = new Questions(terminal);
    }

    /** The answers as options. */
    List<String> asked() {
        questions.ask(TRIP);
        if (questions.ask(PLAN)) {
            questions.ask(SHEET);
        }
        EXPOSURE.forEach(questions::ask);
        while (questions.ask(OPENING)) {
            continue;
        }
        OUTCOME.forEach(questions::ask);
        questions.askWhether("Kept (yes, no): ", "--kept", "--no-kept");
        return questions.options();
    }

    private static Question number(String option, String text, Range range) {
        return new Question(option, text, answer -> new Quantity(answer).in(range));
    }
}
