package gloam.planner;

import static gloam.planner.PlannedSamples.EPHEMERIS;
import static gloam.planner.PlannedSamples.ROUNDING;
import static gloam.planner.PlannedSamples.TRIPS;
import static gloam.planner.PlannedSamples.each;
import static gloam.planner.PlannedSamples.plan;
import static gloam.planner.PlannedSamples.samples;
import static gloam.planner.PlannedSamples.with;
import static gloam.planner.PlannedSamples.worth;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.gear.Site;
import gloam.planner.PlannedSamples.Sample;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws that hold between the ranking of nights and the plans of random small trips. */
@Tag("laws")
class NightLawsPropertyTest {

    /** So many wishes for the same hours. */
    private static final int CROWD = 8;

    /** A night says that it serves as many wishes, and is worth as much, as its own plan. */
    @Test
    void nightsAndPlanAgree() {
        each(NightLawsPropertyTest::asItsOwnPlan);
    }

    private static void asItsOwnPlan(Sample sample) {
        LocalDate date = sample.trip().firstNight();
        Site site = sample.trip().sites().get(0);
        NightRank rank = ranking(sample.trip()).nights(List.of(site), List.of(date)).get(0);
        Plan alone = plan(with(sample.trip(), List.of(site), date, date, 100, sample.trip().wishes()));
        assertEquals(rank.served(), sample.trip().wishes().stream()
                .filter(wish -> alone.nights().get(0).windows().stream()
                .anyMatch(window -> window.wish().equals(wish))).toList());
        double all = sample.trip().wishes().stream().mapToDouble(wish -> wish.worth() * wish.repeat()).sum();
        assertEquals(worth(alone) / all, rank.score(), ROUNDING);
    }

    /** The best of many nights are the same whether all are planned or not. */
    @Test
    void theBestNightsAreTheFirstOfAll() {
        samples().stream().limit(TRIPS / 50).map(Sample::trip).forEach(NightLawsPropertyTest::bestAreFirst);
    }

    /** Nor where wishes crowd each other out: a night is refused before all of them have been looked at. */
    @Test
    void theBestOfCrowdedNightsAreTheFirstOfAll() {
        samples().stream().map(Sample::trip).filter(trip -> trip.wishes().size() > 1).limit(TRIPS / 25)
                .forEach(trip -> bestAreFirst(with(trip, trip.sites(), trip.firstNight(), trip.lastNight(),
                100, IntStream.range(0, CROWD).mapToObj(number -> crowding(trip.wishes().get(
                        number % trip.wishes().size()), number)).toList())));
    }

    private static Wish crowding(Wish wish, int number) {
        return new Wish("crowd " + number, wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(), wish.longest(), wish.fNumbers(), 1 - number / (2.0 * CROWD), 1, wish.film(),
                wish.limits(), wish.later());
    }

    private static void bestAreFirst(Trip trip) {
        List<LocalDate> month = trip.firstNight().datesUntil(trip.firstNight().plusDays(30)).toList();
        List<NightRank> all = ranking(trip).nights(trip.sites(), month);
        for (int many : new int[] {1, 3, 10}) {
            assertEquals(all.subList(0, many).stream().map(NightLawsPropertyTest::told).toList(),
                    ranking(trip).best(trip.sites(), month, many).stream()
                            .map(NightLawsPropertyTest::told).toList());
        }
    }

    private static NightRanking ranking(Trip trip) {
        return new NightRanking(EPHEMERIS, StarField.of(Trips.stars()), Optional.of(trip), Progress.NONE);
    }

    private static List<Object> told(NightRank rank) {
        return List.of(rank.night().date(), rank.night().site(), rank.served(), rank.score());
    }
}
