package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A journal of sheets. */
class JournalTest {

    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));

    /** By its short name, by its name in the file, and by the beginning of that where only one has it. */
    @Test
    void aSheetIsFoundByAnyOfItsNames() {
        Entry one = sheet("1", "dark");
        Entry two = sheet("2", "light");
        Journal journal = new Journal(List.of(one, two), List.of(),
                Map.of("1", "1", "0123aaaa", "1", "0123abbb", "1", "2", "2", "0123b000", "2"), List.of());
        for (String name : List.of("1", "0123aaaa", "0123a")) {
            assertEquals(Optional.of(one), journal.lastWord(name), name);
        }
        assertEquals(Optional.of(two), journal.lastWord("0123b"));
        for (String name : List.of("3", "0123", "012", "", "0123aaaab")) {
            assertEquals(Optional.empty(), journal.lastWord(name), name);
        }
    }

    @Test
    void aWithdrawnSheetIsNoSheet() {
        Entry one = sheet("1", "dark");
        Entry gone = new Entry("1", "", one.writtenAt(), true, one.exposed(), one.outcome(), "",
                Optional.empty(), OptionalDouble.empty(), Optional.empty());
        Journal journal = Journal.of(List.of(gone), List.of());
        assertEquals(List.of(), journal.sheets());
        assertEquals(Optional.of(gone), journal.lastWord("1"));
    }

    @Test
    void sheetsAreFoundByFilmAndBatch() {
        Entry one = sheet("1", "");
        Exposed exposed = one.exposed();
        Entry packed = Sheets.entry("2",
                new Exposed("Other film", "Pack 7", exposed.place(), exposed.aim(), exposed.lens(),
                exposed.openings(), false, exposed.stars(), OptionalDouble.empty()), one.outcome());
        Journal journal = Journal.of(List.of(one, packed), List.of());
        assertEquals(List.of("1"), ids(journal.of(FILM.name().toUpperCase(Locale.ROOT), "")));
        assertEquals(List.of("2"), ids(journal.of("other film", "pack 7")));
        assertEquals(List.of("2"), ids(journal.of("other film", "")));
        assertEquals(List.of(), ids(journal.of("other film", "pack 8")));
    }

    /** Openings in disorder were never one sheet's; those that touch may be. */
    @Test
    void openingsAreInOrderOfTime() {
        Instant at = Instant.parse("2027-02-08T20:00:00Z");
        Opening first = new Opening(Interval.lasting(at, Duration.ofSeconds(60)), List.of(1e-4));
        Opening second = new Opening(Interval.lasting(at.plusSeconds(60), Duration.ofSeconds(120)),
                List.of(2e-4));
        Exposed exposed = Sheets.exposed("film", List.of(first, second));
        assertEquals(180, exposed.openS());
        assertEquals(2e-4, exposed.middleLx(), "of the longest opening");
        assertThrows(BadInput.class, () -> Sheets.exposed("film", List.of(second, first)));
        assertThrows(BadInput.class, () -> Sheets.exposed("film", List.of()));
        assertThrows(BadInput.class, () -> Sheets.exposed(" ", List.of(first)));
    }

    @ParameterizedTest
    @EnumSource
    void aWordsTypicalToneIsOneOfItsOwn(ToneWord word) {
        assertTrue(word.typicalStops() > word.aboveStops() && word.typicalStops() < word.upToStops(),
                word.name());
        boolean bounded = Double.isFinite(word.aboveStops()) && Double.isFinite(word.upToStops());
        if (bounded) {
            assertEquals((word.aboveStops() + word.upToStops()) / 2, word.typicalStops());
        }
    }

    @Test
    void theCurveOfAFitRunsEvenlyFromEndToEndWithinItsBand() {
        FilmFit fit = Sheets.fit(FILM,
                List.of(Sheets.steady("1", FILM, 256, 1400, Sheets.judged(ToneWord.MIDDLE))));
        List<CurvePoint> points = CurvePoint.of(fit, 10, 10_000);
        assertEquals(10, points.get(0).meteredS(), 1e-9);
        assertEquals(10_000, points.get(points.size() - 1).meteredS(), 1e-6);
        double ratio = points.get(1).meteredS() / points.get(0).meteredS();
        for (int i = 0; i < points.size(); i++) {
            CurvePoint point = points.get(i);
            assertEquals(Math.pow(point.meteredS(), 1.3), point.publishedS(), 1e-6 * point.publishedS(),
                    "tc = tm^1.3");
            assertTrue(point.leastS() < point.fittedS() && point.fittedS() < point.mostS());
            assertEquals(10 * Math.pow(ratio, i), point.meteredS(), 1e-6 * point.meteredS());
        }
        assertTrue(ratio < 1.6, "six points a decade, so that a curve looks like one");
    }

    private static List<String> ids(List<Entry> entries) {
        return entries.stream().map(Entry::id).toList();
    }

    private static Entry sheet(String id, String note) {
        Entry plain = Sheets.steady(id, FILM, 256, 1400, Sheets.judged(ToneWord.DARK));
        return new Entry(plain.writtenAt(), plain.exposed(), plain.outcome(), note, Optional.empty())
                .named(id);
    }
}
