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
        assertEquals(List.of("early"), chosen(List.of(at("late", 0, 30, 40, 1), at("early", 0, 0, 10, 1)), 1, 5, 1));
    }

    @Test
    void servesTheEarlierOfEqualNights() {
        List<List<Candidate<String>>> night = List.of(List.of(at("once", 0, 0, 10, 1)));
        Timetable.Choice<String> choice = new Timetable(new int[] {1}, 3, 0).choose(List.of(night, night));
        assertEquals(1, choice.nights().get(0).exposed().size());
        assertEquals(0, choice.nights().get(1).exposed().size());
    }

    @Test
    void leavesTheChangeoverBetweenExposures() {
        List<Candidate<String>> touching = List.of(at("first", 0, 0, 10, 1), at("second", 1, 12, 20, 1));
        assertEquals(List.of("first", "second"), chosen(touching, 2, 2, 1, 1));
        assertEquals(1, chosen(touching, 2, 3, 1, 1).size());
    }

    @Test
    void spendsTheLastSheetOnTheBetterPicture() {
        List<Candidate<String>> both = List.of(at("plain", 0, 0, 10, 1), at("dear", 1, 20, 30, 2));
        assertEquals(List.of("dear"), chosen(both, 1, 0, 1, 1));
    }

    @Test
    void repeatsAWishOnlyAsOftenAsAsked() {
        List<Candidate<String>> three = List.of(at("a", 0, 0, 1, 1), at("b", 0, 2, 3, 1), at("c", 0, 4, 5, 1));
        assertEquals(List.of("a", "b"), chosen(three, 5, 0, 2));
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
        List<Candidate<String>> evening = new ArrayList<>();
        for (int wish = 0; wish < wishes; wish++) {
            evening.add(at("wish " + wish, wish, 10 * wish, 10 * wish + 15, 1 + wish % 2));
        }
        Timetable.Choice<String> choice = new Timetable(repeats, 30, 0).choose(List.of(List.of(evening)));
        assertEquals(20, choice.worth(), 1e-9); // the ten wishes of worth 2 exclude their neighbours
        assertTrue(choice.bound() >= choice.worth());
        assertTrue(choice.bound() <= 30, "no more than every wish served");
    }

    private static Candidate<String> at(String name, int wish, int openMin, int closeMin, double value) {
        return new Candidate<>(name, wish, openMin, closeMin, value);
    }

    private static List<String> chosen(List<Candidate<String>> evening, int sheets, int changeoverMin,
                                       int... repeats) {
        return new Timetable(repeats, sheets, changeoverMin).choose(List.of(List.of(evening))).nights().get(0)
                .exposed().stream().map(Candidate::shot).toList();
    }
}
