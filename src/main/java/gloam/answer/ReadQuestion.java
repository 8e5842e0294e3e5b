package gloam.answer;

import gloam.film.FilmStock;
import gloam.frame.LightImage;
import gloam.frame.PictureEdges;
import gloam.frame.StepWedge;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.journal.Entry;
import gloam.journal.Opening;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A scan to be read.
 *
 * @param entry    the sheet's entry
 * @param site     where it was exposed
 * @param frame    the exposed area
 * @param roll     the camera's turn about its axis
 * @param film     its film
 * @param image    the scan
 * @param crop     the picture's left and upper edge, width and height as shares of the scan; empty where
 *                 its edges are to be found
 * @param wedge    a grey step wedge beside the sheet, if there is one
 * @param negative whether the scan shows a negative
 */
public record ReadQuestion(Entry entry, Site site, Frame frame, Angle roll, FilmStock film, LightImage image,
        Optional<ScanPart> crop, Optional<Wedge> wedge, boolean negative) {

    List<Interval> openings() {
        return entry.exposed().openings().stream().map(Opening::open).toList();
    }

    Setting setting(Framing framing, List<Interval> openings) {
        return new Setting(framing, entry.exposed().fNumber(), openings);
    }

    Framing noted() {
        return new Framing(entry.exposed().aim().orElseThrow(() -> new BadInput("the entry does not say "
                + "where the camera pointed; add it by gloam journal add --corrects " + entry.id()
                + " --azimuth DEG --altitude DEG")), roll,
                new Camera("camera", entry.exposed().lens(), frame, Duration.ZERO));
    }

    /** The scan as its sheet reflects or lets through light, as far as that is known. */
    LightImage light() {
        return wedge.map(beside -> beside.steps.light(image, beside.place.corners(image))).orElse(image);
    }

    double[][] corners(LightImage light) {
        return crop.map(part -> part.corners(light)).or(() -> PictureEdges.of(light,
                wedge.map(beside -> beside.place.corners(light)))).orElseThrow(() ->
                new BadInput("no picture with four straight edges is found on it; give its place with "
                + "--crop X,Y,W,H"));
    }

    /**
     * A grey step wedge on a scan.
     *
     * @param place where it lies
     * @param steps its steps
     */
    public record Wedge(ScanPart place, StepWedge steps) {

        /** The wedge at a place with the densities of a text such as {@code 0.05,0.20,0.35}. */
        public static Wedge of(ScanPart place, String densities) {
            return new Wedge(place, StepWedge.of(densities));
        }
    }
}
