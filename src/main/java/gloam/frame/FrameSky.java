package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What a frame shows of the sky over a site.
 *
 * @param framing where the camera pointed
 * @param seen    how many things were found in it that may be stars
 * @param byStars the aim by the stars; empty where they do not say
 * @param patches the sky piece by piece, row by row
 */
public record FrameSky(Framing framing, int seen, Optional<StarAim> byStars, List<Patch> patches) {

    /** How near a turn of the sky must bring the aim to where it is said to be, to count as the clock's. */
    private static final double WITHIN_RAD = Math.toRadians(1);

    /** Copies the list. */
    public FrameSky {
        patches = List.copyOf(patches);
    }

    /**
     * Measures a frame.
     *
     * @param stars the catalogue
     * @param said  where the camera pointed, where that was said
     * @throws BadInput when the frame shows no sky that can be measured, when nothing says where it pointed,
     *                  or when its stars are not those of where it is said to have pointed
     */
    public static FrameSky of(Ephemeris ephemeris, Site site, List<Star> stars, LightImage image, Taken taken,
            Optional<Said> said) {
        Detector detector = new Detector(image);
        List<Detection> found = detector.found();
        List<SkyStar> sky = SkyStar.over(ephemeris, site, taken.middle(), stars);
        Optional<StarAim> aim = new StarMatch(sky, found, taken.camera(), image,
                said.map(where -> where.aim().vector())).find();
        if (aim.isEmpty() && said.isPresent()) {
            refuseElsewhere(new StarMatch(sky, found, taken.camera(), image, Optional.empty()).find());
        }
        ImageMap map = aim.map(StarAim::map).orElseGet(() -> ImageMap.of(said.orElseThrow(() ->
                unknown(found.size())).framing(taken), image));
        return new FrameSky(map.axes().framing(), found.size(), aim,
                Patches.of(image, taken, map, detector.bright(), site.skyline()));
    }

    private static void refuseElsewhere(Optional<StarAim> elsewhere) {
        elsewhere.ifPresent(aim -> {
            Direction at = aim.map().axes().framing().aim();
            throw new BadInput("the stars in the frame are not those of where it is said to point, but those "
                    + "around azimuth " + Math.round(at.azimuth().degrees()) % 360 + "°, altitude "
                    + Math.round(at.altitude().degrees()) + "°; correct --azimuth and --altitude, or leave "
                    + "them out, or correct the time");
        });
    }

    private static BadInput unknown(int found) {
        return new BadInput("nothing shows where the frame points: " + found
                + " points of light were found, but "
                + "too few are stars of the place and time; check both, or give --azimuth DEG and "
                + "--altitude DEG");
    }

    /**
     * Where a camera is said to have pointed.
     *
     * @param aim  the aim
     * @param roll the camera's turn about its axis
     */
    public record Said(Direction aim, Angle roll) {

        Framing framing(Taken taken) {
            return new Framing(aim, roll, taken.camera());
        }

        /**
         * By how much the camera's clock is ahead of the right time, in s, if the camera pointed where it is
         * said and the stars show another aim: the turn of the sky between the two.
         *
         * @return empty where no turn of the sky brings one to the other within a degree
         */
        public OptionalDouble clockAheadS(Site site, Direction byStars) {
            Vector3D pole = new Vector3D(0, site.latitude().cos(), site.latitude().sin());
            double saidUp = aim.vector().dotProduct(pole);
            double starsUp = byStars.vector().dotProduct(pole);
            Vector3D to = aim.vector().subtract(saidUp, pole);
            Vector3D from = byStars.vector().subtract(starsUp, pole);
            if (Math.min(from.getNorm(), to.getNorm()) < WITHIN_RAD
                    || Math.abs(Math.asin(saidUp) - Math.asin(starsUp)) > WITHIN_RAD) {
                return OptionalDouble.empty();
            }
            double turnRad = Math.atan2(pole.dotProduct(from.crossProduct(to)), from.dotProduct(to));
            return OptionalDouble.of(turnRad / EarthTurn.RAD_S);
        }
    }
}
