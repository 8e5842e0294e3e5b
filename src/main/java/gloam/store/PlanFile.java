package gloam.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the windows of a plan that was saved as JSON. */
public final class PlanFile {

    static final Range SHEET = new Range("sheet", 1, 500, "");

    private PlanFile() {
    }

    /**
     * One exposure of a plan.
     *
     * @param sheet   number of the sheet, from 1
     * @param site    the site's name
     * @param wish    the wish it serves
     * @param film    the film's name
     * @param open    from opening to closing
     * @param aim     direction of the frame's centre
     * @param fNumber the f-number
     */
    public record PlannedSheet(int sheet, String site, String wish, String film, Interval open, Direction aim,
                               FNumber fNumber) {
    }

    /** The exposure on the sheet of a number; throws {@link gloam.units.BadInput} if the plan has none. */
    public static PlannedSheet sheet(Input file, int sheet) {
        Saved saved = Bound.read(new Tree.Text(file.shown(), 1, file.text()), Saved.class);
        if (saved.nights.stream().flatMap(night -> night.windows.stream())
                .anyMatch(window -> window.sheet == sheet && window.several())) {
            throw new BadInput(file.shown() + " opens sheet " + sheet + " several times, and the journal "
                    + "keeps one aim of a sheet; leave out --plan and give that aim and each --open");
        }
        List<PlannedSheet> sheets = saved.nights.stream()
                .flatMap(night -> night.windows.stream().map(window -> window.at(night.site))).toList();
        return sheets.stream().filter(planned -> planned.sheet == sheet).findFirst()
                .orElseThrow(() -> new BadInput(file.shown() + " has no sheet " + sheet + "; it has "
                        + (sheets.isEmpty() ? "none" : sheets.stream()
                        .map(planned -> String.valueOf(planned.sheet))
                                .collect(Collectors.joining(", ")))));
    }

    /** What is read of a saved plan, which says more. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    private record Saved(List<SavedNight> nights) {
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedOpening(OffsetDateTime openAt) {
    }

    static void checkOrder(OffsetDateTime openAt, OffsetDateTime closeAt) {
        if (!openAt.isBefore(closeAt)) {
            throw new BadInput("does not close after it opens. Save the plan anew.");
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedNight(String site, List<SavedWindow> windows) {
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedWindow(int sheet, String wish, String film, OffsetDateTime openAt,
            OffsetDateTime closeAt,
                               double azimuthDeg, double altitudeDeg, double fNumber,
                               Optional<List<SavedOpening>> openings) {

        private SavedWindow {
            SHEET.check(sheet);
            Direction.AZIMUTH.check(azimuthDeg);
            Direction.ALTITUDE.check(altitudeDeg);
            FNumber.RANGE.check(fNumber);
            checkOrder(openAt, closeAt);
        }

        private boolean several() {
            return openings.filter(all -> all.size() > 1).isPresent();
        }

        private PlannedSheet at(String site) {
            return new PlannedSheet(sheet, site, wish, film,
                    new Interval(openAt.toInstant(), closeAt.toInstant()),
                    Direction.ofDegrees(azimuthDeg, altitudeDeg), FNumber.marked(fNumber));
        }
    }
}
