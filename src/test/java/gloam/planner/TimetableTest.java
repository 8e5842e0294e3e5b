package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TimetableTest {

    @Test
    void servesTheEarlierOfEqualStarts() {
        assertEquals(List.of(0), chosen(List.of(at(0, 30, 40, 1), at(0, 0, 10, 1)), 1, 5, 1));
    }

    @Test
    void servesTheEarlierOfEqualNights() {
        List<List<Offer>> night = List.of(List.of(at(0, 0, 10, 1)));
        Timetable.Choice choice = new Timetable(new int[] {1}, 3, 3, 0).choose(List.of(night, night));
        assertEquals(1, choice.nights().get(0).exposed().size());
        assertEquals(0, choice.nights().get(1).exposed().size());
    }

    @Test
    void goesToTheSiteWhereANightOfTheSameGainEndsEarlier() {
        List<Offer> late = List.of(at(0, 0, 130, 1));
        List<Offer> early = List.of(at(0, 60, 70, 1));
        for (List<List<Offer>> sites : List.of(List.of(late, early), List.of(early, late))) {
            Timetable.Choice choice = new Timetable(new int[] {1}, 3, 3, 0).choose(List.of(sites));
            assertEquals(60, choice.nights().get(0).exposed().get(0).openMin());
        }
    }

    @Test
    void leavesTheChangeoverBetweenExposures() {
        List<Offer> touching = List.of(at(0, 0, 10, 1), at(1, 12, 20, 1));
        assertEquals(List.of(0, 12), chosen(touching, 2, 2, 1, 1));
        assertEquals(1, chosen(touching, 2, 3, 1, 1).size());
    }

    @Test
    void spendsTheLastSheetOnTheBetterPicture() {
        List<Offer> both = List.of(at(0, 0, 10, 1), at(1, 20, 30, 2));
        assertEquals(List.of(20), chosen(both, 1, 0, 1, 1));
    }

    @Test
    void repeatsAWishOnlyAsOftenAsAskedAndOnOtherNights() {
        List<List<Offer>> night = List.of(List.of(at(0, 0, 1, 1), at(0, 2, 3, 1), at(0, 4, 5, 1)));
        assertEquals(List.of(1, 1, 0), new Timetable(new int[] {2}, 5, 5, 0)
                .choose(List.of(night, night, night))
                .nights().stream().map(one -> one.exposed().size()).toList());
    }

    @Test
    void choosesNothingOutOfNothing() {
        assertTrue(chosen(List.of(), 5, 0, 1).isEmpty());
    }

    @Test
    void placesMoreWishesThanItCanTallyWithAProvenBound() {
        int wishes = 20;
        int[] repeats = new int[wishes];
        Arrays.fill(repeats, 1);
        List<Offer> evening = new ArrayList<>();
        for (int wish = 0; wish < wishes; wish++) {
            evening.add(at(wish, 10 * wish, 10 * wish + 15, 1 + wish % 2));
        }
        Timetable.Choice choice = new Timetable(repeats, 30, 30, 0).choose(List.of(List.of(evening)));
        assertEquals(20, choice.worth(), 1e-9); // the ten wishes of worth 2 exclude their neighbours
        assertTrue(choice.bound() >= choice.worth());
        assertTrue(choice.bound() <= 30, "no more than every wish served");
    }

    /** An offer that opens at any minute of a run is opened as soon as the camera is free. */
    @Test
    void opensARunAsSoonAsTheCameraIsFree() {
        Offer any = new Offer(1, 0, 0, 100, 10, 10, Gain.of(1, Chance.CERTAIN, 0));
        assertEquals(List.of(0, 13), chosen(List.of(at(0, 0, 10, 1), any), 2, 3, 1, 1));
        assertEquals(List.of(0, 40), chosen(List.of(at(0, 40, 140, 1), any), 2, 3, 1, 1));
    }

    private static Offer at(int wish, int openMin, int closeMin, double worth) {
        return Offer.at(wish, 0, openMin, closeMin, Gain.of(worth, Chance.CERTAIN, 0));
    }

    /** The minutes at which what is chosen opens. */
    private static List<Integer> chosen(List<Offer> evening, int sheets, int changeoverMin,
                                       int... repeats) {
        return new Timetable(repeats, sheets, sheets, changeoverMin).choose(List.of(List.of(evening)))
                .nights().get(0)
                .exposed().stream().map(Timetable.Exposed::openMin).toList();
    }
}
