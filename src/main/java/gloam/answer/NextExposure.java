package gloam.answer;

import gloam.exposure.FilmPlane;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.journal.FilmFit;
import gloam.journal.Journal;
import gloam.journal.NextSheet;
import gloam.journal.Verdict;
import gloam.light.SkyBrightness;
import gloam.units.BadInput;
import java.time.Duration;

/**
 * The exposure to try next.
 *
 * @param fit    the film as the journal knows it
 * @param wanted the question
 * @param advice which exposures are most likely right and most telling
 */
public record NextExposure(FilmFit fit, Wanted wanted, NextSheet.Advice advice) {

    /**
     * What is wanted of the next sheet.
     *
     * @param lens       the lens, with the f-numbers to choose from
     * @param sky        the sky at the frame's centre
     * @param shortest   the shortest exposure possible
     * @param longest    the longest one
     * @param toneStops  the tone wanted, in stops from the mid-tone
     * @param sheetsLeft sheets left
     */
    public record Wanted(Lens lens, SkyBrightness sky, Duration shortest, Duration longest, double toneStops,
                         int sheetsLeft) {

        /** Refuses what is out of range with {@link BadInput}. */
        public Wanted {
            NextSheet.SHEETS_LEFT.check(sheetsLeft);
            Verdict.TONE.check(toneStops);
            if (longest.compareTo(shortest) < 0) {
                throw new BadInput("the longest exposure is below the shortest; give a longer one");
            }
        }
    }

    /**
     * The advice for a film by its sheets in a journal.
     *
     * @param batch the pack or batch of the next sheet; empty if not named
     */
    public static NextExposure of(FilmStock published, Journal journal, String batch, Wanted wanted) {
        FilmFit fit = KnownFilm.fit(published, journal, batch);
        NextSheet next = new NextSheet(fit.posterior(), new NextSheet.Wanted(
                FilmPlane.meteredS(published, wanted.lens, FNumber.ONE, wanted.sky), wanted.lens.fNumbers(),
                wanted.shortest.toMillis() / 1000.0, wanted.longest.toMillis() / 1000.0, wanted.toneStops));
        return new NextExposure(fit, wanted, next.advice(wanted.sheetsLeft));
    }

    /** The exposure advised. */
    public NextSheet.Choice chosen() {
        return advice.learnFirst() ? advice.telling() : advice.likeliest();
    }
}
