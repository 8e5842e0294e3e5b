package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.light.GroundLight;
import gloam.light.SkyLight;
import gloam.trail.Track;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The computed picture of a sheet.
 *
 * <p><b>Model.</b> At every point progress of each layer by the sky ({@link LightMesh}), trails with the width of
 * their spot ({@link TrailPainter}), the land under the skyline, then the film's tone curve. <b>Valid.</b> Clear air,
 * a lens free of faults but for its fall-off. <b>Error.</b> That of the exposure, half a stop at best.
 * <b>Departures.</b> No Milky Way, clouds, halation, reflections or grain; stars to magnitude 6.
 */
public final class Proof {

    private static final double MOON_NEAR_DEG = 8;
    private static final Duration MOON_STEP = Duration.ofMinutes(10);

    private final SheetSetup setup;
    private final Raster raster;
    private final double[][] progress;

    private Proof(SheetSetup setup, Raster raster, double[][] progress) {
        this.setup = setup;
        this.raster = raster;
        this.progress = progress;
    }

    /** The proof of a sheet under the Moon, the planets and some stars. */
    public static Proof of(Ephemeris ephemeris, SheetSetup setup, List<Star> stars, Raster raster) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, setup.site());
        List<Layer> layers = Layer.of(setup.film());
        SkyMoments sky = new SkyMoments(new SkyLight(ephemeris, setup.site()));
        double[][] progress = LightMesh.progress(raster, new PointProgress(setup, layers, sky),
                moonNear(estimator, setup) ? LightMesh.Fineness.MOON : LightMesh.Fineness.SMOOTH);
        TrailPainter painter = new TrailPainter(setup, layers, sky, raster, progress);
        Interval whole = setup.whole();
        Predicate<Target> mayCross = estimator.mayCross(setup.framing(), whole);
        Stream<TrailLight> bodies = EnumSet.range(Body.MOON, Body.NEPTUNE).stream().map(body ->
                TrailLight.of(body, ephemeris.appearance(body, setup.site(), whole.middle())));
        List<Drawn> drawn = Stream.concat(bodies, stars.stream().map(TrailLight::of)).parallel()
                .filter(light -> mayCross.test(light.target()))
                .map(light -> new Drawn(light, estimator.track(setup.framing(), light.target(), whole))).toList();
        drawn.forEach(trail -> painter.paint(trail.light, trail.track));
        cover(ephemeris, setup, raster, layers, progress);
        return new Proof(setup, raster, progress);
    }

    private record Drawn(TrailLight light, Track track) {
    }

    private static boolean moonNear(TrailEstimator estimator, SheetSetup setup) {
        double nearDeg = setup.framing().radius().degrees() + MOON_NEAR_DEG;
        Interval whole = setup.whole();
        for (Instant at = whole.start(); at.isBefore(whole.endExclusive()); at = at.plus(MOON_STEP)) {
            Direction moon = estimator.direction(Body.MOON, at);
            if (moon.altitude().degrees() > -1 && moon.to(setup.framing().aim()).degrees() < nearDeg) {
                return true;
            }
        }
        return false;
    }

    /** Puts the land over what stands behind it. */
    private static void cover(Ephemeris ephemeris, SheetSetup setup, Raster raster, List<Layer> layers,
                              double[][] progress) {
        boolean[] land = Land.of(raster, setup.framing(), setup.site().skyline());
        double[][] shown = setup.groundReflectance().isEmpty() ? new double[layers.size()][land.length]
                : LightMesh.progress(raster, new PointProgress(setup, layers, new LitLand(
                        new GroundLight(ephemeris, setup.site()), setup.groundReflectance().getAsDouble())),
                        LightMesh.Fineness.SMOOTH);
        for (int layer = 0; layer < progress.length; layer++) {
            for (int pixel = 0; pixel < land.length; pixel++) {
                progress[layer][pixel] = land[pixel] ? shown[layer][pixel] : progress[layer][pixel];
            }
        }
    }

    /** The pixels. */
    public Raster raster() {
        return raster;
    }

    /** How many layers the film has. */
    public int layers() {
        return progress.length;
    }

    /** Progress of a layer in the middle of a pixel, 1 at the mid-tone, 0 for land without light. */
    public double progress(int layer, int column, int row) {
        return progress[layer][row * raster.widthPx() + column];
    }

    /** The sheet as it looks when developed. */
    public Picture picture() {
        ToneScale scale = new ToneScale(setup.film().tone());
        int channels = progress.length;
        byte[] levels = new byte[raster.widthPx() * raster.heightPx() * channels];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = scale.level(progress[i % channels][i / channels]);
        }
        return new Picture(raster.widthPx(), raster.heightPx(), channels, levels);
    }
}
