package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.planner.Plan;
import gloam.planner.Planner;
import gloam.planner.Progress;
import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.planner.Wish;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SheetPicturesTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();

    /** The frame of the test camera is a square. */
    @Test
    void everySheetOfAPlanHasItsPicture() {
        List<Wish> wishes = Stream.of("stars", "more stars").map(name -> Trips.pointed(name,
                Direction.ofDegrees(0, 44), SkyKind.DARK, new Wish.Tone.Free())).toList();
        Trip trip = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 2, wishes);
        Plan plan = new Planner(EPHEMERIS, StarCatalogue.builtIn()).plan(trip);
        AtomicInteger most = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        Progress progress = (reached, all) -> {
            most.set(all);
            done.incrementAndGet();
        };
        SheetPictures pictures = SheetPictures.of(EPHEMERIS, List.of(), plan, progress);
        assertEquals(Set.of(1, 2), pictures.bySheet().keySet());
        pictures.bySheet().values().forEach(picture -> {
            assertEquals(240, picture.widthPx());
            assertEquals(240, picture.heightPx());
        });
        assertEquals(2, most.get());
        assertEquals(2, done.get());
    }
}
