package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.planner.Plan;
import gloam.planner.Progress;
import gloam.planner.Trip;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.proof.SheetSetup;
import gloam.trail.Framing;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The small computed pictures of a timetable's sheets.
 *
 * @param bySheet the picture of each sheet, by its number in the pack
 */
public record SheetPictures(Map<Integer, Picture> bySheet) {

    /** Pixels along the longer side: what a card shows. */
    private static final int LONG_SIDE_PX = 240;

    /** A sheet and where it is exposed. */
    private record Sheet(Site site, Plan.Window window) {
    }

    /** Computes the pictures of all sheets, over land that stays black. */
    public static SheetPictures of(Ephemeris ephemeris, List<Star> stars, Plan plan, Progress progress) {
        List<Sheet> sheets = plan.nights().stream().flatMap(night ->
                night.windows().stream().map(window -> new Sheet(night.night().site(), window))).toList();
        Runnable done = progress.each(sheets.size());
        Function<Sheet, Picture> picture = sheet -> {
            Picture drawn = picture(ephemeris, stars, plan.trip(), sheet);
            done.run();
            return drawn;
        };
        return new SheetPictures(sheets.parallelStream()
                .collect(Collectors.toMap(sheet -> sheet.window.sheet(), picture)));
    }

    private static Picture picture(Ephemeris ephemeris, List<Star> stars, Trip trip, Sheet sheet) {
        Plan.Window window = sheet.window;
        SheetSetup setup = new SheetSetup(sheet.site,
                new Framing(window.aim(), window.wish().aim().roll(), trip.camera()),
                window.wish().film().orElse(trip.film()), window.fNumber(), List.of(window.open()),
                OptionalDouble.empty());
        return Proof.of(ephemeris, setup, stars, Raster.of(trip.camera().frame(), LONG_SIDE_PX)).picture();
    }
}
