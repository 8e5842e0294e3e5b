package gloam.support;

import java.util.Locale;

/** Invented measurements of the Earth's orientation in the columns of the IERS's finals2000A. */
public final class FinalsColumns {

    private static final int FIRST_MJD = 61437; // 2027-02-01
    private static final int DAYS = 28;

    private FinalsColumns() {
    }

    /** A month of days: UT1 − UTC about 0.4 s, the pole about 0.3 arcsec away, both moving. */
    public static String february2027() {
        StringBuilder lines = new StringBuilder();
        for (int day = 0; day < DAYS; day++) {
            lines.append(String.format(Locale.ROOT,
                    "27 2%2d %8.2f P %9.6f 0.000090 %9.6f 0.000090  P%10.7f 0.0000100",
                    day + 1, (double) FIRST_MJD + day, 0.1 + 0.001 * day, 0.3 - 0.0005 * day,
                    0.4 - 0.0007 * day));
            lines.append(String.format(Locale.ROOT, " %7.4f %6.4f  P %9.3f%9.3f %9.3f%9.3f%n", 0.7, 0.001,
                    0.0, 0.1, 0.0, 0.1));
        }
        return lines.toString();
    }
}
