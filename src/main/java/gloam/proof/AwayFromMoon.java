package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.sheet.Setting;
import gloam.trail.FramedTrails;
import gloam.trail.Framing;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The sky of a picture that the Moon is in, away from its halo: the median of the places of a frame that lie
 * 8° from the Moon or more; where none does, of the place that lies furthest. Its tone is the picture's.
 */
public final class AwayFromMoon {

    private static final double HALO_DEG = 8;
    private static final int PLACES_A_SIDE = 5;

    private final List<Direction> places;
    private final List<SkyLight.Patch> patches;

    /** The places of a frame, each with the sky that is seen there. */
    public AwayFromMoon(Framing framing, Function<Direction, SkyLight.Patch> sky) {
        double wideMm = framing.camera().frame().widthMm();
        double highMm = framing.camera().frame().heightMm();
        this.places = IntStream.range(0, PLACES_A_SIDE * PLACES_A_SIDE).mapToObj(place -> new Framing.Point(
                wideMm * ((place % PLACES_A_SIDE + 0.5) / PLACES_A_SIDE - 0.5),
                highMm * ((place / PLACES_A_SIDE + 0.5) / PLACES_A_SIDE - 0.5)))
                .filter(framing::images).map(point -> framing.toSky(point.xMm(), point.yMm())).toList();
        this.patches = places.stream().map(sky).toList();
    }

    /** Whether the Moon runs over a frame above the skyline while the shutter is open. */
    public static boolean concerns(Ephemeris ephemeris, Site site, Framing framing, List<Interval> openings) {
        return new FramedTrails(new TrailEstimator(ephemeris, site), site.skyline(), framing, openings)
                .passage(Body.MOON).isPresent();
    }

    /** The sky of a frame away from the Moon at any instant. */
    public static Function<Instant, SkyLight.Sample> seen(Ephemeris ephemeris, Site site, Framing framing) {
        SkyLight light = new SkyLight(ephemeris, site);
        AwayFromMoon frame = new AwayFromMoon(framing, light::patch);
        return at -> frame.light(ephemeris.position(Body.MOON, site, at).apparentDirection(),
                light.moment(at)::at);
    }

    /** The light that the picture of a setting is judged by, if the Moon is in it: the same all over. */
    static Optional<WideLight> light(Ephemeris ephemeris, Site site, Setting setting) {
        if (!concerns(ephemeris, site, setting.framing(), setting.openings())) {
            return Optional.empty();
        }
        Function<Instant, SkyLight.Sample> seen = seen(ephemeris, site, setting.framing());
        return Optional.of(direction -> seen.andThen(SkyMoments::glow));
    }

    /** Its light, the Moon standing somewhere. */
    public SkyLight.Sample light(Direction moon, Function<SkyLight.Patch, SkyLight.Sample> light) {
        double[] apartDeg = places.stream().mapToDouble(place -> moon.to(place).degrees()).toArray();
        double leastDeg = Math.min(HALO_DEG, Arrays.stream(apartDeg).max().orElseThrow());
        List<SkyLight.Sample> seen = IntStream.range(0, apartDeg.length)
                .filter(place -> apartDeg[place] >= leastDeg)
                .mapToObj(place -> light.apply(patches.get(place)))
                .sorted(Comparator.comparingDouble(sample -> sample.total().cdM2())).toList();
        return seen.get(seen.size() / 2);
    }
}
