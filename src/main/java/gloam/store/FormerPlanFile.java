package gloam.store;

import gloam.ephemeris.Direction;
import gloam.gear.Lens;
import gloam.planner.FormerPlan;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Reads what a plan that was saved as JSON announced to calendars. */
public final class FormerPlanFile {

    private static final Range CANCELLED = new Range("number of cancelled windows", 0, 10_000, "");
    /** Up to where a greater one can follow. */
    private static final Range SEQUENCE = new Range("sequence", 0, 2e9, "");

    private FormerPlanFile() {
    }

    /** Reads a plan; all errors of the file come in one {@link gloam.units.BadInput}. */
    public static FormerPlan read(Input file) {
        Findings findings = new Findings();
        return findings.result(() -> plan(Source.of(file, findings).root()));
    }

    private static FormerPlan plan(Item item) {
        Fields fields = item.fields();
        Value<UUID> identity = fields.required("identity", FormerPlanFile::uuid);
        Value<List<List<FormerPlan.Window>>> nights = fields.required("nights",
                value -> value.list(PlanFile.NIGHTS, FormerPlanFile::night));
        Value<List<FormerPlan.Cancelled>> cancelled = fields.required("cancelled",
                value -> value.list(CANCELLED, FormerPlanFile::cancelled));
        fields.othersMayBe();
        return new FormerPlan(identity.get(), nights.get().stream().flatMap(List::stream).toList(), cancelled.get());
    }

    private static List<FormerPlan.Window> night(Item item) {
        Fields fields = item.fields();
        Value<String> site = fields.required("site", Item::text);
        Value<List<FormerPlan.Window>> windows = fields.required("windows",
                value -> value.list(PlanFile.WINDOWS, window -> window(window, site)));
        fields.othersMayBe();
        return windows.get();
    }

    private static FormerPlan.Window window(Item item, Value<String> site) {
        Fields fields = item.fields();
        Announced announced = Announced.of(item, fields);
        Value<Integer> sheet = fields.required("sheet", value -> value.whole(PlanFile.SHEET));
        Value<String> film = fields.required("film", Item::text);
        Value<Instant> prepareAt = fields.required("prepareAt", PlanFile::instant);
        Value<Double> azimuthDeg = fields.number("azimuthDeg", Direction.AZIMUTH);
        Value<Double> altitudeDeg = fields.number("altitudeDeg", Direction.ALTITUDE);
        Value<Double> rollDeg = fields.number("rollDeg", AimSection.ROLL);
        Value<Double> fNumber = fields.number("fNumber", Lens.F_NUMBER);
        fields.othersMayBe();
        return new FormerPlan.Window(announced.event(), announced.wish.get(), new FormerPlan.Details(sheet.get(),
                site.get(), film.get(), prepareAt.get(), announced.open(), azimuthDeg.get(), altitudeDeg.get(),
                rollDeg.get(), fNumber.get()));
    }

    private static FormerPlan.Cancelled cancelled(Item item) {
        Fields fields = item.fields();
        Announced announced = Announced.of(item, fields);
        Value<String> site = fields.required("site", Item::text);
        fields.othersMayBe();
        return new FormerPlan.Cancelled(announced.event(), announced.wish.get(), site.get(), announced.open());
    }

    private static UUID uuid(Item item) {
        try {
            return UUID.fromString(item.text());
        } catch (IllegalArgumentException wrong) {
            throw item.fault("expected an identity such as a3d7347e-023a-3bce-ac4e-76d2a06ad891, found "
                    + Shown.quoted(item.text()));
        }
    }

    /** What is said of every window, planned or cancelled. */
    private record Announced(Item item, Value<UUID> identity, Value<Integer> sequence, Value<String> wish,
                             Value<Instant> openAt, Value<Instant> closeAt) {

        static Announced of(Item item, Fields fields) {
            return new Announced(item, fields.required("identity", FormerPlanFile::uuid),
                    fields.required("sequence", value -> value.whole(SEQUENCE)), fields.required("wish", Item::text),
                    fields.required("openAt", PlanFile::instant), fields.required("closeAt", PlanFile::instant));
        }

        FormerPlan.Event event() {
            return new FormerPlan.Event(identity.get(), sequence.get());
        }

        Interval open() {
            return PlanFile.open(item, openAt, closeAt);
        }
    }
}
