package gloam.cli;

import gloam.cli.Questions.Question;
import gloam.ephemeris.Direction;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.light.SkyBrightness;
import gloam.store.FilmFile;
import gloam.units.Quantity;
import gloam.units.Range;
import java.util.List;

/** Asks for a sheet one thing at a time. */
final class JournalQuestions {

    private static final List<Question> EXPOSURE = List.of(
            new Question("--film", "Film: ", FilmFile::film),
            new Question("--batch", "Pack or batch: "),
            new Question("--f-number", "F-number: "),
            number("--azimuth", "Azimuth of the aim in degrees, from north through east: ",
            Direction.AZIMUTH), number("--altitude", "Altitude of the aim in degrees: ", Direction.ALTITUDE),
            number("--sky-mag-arcsec2", "Measured sky in mag/arcsec², empty to compute it: ",
            SkyBrightness.MAG_ARCSEC2), number("--temperature", "Temperature in °C: ", Exposed.TEMPERATURE));
    private static final Question TONE = new Question("--tone",
            "Tone of the sky (black, very-dark, dark, middle, light, white; empty if not known yet): ");
    private static final List<Question> OUTCOME = List.of(
            number("--faintest", "Magnitude of the faintest star seen: ", Outcome.MAGNITUDE),
            new Question("--spoiled-by", "Spoiled by (cloud, dew, bump, light-leak, late-close, …): "),
            new Question("--note", "Note: "),
            new Question("--kept", "Kept (yes, no): "));

    private JournalQuestions() {
    }

    /** Asks for what of a sheet and its outcome was not given. */
    static void ask(Questions questions, SheetOptions sheet, OutcomeOptions outcome) {
        if (!sheet.placedDirectly()) {
            questions.ask(trip(sheet));
        }
        questions.ask(new Question("--plan", "Plan saved as JSON: "));
        if (sheet.anyGiven("--plan")) {
            questions.ask(new Question("--sheet", "  sheet of the plan: ", answer -> sheet.planned()));
        }
        if (sheet.anyGiven("--trip")) {
            questions.ask(new Question("--site", "Site of the trip: ", answer -> sheet.checkSite()));
        }
        EXPOSURE.forEach(questions::ask);
        questions.askAll(new Question("--open", "Open, such as 2027-02-08T21:35/4h or "
                + "2027-02-08T21:35/2027-02-09T01:35 (empty when there is no further opening): ",
                answer -> sheet.checkOpenings()));
        if (!outcome.anyGiven("--tone-stops")) {
            questions.ask(TONE);
        }
        OUTCOME.forEach(questions::ask);
    }

    /** Asks for the trip file. */
    static Question trip(SheetOptions sheet) {
        return new Question("--trip", "Trip file, for site, film and camera: ",
                answer -> sheet.checkSite());
    }

    private static Question number(String option, String text, Range range) {
        return new Question(option, text, answer -> new Quantity(answer).in(range));
    }
}
