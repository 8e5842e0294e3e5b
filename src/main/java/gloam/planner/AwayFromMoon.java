package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The sky of a picture that the Moon is in, away from its halo: the median of the places of a frame that lie
 * 8° from the Moon or more; where none does, of the place that lies furthest.
 */
final class AwayFromMoon {

    private static final double HALO_DEG = 8;
    private static final int PLACES_A_SIDE = 5;

    private final List<Direction> places;
    private final List<SkyLight.Patch> patches;

    AwayFromMoon(Framing framing, Function<Direction, SkyLight.Patch> sky) {
        double wideMm = framing.camera().frame().widthMm();
        double highMm = framing.camera().frame().heightMm();
        this.places = IntStream.range(0, PLACES_A_SIDE * PLACES_A_SIDE).mapToObj(place -> new Framing.Point(
                wideMm * ((place % PLACES_A_SIDE + 0.5) / PLACES_A_SIDE - 0.5),
                highMm * ((place / PLACES_A_SIDE + 0.5) / PLACES_A_SIDE - 0.5)))
                .filter(framing::images).map(point -> framing.toSky(point.xMm(), point.yMm())).toList();
        this.patches = places.stream().map(sky).toList();
    }

    /** Its light, the Moon standing somewhere. */
    SkyLight.Sample light(Direction moon, Function<SkyLight.Patch, SkyLight.Sample> light) {
        double[] apartDeg = places.stream().mapToDouble(place -> moon.to(place).degrees()).toArray();
        double leastDeg = Math.min(HALO_DEG, Arrays.stream(apartDeg).max().orElseThrow());
        List<SkyLight.Sample> seen = IntStream.range(0, apartDeg.length)
                .filter(place -> apartDeg[place] >= leastDeg)
                .mapToObj(place -> light.apply(patches.get(place)))
                .sorted(Comparator.comparingDouble(sample -> sample.total().cdM2())).toList();
        return seen.get(seen.size() / 2);
    }
}
