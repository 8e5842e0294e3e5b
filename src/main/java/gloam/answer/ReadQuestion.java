package gloam.answer;

import gloam.film.FilmStock;
import gloam.frame.LightImage;
import gloam.frame.PictureEdges;
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
import java.util.Arrays;
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
 * @param negative whether the scan shows a negative
 */
public record ReadQuestion(Entry entry, Site site, Frame frame, Angle roll, FilmStock film, LightImage image,
        Optional<Crop> crop, boolean negative) {

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

    double[][] corners() {
        return crop.map(part -> part.corners(image)).or(() -> PictureEdges.of(image)).orElseThrow(() ->
                new BadInput("no picture with four straight edges is found on it; give its place with "
                + "--crop X,Y,W,H"));
    }

    /**
     * The part of a scan that is the picture, in shares of the scan's width and height.
     *
     * @param left   its left edge
     * @param top    its upper edge
     * @param width  its width
     * @param height its height
     */
    public record Crop(double left, double top, double width, double height) {

        private static final int NUMBERS = 4;
        private static final double PERCENT = 100;

        /** The part that a text such as {@code 10,8,80,76} means, in percent. */
        public static Crop of(String text) {
            double[] percent;
            try {
                percent = Arrays.stream(text.split(",", -1)).map(String::strip)
                        .mapToDouble(Double::parseDouble).toArray();
            } catch (NumberFormatException noNumber) {
                percent = new double[0];
            }
            if (percent.length != NUMBERS || !(percent[0] >= 0 && percent[1] >= 0 && percent[2] > 0
                    && percent[3] > 0 && percent[0] + percent[2] <= PERCENT
                    && percent[1] + percent[3] <= PERCENT)) {
                throw new BadInput("\"" + text + "\" is no part of a scan; give left edge, upper edge, width "
                        + "and height in percent, such as 10,8,80,76");
            }
            return new Crop(percent[0] / PERCENT, percent[1] / PERCENT, percent[2] / PERCENT,
                    percent[3] / PERCENT);
        }

        private double[][] corners(LightImage image) {
            double x = left * image.width();
            double y = top * image.height();
            double right = x + width * image.width();
            double lower = y + height * image.height();
            return new double[][] {{x, y}, {right, y}, {right, lower}, {x, lower}};
        }
    }
}
