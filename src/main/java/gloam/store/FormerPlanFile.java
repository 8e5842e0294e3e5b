package gloam.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.planner.FormerPlan;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Reads from a plan saved as JSON what it announced to calendars. */
public final class FormerPlanFile {

    /** Up to where a greater one can follow. */
    private static final Range SEQUENCE = new Range("sequence", 0, 2e9, "");

    private FormerPlanFile() {
    }

    /**
     * Reads a plan.
     *
     * @throws gloam.units.BadInput with the place of the first error
     */
    public static FormerPlan read(Input file) {
        Saved saved = Bound.read(new Tree.Text(file.shown(), 1, file.text()), Saved.class);
        return new FormerPlan(saved.identity, saved.nights.stream()
                .flatMap(night -> night.windows.stream().map(window -> window.at(night.site))).toList(),
                saved.cancelled.stream().map(SavedCancelled::known).toList());
    }

    /** What is read of a saved plan, which says more. */
    @JsonIgnoreProperties(ignoreUnknown = true)
    private record Saved(UUID identity, List<SavedNight> nights, List<SavedCancelled> cancelled) {
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedNight(String site, List<SavedWindow> windows) {
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedWindow(UUID identity, int sequence, String wish, OffsetDateTime openAt,
            OffsetDateTime closeAt,
                               int sheet, String film, OffsetDateTime prepareAt, double azimuthDeg,
                               double altitudeDeg, double rollDeg, double fNumber,
                               Optional<String> camera) {

        private SavedWindow {
            SEQUENCE.check(sequence);
            PlanFile.checkOrder(openAt, closeAt);
            PlanFile.SHEET.check(sheet);
            Direction.AZIMUTH.check(azimuthDeg);
            Direction.ALTITUDE.check(altitudeDeg);
            AimSection.ROLL.check(rollDeg);
            FNumber.RANGE.check(fNumber);
        }

        FormerPlan.Window at(String site) {
            return new FormerPlan.Window(new FormerPlan.Event(identity, sequence), wish,
                    new FormerPlan.Details(sheet,
                    site, film, prepareAt.toInstant(), new Interval(openAt.toInstant(), closeAt.toInstant()),
                    azimuthDeg, altitudeDeg, rollDeg, fNumber, camera));
        }
    }

    @JsonIgnoreProperties(ignoreUnknown = true)
    private record SavedCancelled(UUID identity, int sequence, String wish, String site,
            OffsetDateTime openAt,
                                  OffsetDateTime closeAt) {

        private SavedCancelled {
            SEQUENCE.check(sequence);
            PlanFile.checkOrder(openAt, closeAt);
        }

        FormerPlan.Cancelled known() {
            return new FormerPlan.Cancelled(new FormerPlan.Event(identity, sequence), wish, site,
                    new Interval(openAt.toInstant(), closeAt.toInstant()));
        }
    }
}
