package gloam.answer;

import gloam.frame.LightImage;
import gloam.units.BadInput;
import java.util.Arrays;

/**
 * A part of a scan, in shares of the scan's width and height.
 *
 * @param left   its left edge
 * @param top    its upper edge
 * @param width  its width
 * @param height its height
 */
public record ScanPart(double left, double top, double width, double height) {

    private static final int NUMBERS = 4;
    private static final double PERCENT = 100;

    /** The part that a text such as {@code 10,8,80,76} means, in percent. */
    public static ScanPart of(String text) {
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
        return new ScanPart(percent[0] / PERCENT, percent[1] / PERCENT, percent[2] / PERCENT,
                percent[3] / PERCENT);
    }

    /** Its corners in pixels, clockwise from the upper left. */
    public double[][] corners(LightImage image) {
        double x = left * image.width();
        double y = top * image.height();
        double right = x + width * image.width();
        double lower = y + height * image.height();
        return new double[][] {{x, y}, {right, y}, {right, lower}, {x, lower}};
    }
}
