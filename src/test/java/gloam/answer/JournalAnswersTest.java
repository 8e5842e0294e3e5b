package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import gloam.light.SkyBrightness;
import gloam.units.BadInput;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JournalAnswersTest {

    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));
    private static final Lens LENS = new Lens(120, List.of(FNumber.exact(8), FNumber.exact(11)), 0.9,
            Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE);

    private static Journal journal(Entry... entries) {
        return Journal.of(List.of(entries), List.of());
    }

    private static Journal judged() {
        return journal(Sheets.steady("1", FILM, 100, 400, Sheets.measured(1, 0.5)),
                Sheets.steady("2", FILM, 5000, 40_000, Sheets.judged(ToneWord.BLACK)),
                Sheets.steady("3", FILM, 100, 400, Sheets.judged(ToneWord.MIDDLE)));
    }

    /** A measured tone of +1.0 ± 0.5 lies between 0.5 and 1.5; black has no lower bound. */
    @Test
    void aFitTellsBetweenWhatTonesASheetWasSaidToBe() {
        List<Fit.Judged> used = Fit.of(FILM, judged(), "").used();
        assertEquals(List.of("1", "2", "3"), used.stream().map(one -> one.sheet().entry().id()).toList());
        assertEquals(0.5, used.get(0).aboveStops().orElseThrow(), 1e-12);
        assertEquals(1.5, used.get(0).upToStops().orElseThrow(), 1e-12);
        assertTrue(used.get(1).aboveStops().isEmpty());
        assertEquals(ToneWord.BLACK.upToStops(), used.get(1).upToStops().orElseThrow());
        assertEquals(ToneWord.MIDDLE.aboveStops(), used.get(2).aboveStops().orElseThrow());
    }

    /**
     * The published curve is metered^1.3; it is drawn from 10 s to 1 h, or half as far again as the dimmest
     * sheet.
     */
    @Test
    void theCurveReachesBeyondTheSheets() {
        Fit none = Fit.of(FILM, journal(), "");
        Fit some = Fit.of(FILM, judged(), "");
        assertEquals(10, none.curve().get(0).meteredS(), 1e-9);
        assertEquals(3600, none.curve().get(none.curve().size() - 1).meteredS(), 1e-6);
        assertEquals(7500, some.curve().get(some.curve().size() - 1).meteredS(), 1e-3);
        none.curve().forEach(point ->
                assertEquals(Math.pow(point.meteredS(), 1.3), point.publishedS(), 1e-6 * point.publishedS()));
        assertEquals(3, none.situations().size());
    }

    /** All sheets tell of the law, those of other packs less of a pack's speed. */
    @Test
    void aBatchIsAPackOfTheFilm() {
        Fit another = Fit.of(FILM, judged(), "another");
        assertEquals(3, another.used().size());
        assertEquals("another", another.batch());
        assertTrue(another.film().posterior().speedOffsetStops().sd()
                > Fit.of(FILM, judged(), "").film().posterior().speedOffsetStops().sd());
    }

    @Test
    void aFilmWithoutSheetsIsThePublishedOne() {
        KnownFilm none = KnownFilm.of(FILM, journal(), Optional.empty());
        assertEquals(0, none.used());
        assertEquals(FILM, none.film());
        KnownFilm some = KnownFilm.of(FILM, judged(), Optional.empty());
        assertEquals(3, some.used());
        assertTrue(some.speedOffsetStops().sd() < none.speedOffsetStops().sd(),
                "three sheets tell something");
    }

    private static NextExposure.Wanted wanted(int sheets, Duration shortest, Duration longest) {
        return new NextExposure.Wanted(LENS, List.of(new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21))),
                shortest, longest, -1, sheets, Optional.empty());
    }

    private static NextExposure next(NextExposure.Wanted wanted) {
        return NextExposure.of(() -> {
            throw new AssertionError("a measured sky is not computed");
        }, FILM, judged(), "", wanted);
    }

    @Test
    void theOneMostLikelyRightIsAdvised() {
        NextExposure next = next(wanted(1, Duration.ofMinutes(1), Duration.ofHours(6)));
        next.choices().forEach(choice -> assertTrue(choice.rightChance() <= next.chosen().rightChance()));
        assertEquals(LENS.fNumbers(), next.choices().stream().map(NextExposure.Choice::fNumber).toList());
        assertTrue(next.chosen().exposureS() >= 60 && next.chosen().exposureS() <= 6 * 3600);
        assertEquals(3, next.fit().used().size());
    }

    /**
     * The film is right at some minutes: between two and three hours everything advised lies there all the
     * same.
     */
    @Test
    void advisedTimesKeepToTheirBounds() {
        NextExposure next = next(wanted(3, Duration.ofHours(2), Duration.ofHours(3)));
        for (NextExposure.Choice choice : next.choices()) {
            assertTrue(choice.exposureS() >= 7200 && choice.exposureS() <= 10_800, choice.toString());
            assertTrue(choice.bracket().isEmpty(), "three sheets a stop apart do not fit");
        }
    }

    @Test
    void whatCannotBeAdvisedIsRefused() {
        assertThrows(BadInput.class, () -> wanted(2, Duration.ofMinutes(2), Duration.ofMinutes(1)));
        assertThrows(BadInput.class, () -> wanted(0, Duration.ofMinutes(1), Duration.ofMinutes(2)));
        assertEquals(Duration.ofMinutes(2), wanted(1, Duration.ofMinutes(2), Duration.ofMinutes(2))
                .longest());
    }

    @Test
    void keepersAreCountedByFilm() {
        FilmStock other = Films.negative(100, Reciprocity.none());
        Keepers keepers = Keepers.of(journal(Sheets.steady("1", FILM, 100, 400, Sheets.judged(ToneWord.DARK)),
                Sheets.steady("2", FILM, 100, 400, Sheets.judged(ToneWord.DARK)),
                Sheets.steady("3", other, 100, 400, Sheets.judged(ToneWord.DARK))).sheets());
        assertEquals(3, keepers.all().sheets());
        assertEquals(List.of(2, 1), keepers.films().stream().map(group -> group.sheets())
                .sorted((a, b) -> b - a).toList());
        assertEquals(List.of(3), keepers.seasons().stream().map(group -> group.sheets()).toList());
    }
}
