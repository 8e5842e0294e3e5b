package gloam.ephemeris;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The stars to magnitude 6, by their places at J2000.0: proper motion and parallax are not known.
 *
 * <p>A star is called by its proper name where it has one ("Vega"), else by its letter or number in its
 * constellation ("τ Phe", "33 Psc"), else by its number in the Hipparcos catalogue ("HIP 107").
 */
public final class StarCatalogue {

    private static final String RESOURCE = "/gloam/ephemeris/stars.tsv";
    private static final String HIPPARCOS = "HIP ";

    private final List<Star> stars;
    private final Map<String, Star> byName;
    private final Map<String, List<Star>> byConstellation;

    private StarCatalogue(List<Star> stars, Map<String, Star> byName, Map<String, List<Star>> byConstellation) {
        this.stars = stars;
        this.byName = byName;
        this.byConstellation = byConstellation;
    }

    /** The catalogue in the jar, read at the first call. */
    public static StarCatalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    private static StarCatalogue read() {
        List<Row> rows = TextResource.rows(RESOURCE, Row::of);
        Map<String, Star> byName = new HashMap<>();
        rows.forEach(row -> row.names().forEach(name -> byName.putIfAbsent(key(name), row.star())));
        return new StarCatalogue(rows.stream().map(Row::star).toList(), byName, rows.stream().collect(
                Collectors.groupingBy(Row::constellation, Collectors.mapping(Row::star, Collectors.toList()))));
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
        return Optional.ofNullable(byName.get(key(name)));
    }

    /** The lettered and numbered stars of a constellation, brightest first. */
    public List<Star> in(Constellation constellation) {
        return List.copyOf(byConstellation.getOrDefault(constellation.abbreviation(), List.of()));
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Holds the catalogue in the jar from the first call on. */
    private static final class BuiltIn {

        static final StarCatalogue CATALOGUE = read();
    }

    /** A row of the table: the star, all it is called, the usual name first, and its constellation's letters. */
    private record Row(Star star, List<String> names, String constellation) {

        static Row of(String[] fields) {
            List<String> names = names(fields);
            double colourBv = fields[4].isEmpty() ? Double.NaN : Double.parseDouble(fields[4]);
            return new Row(new Star(names.get(0), Double.parseDouble(fields[1]),
                    Double.parseDouble(fields[2]), 0, 0,
                    Double.parseDouble(fields[3]), colourBv), names, fields[7]);
        }

        private static List<String> names(String[] fields) {
            List<String> names = new ArrayList<>();
            if (!fields[8].isEmpty()) {
                names.add(fields[8]);
            }
            for (int letterOrNumber = 5; letterOrNumber <= 6; letterOrNumber++) {
                if (!fields[letterOrNumber].isEmpty()) {
                    names.add(fields[letterOrNumber] + " " + fields[7]);
                }
            }
            names.add(HIPPARCOS + fields[0]);
            return names;
        }
    }
}
