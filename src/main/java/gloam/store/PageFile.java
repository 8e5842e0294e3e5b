package gloam.store;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what the page of a timetable hands over: which sheets were exposed, and when, and which were not. */
public final class PageFile {

    private static final String SCHEMA = "gloam-page/1";
    private static final Range NOTE = new Range("length of the note", 0, 400, "characters");

    private PageFile() {
    }

    /**
     * What a page hands over.
     *
     * @param exposed the sheets exposed, with their real times
     * @param left    those that were not
     */
    public record HandedOver(List<Exposed> exposed, List<Left> left) {

        /** Copies the lists. */
        public HandedOver {
            exposed = List.copyOf(exposed);
            left = List.copyOf(left);
        }
    }

    /** A sheet exposed, and any remark. */
    public record Exposed(PlanFile.PlannedSheet sheet, String note) {
    }

    /**
     * A sheet that was not exposed.
     *
     * @param sheet its number
     * @param wish  the wish it would have served
     * @param why   such as "skipped" or "clouded out"
     * @param note  any remark
     */
    public record Left(int sheet, String wish, String why, Optional<String> note) {

        /** Refuses numbers outside their ranges. */
        public Left {
            PlanFile.SHEET.check(sheet);
            checkNote(note);
        }
    }

    /**
     * Reads what a page handed over.
     *
     * @throws BadInput with the place of the first error
     */
    public static HandedOver read(Input file) {
        Saved saved = Bound.read(new Tree.Text(file.shown(), 1, file.text()), Saved.class);
        return new HandedOver(saved.nights.stream().flatMap(night -> night.windows.stream()
                .map(window -> new Exposed(window.at(night.site), window.note.orElse("")))).toList(),
                saved.skipped);
    }

    private static void checkNote(Optional<String> note) {
        note.ifPresent(text -> NOTE.check(text.length()));
    }

    private record Saved(String schema, String identity, String title, List<SavedNight> nights,
            List<Left> skipped) {

        private Saved {
            if (!schema.equals(SCHEMA)) {
                throw new BadInput("is not what a timetable\u2019s page hands over (" + SCHEMA + ").");
            }
        }
    }

    private record SavedNight(LocalDate night, String site, List<SavedWindow> windows) {
    }

    private record SavedWindow(int sheet, String wish, String film, OffsetDateTime openAt,
            OffsetDateTime closeAt, double azimuthDeg, double altitudeDeg, double fNumber,
            OptionalDouble skyToneStops, Optional<String> camera, Optional<String> note,
            Optional<List<PlanFile.SavedOpening>> openings) {

        private SavedWindow {
            PlanFile.SHEET.check(sheet);
            Direction.AZIMUTH.check(azimuthDeg);
            Direction.ALTITUDE.check(altitudeDeg);
            FNumber.RANGE.check(fNumber);
            checkNote(note);
            PlanFile.checkOrder(openAt, closeAt);
        }

        private PlanFile.PlannedSheet at(String site) {
            PlanFile.SavedOpening whole = new PlanFile.SavedOpening(openAt, closeAt, azimuthDeg, altitudeDeg,
                    fNumber);
            PlanFile.PlannedOpening first = whole.at();
            return new PlanFile.PlannedSheet(sheet, site, wish, camera, film, first.open(), first.aim(),
                    first.fNumber(), PlanFile.tone(skyToneStops), openings.orElse(List.of(whole)).stream()
                    .map(PlanFile.SavedOpening::at).toList());
        }
    }
}
