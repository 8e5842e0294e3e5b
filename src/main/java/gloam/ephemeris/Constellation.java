package gloam.ephemeris;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One of the 88 constellations of the International Astronomical Union.
 *
 * @param abbreviation its three letters, such as {@code Ori}
 * @param name         its name, such as {@code Orion}
 */
public record Constellation(String abbreviation, String name) {

    private static final String RESOURCE = "/gloam/ephemeris/constellations.tsv";

    /** All of them, in the order of their names. */
    public static List<Constellation> all() {
        return TextResource.rows(RESOURCE, fields -> new Constellation(fields[0], fields[1]));
    }

    /** The constellation of a name or of three letters; case does not matter. */
    public static Optional<Constellation> named(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return all().stream().filter(one -> one.name.toLowerCase(Locale.ROOT).equals(wanted)
                || one.abbreviation.toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
    }

    /**
     * Its middle: the mean direction of its lettered and numbered stars in a catalogue, each counted alike.
     */
    public Star middle(StarCatalogue catalogue) {
        Vector3D sum = catalogue.in(this).stream().map(Star::place).reduce(Vector3D.ZERO, Vector3D::add);
        double aroundDeg = Math.toDegrees(sum.getAlpha());
        return Star.at(name, aroundDeg < 0 ? aroundDeg + 360 : aroundDeg, Math.toDegrees(sum.getDelta()));
    }
}
