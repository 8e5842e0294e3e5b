package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.film.FilmStock;
import gloam.gear.Site;
import gloam.planner.Plan;
import gloam.planner.Progress;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The small computed pictures of a timetable's sheets.
 *
 * @param bySheet the picture of each sheet, by its number in the pack
 */
public record SheetPictures(Map<Integer, Picture> bySheet) {

    /** Pixels along the longer side: what a card shows. */
    private static final int LONG_SIDE_PX = 240;

    /** A sheet and its number in the pack. */
    private record Numbered(int number, Sheet sheet) {

        static Numbered of(Site site, Plan.Window window) {
            Framing framing = new Framing(window.aim(), window.wish().aim().roll(), window.camera());
            Setting first = new Setting(framing, window.fNumber(), List.of(window.open()));
            return new Numbered(window.sheet(), new Sheet(site, window.film(),
                    Stream.concat(Stream.of(first), window.later().stream()).toList()));
        }
    }

    /** Computes the pictures of all sheets, with black land, negatives as their prints. */
    public static SheetPictures of(Ephemeris ephemeris, List<Star> stars, Plan plan, Progress progress) {
        List<Numbered> sheets = plan.nights().stream().flatMap(night -> night.windows().stream()
                .map(window -> Numbered.of(night.night().site(), window))).toList();
        Runnable done = progress.each(sheets.size());
        Function<Numbered, Picture> picture = numbered -> {
            Picture drawn = Proof.of(ephemeris, numbered.sheet, OptionalDouble.empty(), stars,
                    Raster.of(numbered.sheet.frame(), LONG_SIDE_PX)).picture(FilmStock.Kind.POSITIVE);
            done.run();
            return drawn;
        };
        return new SheetPictures(sheets.parallelStream()
                .collect(Collectors.toMap(Numbered::number, picture)));
    }
}
