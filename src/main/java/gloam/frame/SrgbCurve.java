package gloam.frame;

/**
 * What a level of an image is as a share of its white.
 *
 * <p><b>Model.</b> The colour component transfer function of sRGB, IEC 61966-2-1:1999, turned round;
 * luminance by the weights of its primaries, those of ITU-R BT.709. <b>Valid.</b> Images coded by that curve.
 * <b>Error.</b> None but the curve that a camera lays over it. <b>Departures.</b> None.
 */
public final class SrgbCurve {

    /** What red, green and blue have of the luminance of white. */
    public static final double[] LUMINANCE = {0.2126, 0.7152, 0.0722};

    private SrgbCurve() {
    }

    /** Light by level, each as a share of white, 0 to 1. */
    public static double light(double level) {
        return level <= 0.04045 ? level / 12.92 : Math.pow((level + 0.055) / 1.055, 2.4);
    }

    /** Level by light, the inverse of {@link #light}. */
    public static double level(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    /** How much of its light a level changes by for a change of the level, both as shares of white. */
    static double slope(double level) {
        return level <= 0.04045 ? 1 / 12.92 : 2.4 / 1.055 * Math.pow((level + 0.055) / 1.055, 1.4);
    }
}
