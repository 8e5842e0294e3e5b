package gloam.planner;

import java.util.Comparator;
import java.util.List;

/**
 * What a timetable comes to, in the order in which the guide prefers one to another: more worth, then
 * fewer nights out, fewer moves, the earlier end of the nights by full hours, the earlier nights.
 */
record TimetableValue(double worth, int nightsOut, int moves, int hours, int nights)
        implements Comparable<TimetableValue> {

    static final TimetableValue NOTHING = new TimetableValue(0, 0, 0, 0, 0);

    /** The value of one night. */
    static TimetableValue of(int night, boolean moved, List<Offer> exposed) {
        return new TimetableValue(exposed.stream().mapToDouble(offer -> Gain.worth(offer.gain())).sum(), 1,
                moved ? 1 : 0, exposed.stream().mapToInt(SmallTimetable::close).max().orElseThrow() / 60,
                night * exposed.size());
    }

    /** The value of all nights. */
    static TimetableValue of(Timetable.Choice choice) {
        TimetableValue all = NOTHING;
        int before = -1;
        for (int number = 0; number < choice.nights().size(); number++) {
            Timetable.Night night = choice.nights().get(number);
            if (!night.exposed().isEmpty()) {
                all = all.plus(of(number, before >= 0 && before != night.site(),
                        night.exposed().stream()
                        .map(one -> Offer.at(one.wish(), one.camera(), one.openMin(), one.closeMin(),
                        one.gain()))
                        .toList()));
                before = night.site();
            }
        }
        return all;
    }

    TimetableValue plus(TimetableValue other) {
        return new TimetableValue(worth + other.worth, nightsOut + other.nightsOut, moves + other.moves,
                hours + other.hours, nights + other.nights);
    }

    TimetableValue max(TimetableValue other) {
        return compareTo(other) >= 0 ? this : other;
    }

    @Override
    public int compareTo(TimetableValue other) {
        return Math.abs(worth - other.worth) > PlannedSamples.ROUNDING ? Double.compare(worth, other.worth)
                : Comparator.comparingInt(TimetableValue::nightsOut).thenComparingInt(TimetableValue::moves)
                .thenComparingInt(TimetableValue::hours).thenComparingInt(TimetableValue::nights)
                .compare(other, this);
    }
}
