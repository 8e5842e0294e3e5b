package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.trail.Framing;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The catalogue stars with their places as vectors, made once for all frames, and those that frames of
 * cameras that stand still show. May be asked by several threads at once.
 */
final class StarField {

    private final List<Star> catalogue;
    private final List<Placed> stars;
    private final Map<Fixed, FixedFrame> fixed = new ConcurrentHashMap<>();

    private StarField(List<Star> catalogue, List<Placed> stars) {
        this.catalogue = catalogue;
        this.stars = stars;
    }

    private record Fixed(Site site, Framing framing, int year) {
    }

    /** A star, its number in the catalogue, and where it stands. */
    record Placed(int number, Vector3D place, double magnitude) {

        static Placed of(int number, Star star) {
            return new Placed(number, star.place(), star.magnitude());
        }
    }

    /** The field of some stars. */
    static StarField of(List<Star> stars) {
        return new StarField(stars, IntStream.range(0, stars.size())
                .mapToObj(number -> Placed.of(number, stars.get(number)))
                .sorted(Comparator.comparingDouble(star -> star.place.getZ())).toList());
    }

    /** The stars in the order of their numbers. */
    List<Star> catalogue() {
        return catalogue;
    }

    /** Those that a framing that stands still shows at a site in a year. */
    FixedFrame fixed(Ephemeris ephemeris, Site site, Framing framing, int year) {
        return fixed.computeIfAbsent(new Fixed(site, framing, year),
                frame -> FixedFrame.of(ephemeris, site, framing, year, this));
    }

    /**
     * The stars, and perhaps no others, whose declination is no further from that of a place than an angle.
     */
    List<Placed> aroundDeclinationOf(Vector3D place, double radiusRad) {
        double declinationRad = place.getDelta();
        return stars.subList(firstAtLeast(Math.sin(Math.max(-Math.PI / 2, declinationRad - radiusRad))),
                firstAtLeast(Math.nextUp(Math.sin(Math.min(Math.PI / 2, declinationRad + radiusRad)))));
    }

    private int firstAtLeast(double z) {
        int low = 0;
        int high = stars.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (stars.get(middle).place.getZ() >= z) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
