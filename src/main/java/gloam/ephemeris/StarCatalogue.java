package gloam.ephemeris;

import java.util.List;
import java.util.Optional;

/**
 * The stars to magnitude 6, by their places at J2000.0: proper motion and parallax are not known.
 *
 * <p>A star is called by its proper name where it has one ("Vega"), else by its letter or number in its
 * constellation ("τ Phe", "33 Psc"), else by its number in the Hipparcos catalogue ("HIP 107").
 */
public final class StarCatalogue {

    /** V magnitude at which it ends: fainter stars are not in it. */
    public static final double FAINTEST_MAG = 6;

    private static final String RESOURCE = "/gloam/ephemeris/stars.tsv";
    private static final String HIPPARCOS = "HIP ";

    private final List<Row> rows;
    private final List<Star> stars;

    private StarCatalogue(List<Row> rows) {
        this.rows = rows;
        this.stars = rows.stream().map(Row::star).toList();
    }

    /** The catalogue in the jar, read at the first call. */
    public static StarCatalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    /** All stars, brightest first. */
    public List<Star> stars() {
        return stars;
    }

    /**
     * The star of a name (case does not matter): proper name, letter or number with the constellation's three
     * letters, or Hipparcos number such as {@code HIP 91262}. Of two stars with one proper name it is the
     * brighter.
     */
    public Optional<Star> named(String name) {
        String wanted = name.strip();
        return rows.stream().filter(row -> !wanted.isEmpty() && row.isCalled(wanted)).map(Row::star)
                .findFirst();
    }

    /** The lettered and numbered stars of a constellation, brightest first. */
    public List<Star> in(Constellation constellation) {
        return rows.stream().filter(row -> row.constellation().equals(constellation.abbreviation()))
                .map(Row::star)
                .toList();
    }

    /** Holds the catalogue in the jar from the first call on. */
    private static final class BuiltIn {

        static final StarCatalogue CATALOGUE = new StarCatalogue(TextResource.rows(RESOURCE, Row::of));
    }

    /**
     * A row of the table.
     *
     * @param star  the star by the usual one of its names
     * @param hip   its number in the Hipparcos catalogue
     * @param bayer its letter, {@code flamsteed} its number in the {@code constellation}, {@code proper} its
     *              name, each empty where it has none
     */
    private record Row(Star star, String hip, String bayer, String flamsteed, String constellation,
            String proper) {

        static Row of(String[] fields) {
            double colourBv = fields[4].isEmpty() ? Double.NaN : Double.parseDouble(fields[4]);
            return new Row(new Star(usualName(fields), Double.parseDouble(fields[1]),
                    Double.parseDouble(fields[2]), 0, 0,
                    Double.parseDouble(fields[3]), colourBv), fields[0], fields[5], fields[6], fields[7],
                    fields[8]);
        }

        private static String usualName(String[] fields) {
            if (!fields[8].isEmpty()) {
                return fields[8];
            }
            String inConstellation = fields[5].isEmpty() ? fields[6] : fields[5];
            return inConstellation.isEmpty() ? HIPPARCOS + fields[0] : inConstellation + " " + fields[7];
        }

        boolean isCalled(String name) {
            return name.equalsIgnoreCase(proper) || name.equalsIgnoreCase(bayer + " " + constellation)
                    || name.equalsIgnoreCase(flamsteed + " " + constellation)
                    || name.equalsIgnoreCase(HIPPARCOS + hip);
        }
    }
}
