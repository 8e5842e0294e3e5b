package gloam.store;

import gloam.planner.Evenings;
import gloam.planner.Limits;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/** Reads when people go out on a trip. */
final class OutingsSection {

    private static final Range EVENINGS = new Range("number of evenings", 1, 400, "");

    private OutingsSection() {
    }

    /**
     * The evenings that are free: {@code weekends}, or a list of days and dates, some of them in the nights.
     */
    static Evenings evenings(Item item, Value<TripFile.Nights> nights) {
        Evenings evenings = item.node() instanceof Node.Scalar ? evening(item, nights)
                : item.list(EVENINGS, one -> evening(one, nights)).stream().reduce(Evenings::and)
                .orElseThrow();
        item.readAs("weekends, or a list of days such as fri and of dates");
        List<LocalDate> all = nights.get().from().datesUntil(nights.get().to().plusDays(1)).toList();
        if (all.stream().noneMatch(evenings::hold)) {
            throw item.fault("none of the nights from " + nights.get().from() + " to " + nights.get().to()
                    + " is among them. Name others.");
        }
        return evenings;
    }

    private static Evenings evening(Item item, Value<TripFile.Nights> nights) {
        Evenings evening = Evenings.of(item.text());
        LocalDate from = nights.get().from();
        LocalDate to = nights.get().to();
        if (evening.dates().stream().anyMatch(date -> date.isBefore(from) || date.isAfter(to))) {
            throw item.fault(evening + " is none of the nights from " + from + " to " + to
                    + ". Leave it out, or change the nights.");
        }
        return evening;
    }

    /** The hours by the clock in which people are up. */
    static Limits.TimeOfNight awake(Item item) {
        Fields fields = item.fields();
        Value<LocalTime> from = fields.required("from", Item::time);
        Value<LocalTime> until = fields.required("until", Item::time);
        fields.noOthers();
        return new Limits.TimeOfNight(from.get(), until.get());
    }
}
