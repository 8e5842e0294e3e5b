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
    private final List<Placed> brightestFirst;
    private final Map<Fixed, FixedFrame> fixed = new ConcurrentHashMap<>();

    private StarField(List<Star> catalogue, List<Placed> brightestFirst) {
        this.catalogue = catalogue;
        this.brightestFirst = brightestFirst;
    }

    private record Fixed(Site site, Framing framing, int year) {
    }

    /**
     * A star, its number in the catalogue, and where it stands.
     *
     * @param octavesSlower by how many octaves its image is slower than that of a star on the equator, at
     *                      most
     */
    record Placed(int number, Vector3D place, float magnitude, float octavesSlower) {

        static Placed of(int number, Star star) {
            return new Placed(number, star.place(), (float) star.magnitude(),
                    FrameStars.mostOctavesSlower(star.place()));
        }
    }

    /** The field of some stars. */
    static StarField of(List<Star> stars) {
        return new StarField(stars, IntStream.range(0, stars.size())
                .mapToObj(number -> Placed.of(number, stars.get(number)))
                .sorted(Comparator.comparingDouble(Placed::magnitude)).toList());
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

    /** The stars from one declination to another, in radians, the brightest first. */
    List<Placed> between(double leastRad, double mostRad) {
        double leastZ = Math.sin(Math.max(-Math.PI / 2, leastRad));
        double mostZ = Math.sin(Math.min(Math.PI / 2, mostRad));
        return brightestFirst.stream().filter(star -> star.place.getZ() >= leastZ
                && star.place.getZ() <= mostZ).toList();
    }
}
