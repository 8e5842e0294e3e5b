package gloam.ephemeris;

import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A star by its place in the International Celestial Reference System at epoch J2000.0.
 *
 * @param name             proper name or designation, or coordinates where it has none
 * @param rightAscensionDeg 0 (included) to 360 (left out)
 * @param declinationDeg   -90 to 90
 * @param properMotionRaMasYr  motion in right ascension times cos(declination), mas a Julian year
 * @param properMotionDecMasYr motion in declination, mas a Julian year
 * @param parallaxMas      annual parallax, mas; 0 where unknown
 * @param magnitude        V
 * @param colourBv         B−V, NaN where unknown
 */
public record Star(String name, double rightAscensionDeg, double declinationDeg, double properMotionRaMasYr,
                   double properMotionDecMasYr, double parallaxMas, double magnitude, double colourBv)
        implements Target {

    /** Allowed right ascensions. */
    public static final Range RIGHT_ASCENSION = new Range("right ascension", 0, 360, "deg");
    /** Allowed declinations. */
    public static final Range DECLINATION = new Range("declination", -90, 90, "deg");
    /** Allowed proper motions: twice the fastest known. */
    public static final Range PROPER_MOTION = new Range("proper motion", -20_000, 20_000, "mas/yr");
    /** Allowed parallaxes: up to a third more than the nearest star's. */
    public static final Range PARALLAX = new Range("parallax", 0, 1000, "mas");

    /**
     * Where galactic longitude and latitude begin, near the middle of the Milky Way: ESA 1997, The Hipparcos
     * and Tycho Catalogues, vol. 1, section 1.5.3.
     */
    public static final Star GALACTIC_CENTRE = at("galactic centre", 266.40500, -28.93617);

    /** Refuses numbers outside their range with {@link gloam.units.BadInput}. */
    public Star {
        RIGHT_ASCENSION.check(rightAscensionDeg);
        DECLINATION.check(declinationDeg);
        PROPER_MOTION.check(properMotionRaMasYr);
        PROPER_MOTION.check(properMotionDecMasYr);
        PARALLAX.check(parallaxMas);
    }

    /** A star whose parallax is unknown. */
    public Star(String name, double rightAscensionDeg, double declinationDeg, double properMotionRaMasYr,
                double properMotionDecMasYr, double magnitude, double colourBv) {
        this(name, rightAscensionDeg, declinationDeg, properMotionRaMasYr, properMotionDecMasYr, 0, magnitude,
                colourBv);
    }

    /**
     * A star given as RA,DEC in degrees, RA,DEC,PMRA,PMDEC with its proper motion in mas/yr, or those and its
     * parallax in mas.
     */
    public static Star parse(String text) {
        List<String> parts = Arrays.asList(text.split(",", -1));
        if (parts.size() != 2 && parts.size() != 4 && parts.size() != 5) {
            throw new BadInput("expected RA,DEC, RA,DEC,PMRA,PMDEC or RA,DEC,PMRA,PMDEC,PARALLAX, found \""
                    + text + "\"");
        }
        List<Double> numbers = parts.stream().map(Quantity::number).toList();
        boolean moves = numbers.size() >= 4;
        return new Star(text, numbers.get(0), numbers.get(1), moves ? numbers.get(2) : 0,
                moves ? numbers.get(3) : 0, numbers.size() == 5 ? numbers.get(4) : 0, Double.NaN, Double.NaN);
    }

    /** A place among the stars with no motion, magnitude or colour known. */
    public static Star at(String name, double rightAscensionDeg, double declinationDeg) {
        return new Star(name, rightAscensionDeg, declinationDeg, 0, 0, Double.NaN, Double.NaN);
    }

    /** Its place as a unit vector towards right ascension 0 (x), 6 h (y) and the pole (z). */
    public Vector3D place() {
        return new Vector3D(Math.toRadians(rightAscensionDeg), Math.toRadians(declinationDeg));
    }
}
