package gloam.cli;

import gloam.answer.SheetLit;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.journal.Exposed;
import gloam.store.PlanFile.PlannedSheet;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How the camera was set in each opening of a sheet.
 *
 * @param open       when the shutter was open
 * @param aim        direction of the frame's centre in the first opening
 * @param lens       the lens at the f-number of the first opening
 * @param oneAim     whether that aim holds for all
 * @param oneFNumber whether that f-number does
 */
record OpeningSettings(List<Interval> open, Optional<Direction> aim, Lens lens, boolean oneAim,
        boolean oneFNumber) {

    private record Own(Optional<Direction> aim, FNumber fNumber) {
    }

    /**
     * The settings as a plan has them, or as the journal has those of a sheet that is corrected.
     *
     * @throws BadInput where the shutter was not open as often, so that it is not known which holds when
     */
    List<SheetLit.Set> of(Optional<PlannedSheet> planned, Optional<Exposed> known) {
        List<Own> own = planned.map(OpeningSettings::own).or(() -> known.map(OpeningSettings::own))
                .orElse(List.of());
        boolean alike = own.stream().distinct().count() < 2;
        if (own.size() != open.size() && !alike && !oneAim) {
            throw new BadInput("that sheet was to be opened " + own.size() + " times, each at an aim or "
                    + "f-number of its own, not " + open.size()
                    + "; give every --open, or one aim for all with --azimuth and --altitude");
        }
        if (own.size() != open.size() || alike) {
            return SheetLit.Set.alike(open, aim, lens);
        }
        return IntStream.range(0, open.size()).mapToObj(number -> new SheetLit.Set(open.get(number),
                oneAim ? aim : own.get(number).aim,
                oneFNumber ? lens : lens.with(List.of(own.get(number).fNumber)))).toList();
    }

    private static List<Own> own(PlannedSheet sheet) {
        return sheet.openings().stream().map(opening ->
                new Own(Optional.of(opening.aim()), opening.fNumber())).toList();
    }

    private static List<Own> own(Exposed sheet) {
        return sheet.openings().stream().map(opening ->
                new Own(sheet.aim(opening), sheet.lens(opening).fNumbers().get(0))).toList();
    }
}
