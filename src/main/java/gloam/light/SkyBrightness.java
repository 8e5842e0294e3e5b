package gloam.light;

import gloam.units.Range;

/**
 * Luminance of a piece of sky or ground.
 *
 * @param cdM2 luminance in cd/m², not negative
 */
public record SkyBrightness(double cdM2) {

    /** No light at all. */
    public static final SkyBrightness NONE = new SkyBrightness(0);

    /** Allowed measurements of a sky, from beyond daylight to beyond the darkest known. */
    public static final Range MAG_ARCSEC2 = new Range("sky brightness", 0, 23, "mag/arcsec2");

    /**
     * Luminance of 0 mag/arcsec²: 2.54e-6 lx of a star of V = 0 times 4.2545e10 square arcseconds in a
     * steradian. The nanolambert formula of Garstang and of Krisciunas and Schaefer lies 0.45 % higher.
     */
    private static final double ZERO_MAG_CD_M2 = 1.08e5;

    /** Refuses a luminance that is negative or not finite: a slip in a computation, never a user's error. */
    public SkyBrightness {
        if (!(cdM2 >= 0 && cdM2 < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("luminance is not a finite number from 0: " + cdM2 + " cd/m²");
        }
    }

    /** The luminance of a V surface brightness in mag/arcsec². */
    public static SkyBrightness ofMagArcsec2(double magArcsec2) {
        return new SkyBrightness(ZERO_MAG_CD_M2 * Math.pow(10, -0.4 * magArcsec2));
    }

    /** This luminance as a V surface brightness in mag/arcsec²; positive infinity for no light. */
    public double magArcsec2() {
        return -2.5 * Math.log10(cdM2 / ZERO_MAG_CD_M2);
    }

    /** The sum of this luminance and another. */
    public SkyBrightness plus(SkyBrightness other) {
        return new SkyBrightness(cdM2 + other.cdM2);
    }
}
