package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.support.Places;
import gloam.support.SharedEphemeris;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WishLightTest {

    private static final Ephemeris EPHEMERIS = new SharedEphemeris();

    /** No exposure has a better chance of its tone than what counts as the best, and some come near. */
    @ParameterizedTest
    @EnumSource(SkyKind.class)
    void noToneHasABetterChanceThanTheBest(SkyKind sky) {
        int nearest = 0;
        for (double stops : new double[] {-4, -3, -2, -1, 0}) {
            WishNight night = night(Trips.pointed("tone", Direction.ofDegrees(200, 30), sky,
                    new Wish.Tone.Near(stops)));
            int best = night.light().mostHundredths();
            for (int number = 0; number < night.with().fNumbers().size(); number++) {
                for (MinuteRun run : MinuteRun.of(night.moments().throughout())) {
                    for (int durationMin : night.durations()) {
                        for (int open = run.first(); open + durationMin <= run.last(); open += 5) {
                            double tone = night.light().toneStops(number, open, open + durationMin);
                            int chance = Chance.hundredths(night.ofTone(tone, open, open + durationMin));
                            assertTrue(chance <= best, chance + " of " + best + " at " + open);
                            nearest = Math.max(nearest, 100 * chance / best);
                        }
                    }
                }
            }
        }
        assertTrue(nearest >= 80, "only " + nearest + " % of the best");
    }

    private static WishNight night(Wish wish) {
        LocalDate date = wish.sky() == SkyKind.MOONLIT ? Trips.MOON_NIGHT : Trips.DARK_NIGHT;
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), date, 1, 4, List.of(wish));
        List<List<Equipment>> equipment = Equipment.all(trip);
        return new SiteNight(trip, equipment, EPHEMERIS, StarField.of(List.of()), Night.of(EPHEMERIS,
                Places.MID_NORTH, date), new Shortfalls()).at(wish, equipment.get(0).get(0));
    }
}
