package gloam.gear;

import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The exposed area of a sheet.
 *
 * @param widthMm  along the camera's horizontal, 5 to 1000 mm
 * @param heightMm across it, 5 to 1000 mm
 */
public record Frame(double widthMm, double heightMm) {

    /** Allowed width and height. */
    public static final Range SIDE = new Range("frame side", 5, 1000, "mm");

    private static final Pattern SIDES = Pattern.compile("([\\d.][^xX×]*)[xX×]\\s*([\\d.]+\\s*(.*))");

    /** Refuses a side outside its range with {@link gloam.units.BadInput}. */
    public Frame {
        SIDE.check(widthMm);
        SIDE.check(heightMm);
    }

    /**
     * The frame a text such as {@code 80x80}, {@code 80 × 60 mm} or {@code 4x5in} means, width first; without
     * a unit in mm.
     */
    public static Frame of(String text) {
        Matcher sides = SIDES.matcher(text.strip());
        if (!sides.matches()) {
            throw new BadInput("expected width and height such as 80x80 or 8x8cm, found \"" + text + "\"");
        }
        Quantity width = new Quantity(sides.group(1));
        return new Frame((width.plain() ? new Quantity(width.text() + sides.group(3)) : width).in(SIDE),
                new Quantity(sides.group(2)).in(SIDE));
    }

    /** Whether a text has the form of a frame. */
    public static boolean written(String text) {
        return SIDES.matcher(text.strip()).matches();
    }

    /** Distance of a corner from the centre in mm. */
    public double halfDiagonalMm() {
        return Math.hypot(widthMm, heightMm) / 2;
    }

    /** Whether a point counted from the centre lies on the frame, its edge included. */
    public boolean contains(double xMm, double yMm) {
        return Math.abs(xMm) <= widthMm / 2 && Math.abs(yMm) <= heightMm / 2;
    }
}
