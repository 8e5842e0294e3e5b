package gloam.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.journal.Verdict;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads the windows of a plan that was saved as JSON. */
public final class PlanFile {

    private static final int NOON = 12;
    static final Range SHEET = new Range("sheet", 1, 500, "");

    private PlanFile() {
    }

    /**
     * One exposure of a plan.
     *
     * @param sheet   number of the sheet, from 1
     * @param site    the site's name
     * @param wish    the wish it serves
     * @param camera  the camera's name, if the plan says it
     * @param film    the film's name
     * @param open    from the first opening to the last closing
     * @param aim     direction of the frame's centre, the first one of several
     * @param fNumber the f-number, the first one of several
     * @param toneStops the sky's tone that the plan expects, in stops from the mid-tone, if it says
     * @param openings each of its openings, in order
     */
    public record PlannedSheet(int sheet, String site, String wish, Optional<String> camera,
                               String film, Interval open, Direction aim,
                               FNumber fNumber, OptionalDouble toneStops, List<PlannedOpening> openings) {

        /** Copies the list. */
        public PlannedSheet {
            openings = List.copyOf(openings);
        }
    }

    /** One of the openings of a sheet, and how the camera is set then. */
    public record PlannedOpening(Interval open, Direction aim, FNumber fNumber) {
    }

    /** A night of a plan, by the date of its evening, with its sheets. */
    public record PlannedNight(LocalDate night, List<PlannedSheet> sheets) {

        /** Copies the list. */
        public PlannedNight {
            sheets = List.copyOf(sheets);
        }
    }

    /** The nights on which the plan exposes sheets, in order. */
    public static List<PlannedNight> nights(Input file) {
        Map<LocalDate, List<PlannedSheet>> nights = new TreeMap<>();
        for (SavedNight night : saved(file).nights) {
            night.windows.forEach(window -> nights.computeIfAbsent(window.evening(),
                    date -> new ArrayList<>()).add(window.at(night.site)));
        }
        return nights.entrySet().stream().map(night -> new PlannedNight(night.getKey(),
                night.getValue().stream().sorted(Comparator.comparing(sheet -> sheet.open().start()))
                        .toList())).toList();
    }

    /** The exposure on the sheet of a number; throws {@link gloam.units.BadInput} if the plan has none. */
    public static PlannedSheet sheet(Input file, int sheet) {
        List<SavedNight> nights = saved(file).nights;
        List<Integer> sheets = nights.stream().flatMap(night -> night.windows.stream())
                .map(SavedWindow::sheet).toList();
        return nights.stream().flatMap(night -> night.windows.stream()
                .filter(window -> window.sheet == sheet).map(window -> window.at(night.site)))
                .findFirst().orElseThrow(() -> new BadInput(file.shown() + " has no sheet " + sheet
                        + "; it has " + (sheets.isEmpty() ? "none" : sheets.stream().map(String::valueOf)
                                .collect(Collectors.joining(", ")))));
    }

    private static Saved saved(Input file) {
        return Bound.read(new Tree.Text(file.shown(), 1, file.text()), Saved.class);
    }

    /** What is read of a saved plan, which says more. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    private record Saved(List<SavedNight> nights) {
    }

    /** An opening as a plan, or a page, has it. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    record SavedOpening(OffsetDateTime openAt, OffsetDateTime closeAt, double azimuthDeg, double altitudeDeg,
            double fNumber) {

        SavedOpening {
            Direction.AZIMUTH.check(azimuthDeg);
            Direction.ALTITUDE.check(altitudeDeg);
            FNumber.RANGE.check(fNumber);
            checkOrder(openAt, closeAt);
        }

        PlannedOpening at() {
            return new PlannedOpening(new Interval(openAt.toInstant(), closeAt.toInstant()),
                    Direction.ofDegrees(azimuthDeg, altitudeDeg), FNumber.marked(fNumber));
        }
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
    private record SavedWindow(int sheet, String wish, Optional<String> camera, String film,
            OffsetDateTime openAt, OffsetDateTime closeAt,
                               double azimuthDeg, double altitudeDeg, double fNumber,
                               OptionalDouble skyToneStops, Optional<List<SavedOpening>> openings) {

        private SavedWindow {
            SHEET.check(sheet);
            Direction.AZIMUTH.check(azimuthDeg);
            Direction.ALTITUDE.check(altitudeDeg);
            FNumber.RANGE.check(fNumber);
            checkOrder(openAt, closeAt);
        }

        private PlannedSheet at(String site) {
            SavedOpening whole = new SavedOpening(openAt, closeAt, azimuthDeg, altitudeDeg, fNumber);
            PlannedOpening first = whole.at();
            return new PlannedSheet(sheet, site, wish, camera, film, first.open(), first.aim(),
                    first.fNumber(), tone(skyToneStops), openings.orElse(List.of(whole)).stream()
                    .map(SavedOpening::at).toList());
        }

        /** The date of the evening before, by the site's clocks. */
        private LocalDate evening() {
            return openAt.minusHours(NOON).toLocalDate();
        }
    }

    /** What the journal can keep of a tone: a blank sky is as dark as it knows. */
    static OptionalDouble tone(OptionalDouble stops) {
        return stops.isEmpty() ? stops : OptionalDouble.of(Math.max(Verdict.TONE.least(),
                Math.min(Verdict.TONE.most(), stops.getAsDouble())));
    }
}
