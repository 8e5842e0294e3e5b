package gloam.frame;

import gloam.gear.Camera;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.special.Beta;

/**
 * Finds where a camera pointed by the stars in its frame.
 *
 * <p><b>Model.</b> Two of the brightest things found are taken for two stars as far apart; that turns the
 * sky, and the turn is good where other things fall on stars too. What is good is fitted ({@link AimFit}) and
 * believed where so many of the brightest fall on stars as chance would bring once in 10<sup>9</sup> turns.
 * <b>Valid.</b> Six stars of the catalogue in the frame and a focal length to 5 %. <b>Error.</b> A tenth of a
 * degree at most, mostly a tenth of that. <b>Departures.</b> Brightness sorts, and is not compared.
 */
final class StarMatch {

    /** How near to its place a star is found in the end. */
    static final double WITHIN_DEG = 0.12;

    private static final double[] LONGER = {0, -0.02, 0.02, -0.04, 0.04};
    private static final double ABOUT_RAD = Math.toRadians(20);
    private static final double LOWEST_UP = -0.35;
    private static final int FIRST = 14;
    private static final int CHECKED = 30;
    private static final int JUDGED = 20;
    private static final int IN_FRAME = 25;
    private static final int FEWEST = 60;
    private static final int MOST = 600;
    private static final double NEAREST_SHARE = 0.15;
    private static final double APART_SHARE = 0.012;
    private static final double APART_RAD = Math.toRadians(0.1);
    private static final double BESIDE_RAD = Math.toRadians(0.45);
    private static final int LEAST_HITS = 4;
    private static final int MOST_FITS = 150;
    private static final double BY_CHANCE = 1e-9;
    private static final int INDEX_BITS = 10;

    private final List<SkyStar> stars;
    private final List<Detection> detections;
    private final ImageMap unaimed;
    private final Optional<Vector3D> about;

    /**
     * A search.
     *
     * @param stars      the stars over the horizon, brightest first
     * @param detections what was found in the image, brightest first
     * @param about      where the camera is known to have pointed, within 20°
     */
    StarMatch(List<SkyStar> stars, List<Detection> detections, Camera camera, LightImage image,
            Optional<Vector3D> about) {
        this.stars = stars;
        this.detections = detections;
        this.unaimed = ImageMap.unaimed(camera, image.width(), image.height());
        this.about = about;
    }

    /** Where the camera pointed; empty where the stars do not say. */
    Optional<StarAim> find() {
        double reach = ABOUT_RAD + unaimed.halfDiagonalRad();
        List<SkyStar> near = about.isEmpty() ? stars : stars.stream()
                .filter(star -> Vector3D.angle(star.direction(), about.get()) < reach).toList();
        double seen = (1 - Math.cos(unaimed.halfDiagonalRad())) * 0.7;
        double whole = about.isEmpty() ? 1 : Math.min(1, (1 - Math.cos(Math.min(Math.PI, reach))));
        int first = Math.min(near.size(),
                (int) Math.max(FEWEST * whole, Math.min(MOST, IN_FRAME * whole / seen)));
        List<SkyStar> bright = near.subList(0, first);
        long[] pairs = pairs(bright, 2 * unaimed.halfDiagonalRad());
        SkyDots dots = new SkyDots(stars.subList(0, Math.min(stars.size(), 3 * (int) (first / whole))),
                BESIDE_RAD);
        for (double longer : LONGER) {
            Optional<StarAim> found = find(unaimed.moved(Vector3D.ZERO, longer, 0), bright, pairs, dots);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Pairs of stars, nearest first: nanoradians between them, then the two. */
    private static long[] pairs(List<SkyStar> bright, double farthestRad) {
        long[] pairs = new long[bright.size() * (bright.size() - 1) / 2];
        int count = 0;
        for (int a = 0; a < bright.size(); a++) {
            for (int b = a + 1; b < bright.size(); b++) {
                double apart = Vector3D.angle(bright.get(a).direction(), bright.get(b).direction());
                if (apart < farthestRad) {
                    pairs[count++] = (long) (apart * 1e9) << 2 * INDEX_BITS | a << INDEX_BITS | b;
                }
            }
        }
        long[] found = Arrays.copyOf(pairs, count);
        Arrays.sort(found);
        return found;
    }

    private Optional<StarAim> find(ImageMap map, List<SkyStar> bright, long[] pairs, SkyDots dots) {
        int checked = Math.min(CHECKED, detections.size());
        Vector3D[] seen = new Vector3D[checked];
        Arrays.setAll(seen, i -> map.toSky(detections.get(i).x(), detections.get(i).y()));
        Search search = new Search(map, seen, dots);
        for (int sum = 1; sum < 2 * FIRST; sum++) {
            for (int i = Math.max(0, sum - FIRST + 1); 2 * i < sum; i++) {
                int j = sum - i;
                if (j >= checked) {
                    continue;
                }
                double apart = Vector3D.angle(seen[i], seen[j]);
                if (apart < NEAREST_SHARE * map.halfDiagonalRad()) {
                    continue;
                }
                double within = APART_SHARE * apart + APART_RAD;
                for (int at = from(pairs, apart - within); at < pairs.length
                        && pairs[at] >> 2 * INDEX_BITS < (apart + within) * 1e9; at++) {
                    Vector3D a = bright.get((int) (pairs[at] >> INDEX_BITS) & (1 << INDEX_BITS) - 1)
                            .direction();
                    Vector3D b = bright.get((int) pairs[at] & (1 << INDEX_BITS) - 1).direction();
                    Optional<StarAim> found = search.triedBothWays(a, b, seen[i], seen[j]);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static int from(long[] pairs, double apartRad) {
        int found = Arrays.binarySearch(pairs, (long) (Math.max(0, apartRad) * 1e9) << 2 * INDEX_BITS);
        return found < 0 ? -found - 1 : found;
    }

    /** One search: what it has found good so far. */
    private final class Search {

        private final ImageMap map;
        private final Vector3D[] seen;
        private final SkyDots dots;
        private int best = LEAST_HITS;
        private int fits;

        Search(ImageMap map, Vector3D[] seen, SkyDots dots) {
            this.map = map;
            this.seen = seen;
            this.dots = dots;
        }

        Optional<StarAim> triedBothWays(Vector3D a, Vector3D b, Vector3D first, Vector3D second) {
            return tried(new Rotation(a, b, first, second))
                    .or(() -> tried(new Rotation(b, a, first, second)));
        }

        private Optional<StarAim> tried(Rotation skyToCamera) {
            Vector3D ahead = skyToCamera.applyInverseTo(Vector3D.PLUS_J);
            if (ahead.getZ() < LOWEST_UP
                    || about.isPresent() && Vector3D.angle(ahead, about.get()) > ABOUT_RAD) {
                return Optional.empty();
            }
            int hits = 0;
            for (int i = 0; i < seen.length && hits + seen.length - i >= best; i++) {
                hits += dots.near(skyToCamera.applyInverseTo(seen[i])) ? 1 : 0;
            }
            if (hits < best || hits == best && fits >= MOST_FITS) {
                return Optional.empty();
            }
            best = hits;
            fits++;
            return AimFit.of(map.turned(skyToCamera), stars, detections).filter(StarMatch.this::believed);
        }
    }

    /** Whether chance would hardly bring so many of the brightest things found near to stars. */
    boolean believed(StarAim aim) {
        List<Detection> judged = detections.subList(0, Math.min(JUDGED, detections.size()));
        List<Detection> matched = new ArrayList<>();
        aim.matched().forEach(pair -> matched.add(pair.detection()));
        int hits = (int) judged.stream().filter(matched::contains).count();
        ImageMap map = aim.map();
        long inFrame = stars.stream().filter(star -> map.toImage(star.direction()).filter(map::contains)
                .isPresent()).count();
        double withinPx = Math.toRadians(WITHIN_DEG) * map.pixelsARadian();
        double each = 1 - Math.exp(-inFrame * Math.PI * withinPx * withinPx
                / ((double) map.width() * map.height()));
        return byChance(judged.size(), hits, each) < BY_CHANCE;
    }

    /** The chance of that many hits or more of some, each with its own chance: a binomial distribution. */
    private static double byChance(int of, int hits, double each) {
        return hits == 0 ? 1 : Beta.regularizedBeta(each, hits, of - hits + 1);
    }
}
