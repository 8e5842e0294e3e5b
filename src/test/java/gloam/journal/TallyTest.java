package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TallyTest {

    @Test
    void keepersAndSpoilersAreCounted() {
        Tally tally = Tally.all(List.of(sheet("2027-01-10", true), sheet("2027-01-10", false, Spoiler.DEW),
                sheet("2027-01-10", false, Spoiler.CLOUD, Spoiler.DEW),
                Sheets.entry("4", exposed("2027-01-10"),
                        new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of()))));
        assertEquals(4, tally.sheets());
        assertEquals(1, tally.kept());
        assertEquals(1, tally.undecided());
        assertEquals(1 / 3.0, tally.keptShare(), 1e-12);
        assertEquals(List.of(new Tally.Spoiled("dew", 2), new Tally.Spoiled("cloud", 1)), tally.spoilers());
    }

    @Test
    void seasonsAreThoseOfThePlace() {
        assertEquals("winter", Tally.season(sheet("2026-12-31", true)));
        assertEquals("spring", Tally.season(sheet("2027-03-01", true)));
        assertEquals("summer", Tally.season(sheet("2027-08-31", true)));
        assertEquals("autumn", Tally.season(sheet("2027-09-01", true)));
        assertEquals("summer", Tally.season(southern("2026-12-31")));
        assertEquals("winter", Tally.season(southern("2027-06-15")));
    }

    @Test
    void groupsStandInOrder() {
        List<Entry> sheets = List.of(sheet("2027-08-31", true), sheet("2026-12-31", true));
        assertEquals(List.of("winter", "summer"), Tally.bySeason(sheets).stream().map(Tally::group).toList());
        assertEquals(List.of("test"), Tally.byFilm(sheets).stream().map(Tally::group).toList());
        assertEquals(List.of(), Tally.byPack(sheets));
    }

    private static Entry sheet(String date, boolean kept, Spoiler... spoilers) {
        return Sheets.entry("1", exposed(date),
                new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.of(kept), List.of(spoilers)));
    }

    private static Entry southern(String date) {
        Exposed north = exposed(date);
        return Sheets.entry("1",
                new Exposed(north.film(), "", Optional.of(new Place("Plain", Angle.ofDegrees(-24),
                ZoneId.of("Africa/Windhoek"))), north.aim(), north.lens(), north.openings(), false,
                north.stars(), north.temperatureC()), Sheets.judged(ToneWord.DARK));
    }

    private static Exposed exposed(String date) {
        return Sheets.exposed("test", List.of(new Opening(Interval.lasting(Instant.parse(date + "T12:00:00Z"),
                Duration.ofHours(1)), List.of(1e-6))));
    }
}
