package gloam.planner;

import gloam.ephemeris.Star;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The catalogue stars with their places as vectors, made once for all frames.
 *
 * @param catalogue the stars
 * @param stars     their places, from the south pole to the north pole
 */
record StarField(List<Star> catalogue, List<Placed> stars) {

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
