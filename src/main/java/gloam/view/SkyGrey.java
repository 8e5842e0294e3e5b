package gloam.view;

import java.util.Locale;

/** How light a sky is drawn. */
final class SkyGrey {

    static final double DARKEST_MAG = 22;
    static final double BRIGHTEST_MAG = 8;

    private SkyGrey() {
    }

    /** How light a sky of mag/arcsec² is drawn, 0 to 1; the page takes it for other colours too. */
    static double light(double mag) {
        return Math.max(0, Math.min(1, (DARKEST_MAG - mag) / (DARKEST_MAG - BRIGHTEST_MAG)));
    }

    /** The colour of that. */
    static String colour(double light) {
        long level = Math.round(18 + 190 * light);
        return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, Math.min(255, level + 12));
    }
}
