package gloam.store;

import gloam.planner.Evenings;
import gloam.gear.Site;
import gloam.planner.Limits;
import gloam.planner.Travel;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** Reads when people go out on a trip. */
final class OutingsSection {

    private static final Range EVENINGS = new Range("number of evenings", 1, 400, "");

    private static final Range LEGS = new Range("number of ways", 1, 1000, "");

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

    /** How long it takes from site to site, among the keys of a trip. */
    static Value<Travel> travel(Fields fields, Value<List<SiteSection>> sites) {
        Value<Optional<Double>> usualMin = fields.optional("travel-min",
                value -> value.number(Travel.MINUTES));
        Value<Optional<List<Travel.Leg>>> legs = fields.optional("travel",
                value -> value.list(LEGS, leg -> leg(leg, sites)));
        return usualMin.map(min -> new Travel(CameraSection.minutes(min.orElse(0.0)),
                legs.get().orElse(List.of())));
    }

    private static Travel.Leg leg(Item item, Value<List<SiteSection>> sites) {
        Fields fields = item.fields();
        Value<String> from = fields.required("from", value -> SiteSection.named(value, sites));
        Value<String> to = fields.required("to", value -> SiteSection.named(value, sites));
        Value<Double> minutes = fields.number("minutes", Travel.MINUTES);
        fields.noOthers();
        return new Travel.Leg(from.get(), to.get(), CameraSection.minutes(minutes.get()));
    }

    /** The hours by the clock in which people are up. */
    static Limits.TimeOfNight awake(Item item) {
        Fields fields = item.fields();
        Value<LocalTime> from = fields.required("from", ItemTimes::time);
        Value<LocalTime> until = fields.required("until", ItemTimes::time);
        fields.noOthers();
        return new Limits.TimeOfNight(from.get(), until.get());
    }
}
