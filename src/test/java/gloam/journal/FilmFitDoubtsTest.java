package gloam.journal;

import static gloam.journal.FilmFitTest.FILM;
import static gloam.journal.FilmFitTest.PUBLISHED_S;
import static gloam.journal.FilmFitTest.sheet;
import static gloam.journal.FilmFitTest.sheets;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a fit leaves out, and what it warns of. */
class FilmFitDoubtsTest {

    @Test
    void aJudgeOffOrAFarFilmIsWarnedOf() {
        assertTrue(warned(nights(ToneWord.WHITE), FitWarning.FarFromPublished.class));
        // one film in ten and more comes out a stop lighter
        assertTrue(!warned(nights(ToneWord.LIGHT), FitWarning.FarFromPublished.class));
        assertTrue(!warned(nights(ToneWord.WHITE), FitWarning.JudgeOff.class), "which of them is not known");
        List<Entry> contradicting = new ArrayList<>(nights(ToneWord.LIGHT));
        for (int i = 0; i < 4; i++) {
            contradicting.add(Sheets.moved(sheet(10 + i, PUBLISHED_S, Sheets.measured(0, 0.2)), "", i));
        }
        assertTrue(warned(contradicting, FitWarning.JudgeOff.class));
        assertTrue(!warned(contradicting, FitWarning.FarFromPublished.class),
                "measured tones tell them apart");
    }

    @Test
    void aNightWhoseLightWasOffIsNamed() {
        List<Entry> sheets = new ArrayList<>();
        for (int night = 0; night < 4; night++) {
            for (int sheet = 0; sheet < 4; sheet++) {
                sheets.add(Sheets.moved(sheet(4 * night + sheet, PUBLISHED_S, Sheets.judged(night == 2
                        ? ToneWord.WHITE : ToneWord.MIDDLE)), "", night));
            }
        }
        List<FitWarning> warnings = Sheets.fit(FILM, sheets).warnings();
        assertEquals(1, warnings.size(), warnings.toString());
        FilmFit.NightLight night = ((FitWarning.LightOff) warnings.get(0)).night();
        assertEquals("2027-02-10", night.evening().toString());
        assertTrue(night.lightStops().mean() > 0.3);
    }

    @Test
    void spoiledAndUnjudgedSheetsAreLeftOutWithTheReason() {
        Outcome spoiled = new Outcome(Optional.of(new Verdict.InWords(ToneWord.WHITE)),
                OptionalDouble.empty(), Optional.of(false), List.of(Spoiler.LIGHT_LEAK, Spoiler.DEW));
        Outcome unknown = new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of());
        FilmFit fit = Sheets.fit(FILM,
                List.of(sheet(1, PUBLISHED_S, spoiled), sheet(2, PUBLISHED_S, unknown)));
        assertEquals(List.of(new FilmFit.LeftOut("1", "spoiled by light leak, dew"),
                new FilmFit.LeftOut("2", "not judged yet")), fit.leftOut());
        assertSame(FILM, fit.film());
    }

    @Test
    void aWrongNoteBendsLittleAndIsNamed() {
        List<Entry> sheets = new ArrayList<>(sheets(ToneWord.MIDDLE, 6));
        double before = Sheets.fit(FILM, sheets).posterior().speedOffsetStops().mean();
        sheets.add(sheet(7, PUBLISHED_S / 16, Sheets.judged(ToneWord.WHITE)));
        FilmFit fit = Sheets.fit(FILM, sheets);
        assertEquals(1, fit.strayNotes().size());
        assertEquals("7", fit.strayNotes().get(0).id());
        assertEquals("sky tone", fit.strayNotes().get(0).what());
        // nineteen in twenty of its weight is gone
        assertEquals(before, fit.posterior().speedOffsetStops().mean(), 0.05);
    }

    /** Eight nights in lights from dusk to dark, each sheet open for the published time. */
    private static List<Entry> nights(ToneWord word) {
        List<Entry> sheets = new ArrayList<>();
        for (int night = 0; night < 8; night++) {
            double meteredS = 10 * Math.pow(2, night);
            sheets.add(Sheets.moved(Sheets.steady(String.valueOf(night), FILM, meteredS,
                    FILM.reciprocity().correctedS(meteredS), Sheets.judged(word)), "", night));
        }
        return sheets;
    }

    private static boolean warned(List<Entry> sheets, Class<? extends FitWarning> kind) {
        return Sheets.fit(FILM, sheets).warnings().stream().anyMatch(kind::isInstance);
    }
}
