package gloam.view;

import gloam.answer.KnownFilm;
import gloam.journal.Estimate;

/** Words about films and what a journal says of them. */
public final class FilmWords {

    private FilmWords() {
    }

    /** A film, and how many sheets it is fitted to where it is. */
    static String name(String name, int fittedToSheets) {
        return fittedToSheets == 0 ? name : name + " (fitted to " + Wording.count(fittedToSheets, "sheet")
                + ")";
    }

    /** What a journal knows of the film of that name, in one line. */
    public static String of(String published, KnownFilm known) {
        return known.used() == 0
                ? "the journal has no judged sheet of " + published + ", which is taken as published"
                : known.pack().map(pack -> published + ", pack " + pack.name() + " (fitted to "
                        + Wording.count(known.used(), "sheet") + ", "
                        + (pack.used() == 0 ? "none" : pack.used())
                        + " of that pack)").orElseGet(() -> name(published, known.used()))
                + ": " + slower(known.speedOffsetStops()) + " than rated, exponent "
                + estimate(known.exponent());
    }

    /** By how much a film is slower or faster, such as 0.59 ± 0.38 stops slower. */
    static String slower(Estimate offsetStops) {
        double slower = offsetStops.mean();
        return estimate(new Estimate(Math.abs(slower), offsetStops.sd())) + " stops "
                + (Wording.number(slower, 2).startsWith("\u2212") ? "faster" : "slower");
    }

    /** An estimate and its standard deviation. */
    static String estimate(Estimate estimate) {
        return Wording.number(estimate.mean(), 2) + " ± " + Wording.number(estimate.sd(), 2);
    }
}
