package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;

class NightRankingTest {

    private final NightRanking ranking = new NightRanking(new AnalyticEphemeris());

    @Test
    void putsTheNewMoonBeforeTheFull() {
        List<NightRank> ranks = ranking.nights(List.of(Places.MID_NORTH),
                List.of(Trips.MOON_NIGHT, Trips.DARK_NIGHT));
        assertEquals(Trips.DARK_NIGHT, ranks.get(0).night().date());
        assertTrue(ranks.get(0).moonlessDarkHours() > 8 && ranks.get(1).moonlessDarkHours() < 2);
        assertTrue(ranks.get(1).moon().illuminatedFraction() > 0.95);
    }

    @Test
    void scoresFromZeroInThePolarDayToOneInThePolarNight() {
        NightRank day = ranking.nights(List.of(Places.POLAR), List.of(LocalDate.of(2027, 6, 20))).get(0);
        assertEquals(0, day.score());
        assertTrue(day.night().sunDown().isEmpty());
        assertEquals(0, day.trulyDarkHours());
        NightRank night = ranking.nights(List.of(Places.POLAR), List.of(LocalDate.of(2027, 12, 28))).get(0);
        assertTrue(night.score() > 0.9, night::toString);
    }

    @Test
    void ranksEveryRunOfConsecutiveNights() {
        List<LocalDate> dates = LocalDate.of(2027, 2, 1).datesUntil(LocalDate.of(2027, 2, 15)).toList();
        List<Stay> stays = NightRanking.stays(
                ranking.nights(List.of(Places.MID_NORTH, Places.MID_SOUTH), dates), 3);
        assertEquals(2 * 12, stays.size());
        for (int i = 1; i < stays.size(); i++) {
            assertTrue(stays.get(i - 1).score() >= stays.get(i).score());
        }
        assertTrue(stays.stream().allMatch(stay -> stay.nights().size() == 3));
        assertTrue(NightRanking.stays(ranking.nights(List.of(Places.MID_NORTH), dates), 15).isEmpty());
    }

    @Test
    void putsTheNightFirstThatHasTheTimeForTheWishes() {
        Wish moonlit = Trips.pointed("by moonlight", Direction.ofDegrees(180, 40), SkyKind.MOONLIT,
                new Wish.Tone.Free());
        List<LocalDate> dates = List.of(Trips.DARK_NIGHT, Trips.MOON_NIGHT);
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 14, 4, List.of(moonlit));
        List<NightRank> ranks = new NightRanking(new AnalyticEphemeris(), StarField.of(Trips.stars()),
                Optional.of(trip), Progress.NONE)
                .nights(trip.sites(), dates);
        assertEquals(Trips.MOON_NIGHT, ranks.get(0).night().date());
        assertEquals(List.of(moonlit), ranks.get(0).served());
        assertEquals(0.5, ranks.get(0).score(), "the chance of a clear sky without a forecast");
        assertEquals(0, ranks.get(1).score(), "the Moon sets before it is dark");
    }

    @Test
    void tellsOfEveryNightDone() {
        Set<Integer> told = ConcurrentHashMap.newKeySet();
        new NightRanking(new AnalyticEphemeris(), StarField.of(Trips.stars()), Optional.empty(),
                (done, all) -> told.add(done))
                .nights(List.of(Places.MID_NORTH), List.of(Trips.DARK_NIGHT, Trips.MOON_NIGHT));
        assertEquals(Set.of(1, 2), told);
    }
}
