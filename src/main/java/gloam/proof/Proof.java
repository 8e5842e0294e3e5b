package gloam.proof;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.film.FilmStock;
import gloam.light.GroundLight;
import gloam.light.SkyLight;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The computed picture of a sheet.
 *
 * <p><b>Model.</b> At every point progress of each layer by the sky ({@link LightMesh}), trails with the
 * width of their spot ({@link TrailPainter}), the land under the skyline, then the film's tone curve.
 * <b>Valid.</b> Clear air, a lens free of faults but for its fall-off. <b>Error.</b> That of the exposure,
 * half a stop at best.
 * <b>Departures.</b> No stars fainter than magnitude 6 but as an even glow, no clouds, halation, reflections
 * or grain.
 */
public final class Proof {

    private final FilmStock film;
    private final Raster raster;
    private final double[][] progress;
    private final Function<Framing.Point, double[]> skyProgress;
    private final Optional<double[]> awayFromMoon;

    private Proof(FilmStock film, Raster raster, double[][] progress,
            Function<Framing.Point, double[]> skyProgress, Optional<double[]> awayFromMoon) {
        this.film = film;
        this.raster = raster;
        this.progress = progress;
        this.skyProgress = skyProgress;
        this.awayFromMoon = awayFromMoon;
    }

    /**
     * The proof of a sheet under the Moon, the planets and some stars.
     *
     * @param groundReflectance share of its light that the land throws back; empty for land that stays black
     */
    public static Proof of(Ephemeris ephemeris, Sheet sheet, OptionalDouble groundReflectance,
                           List<Star> stars, Raster raster) {
        List<Layer> layers = Layer.of(sheet.film());
        SkyMoments sky = new SkyMoments(new SkyLight(ephemeris, sheet.site()));
        Optional<WideLight> ground = groundReflectance.isEmpty() ? Optional.empty() : Optional.of(new LitLand(
                new GroundLight(ephemeris, sheet.site()), groundReflectance.getAsDouble()));
        double[][] progress = new double[layers.size()][raster.widthPx() * raster.heightPx()];
        List<SettingProof> proofs = sheet.settings().stream().map(setting ->
                new SettingProof(ephemeris, sheet.site(), setting, layers, raster)).toList();
        proofs.forEach(proof -> add(progress, proof.progress(sky, ground, stars)));
        return new Proof(sheet.film(), raster, progress,
                point -> sum(proofs, proof -> proof.progress(sky, ground, point)),
                proofs.stream().anyMatch(SettingProof::hasMoon)
                        ? Optional.of(sum(proofs, proof -> proof.awayFromMoon(sky, ground)))
                        : Optional.empty());
    }

    private static double[] sum(List<SettingProof> proofs, Function<SettingProof, double[]> progress) {
        return proofs.stream().map(progress).reduce((one, other) -> IntStream.range(0, one.length)
                .mapToDouble(layer -> one[layer] + other[layer]).toArray()).orElseThrow();
    }

    private static void add(double[][] sum, double[][] part) {
        for (int layer = 0; layer < sum.length; layer++) {
            for (int pixel = 0; pixel < sum[layer].length; pixel++) {
                sum[layer][pixel] += part[layer][pixel];
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

    /** Progress of each layer at a point by sky or land alone, whatever trails run there. */
    public double[] skyProgress(Framing.Point point) {
        return skyProgress.apply(point);
    }

    /** The same away from the Moon, where it is in the frame: the tone that the picture is judged by. */
    public Optional<double[]> awayFromMoon() {
        return awayFromMoon;
    }

    /**
     * The sheet as it looks when developed.
     *
     * @param as a negative as itself, or as the print made from it
     */
    public Picture picture(FilmStock.Kind as) {
        boolean printed = film.kind() == FilmStock.Kind.NEGATIVE && as == FilmStock.Kind.POSITIVE;
        ToneScale tones = printed ? ToneScale.printOf(film.tone()) : new ToneScale(film.tone());
        int channels = progress.length;
        byte[] levels = new byte[raster.widthPx() * raster.heightPx() * channels];
        for (int i = 0; i < levels.length; i++) {
            int pixel = i / channels;
            levels[i] = tones.level(progress[i % channels][pixel], pixel % raster.widthPx(),
                    pixel / raster.widthPx());
        }
        return new Picture(raster.widthPx(), raster.heightPx(), channels, levels, printed);
    }
}
