package gloam.cli;

import gloam.answer.SheetLit;
import gloam.gear.Lens;
import gloam.store.PlanFile.PlannedOpening;
import gloam.store.PlanFile.PlannedSheet;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;

/** How a plan sets the camera in each of several openings of a sheet. */
final class PlannedSettings {

    private PlannedSettings() {
    }

    /**
     * The settings of a sheet; none where it is of one opening.
     *
     * @param lens       the lens at the f-number of the first opening, or at one that holds for all
     * @param oneFNumber whether it holds for all
     * @param open       when the shutter really was open
     * @throws BadInput when that is not as often as planned
     */
    static List<SheetLit.Set> of(Optional<PlannedSheet> planned, Lens lens, boolean oneFNumber,
            List<Interval> open) {
        List<PlannedOpening> openings = planned.map(PlannedSheet::openings).orElse(List.of());
        if (openings.size() < 2) {
            return List.of();
        } else if (openings.size() != open.size()) {
            throw new BadInput("the plan opens that sheet " + openings.size() + " times, not " + open.size()
                    + "; give every --open, or one aim for all with --azimuth and --altitude");
        }
        return openings.stream().map(own -> new SheetLit.Set(own.aim(),
                oneFNumber ? lens : lens.with(List.of(own.fNumber())))).toList();
    }
}
