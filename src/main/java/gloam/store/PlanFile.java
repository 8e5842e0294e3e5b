package gloam.store;

import gloam.ephemeris.Direction;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Collectors;

/** Reads the windows of a plan that was saved as JSON. */
public final class PlanFile {

    static final Range NIGHTS = new Range("number of nights", 0, 1000, "");
    static final Range WINDOWS = new Range("number of windows", 0, 500, "");
    static final Range SHEET = new Range("sheet", 1, 500, "");

    private PlanFile() {
    }

    /**
     * One exposure of a plan.
     *
     * @param sheet   number of the sheet
     * @param site    the site's name
     * @param wish    the wish it serves
     * @param film    the film's name
     * @param open    from opening to closing
     * @param aim     where the frame's centre looks
     * @param fNumber the f-number
     */
    public record PlannedSheet(int sheet, String site, String wish, String film, Interval open, Direction aim,
                               double fNumber) {
    }

    /** The exposure on a sheet of a plan. */
    public static PlannedSheet sheet(Input file, int sheet) {
        Findings findings = new Findings();
        List<PlannedSheet> sheets = findings.result(() -> nights(Source.of(file, findings).root())).stream()
                .flatMap(List::stream).toList();
        return sheets.stream().filter(planned -> planned.sheet == sheet).findFirst()
                .orElseThrow(() -> new BadInput(file.shown() + " has no sheet " + sheet + "; it has "
                        + (sheets.isEmpty() ? "none" : sheets.stream().map(planned -> String.valueOf(planned.sheet))
                                .collect(Collectors.joining(", ")))));
    }

    private static List<List<PlannedSheet>> nights(Item item) {
        Fields fields = item.fields();
        Value<List<List<PlannedSheet>>> nights = fields.required("nights",
                value -> value.list(NIGHTS, PlanFile::night));
        fields.othersMayBe();
        return nights.get();
    }

    private static List<PlannedSheet> night(Item item) {
        Fields fields = item.fields();
        Value<String> site = fields.required("site", Item::text);
        Value<List<PlannedSheet>> windows = fields.required("windows",
                value -> value.list(WINDOWS, window -> window(window, site)));
        fields.othersMayBe();
        return windows.get();
    }

    private static PlannedSheet window(Item item, Value<String> site) {
        Fields fields = item.fields();
        Value<Integer> sheet = fields.required("sheet", value -> value.whole(SHEET));
        Value<String> wish = fields.required("wish", Item::text);
        Value<String> film = fields.required("film", Item::text);
        Value<Instant> open = fields.required("openAt", PlanFile::instant);
        Value<Instant> close = fields.required("closeAt", PlanFile::instant);
        Value<Double> azimuthDeg = fields.number("azimuthDeg", Direction.AZIMUTH);
        Value<Double> altitudeDeg = fields.number("altitudeDeg", Direction.ALTITUDE);
        Value<Double> fNumber = fields.required("fNumber", CameraSection::fNumber);
        fields.othersMayBe();
        return new PlannedSheet(sheet.get(), site.get(), wish.get(), film.get(), open(item, open, close),
                Direction.ofDegrees(azimuthDeg.get(), altitudeDeg.get()), fNumber.get());
    }

    /** The span of an exposure. */
    static Interval open(Item item, Value<Instant> open, Value<Instant> close) {
        if (!open.get().isBefore(close.get())) {
            throw item.fault("does not close after it opens. Save the plan anew.");
        }
        return new Interval(open.get(), close.get());
    }

    /** A moment with its offset. */
    static Instant instant(Item item) {
        try {
            return OffsetDateTime.parse(item.text()).toInstant();
        } catch (DateTimeException wrong) {
            throw item.fault("expected a moment such as 2027-02-08T21:35:00+01:00, found " + Shown.quoted(item.text()));
        }
    }
}
