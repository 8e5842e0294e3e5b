package gloam.ephemeris;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

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

    private StarCatalogue(List<Star> stars, Map<String, Star> byName) {
        this.stars = List.copyOf(stars);
        this.byName = byName;
    }

    /** The catalogue in the jar, read anew at each call. */
    public static StarCatalogue builtIn() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                StarCatalogue.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8))) {
            List<Star> stars = new ArrayList<>();
            Map<String, Star> byName = new HashMap<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.startsWith("#")) {
                    Row row = Row.of(line);
                    stars.add(row.star());
                    row.names().forEach(name -> byName.putIfAbsent(key(name), row.star()));
                }
            }
            return new StarCatalogue(stars, byName);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** A line of the table: the star and all it is called, the usual name first. */
    private record Row(Star star, List<String> names) {

        static Row of(String line) {
            String[] fields = line.split("\t", -1);
            List<String> names = names(fields);
            double colourBv = fields[4].isEmpty() ? Double.NaN : Double.parseDouble(fields[4]);
            return new Row(new Star(names.get(0), Double.parseDouble(fields[1]),
                    Double.parseDouble(fields[2]), 0, 0,
                    Double.parseDouble(fields[3]), colourBv), names);
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
