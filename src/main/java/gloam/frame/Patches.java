package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.gear.Skyline;
import gloam.light.SkyBrightness;
import gloam.units.BadInput;
import gloam.units.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Cuts a frame into pieces of sky.
 *
 * <p><b>Model.</b> Each piece is cut into sixteen parts; a part is the median of its pixels, stars, clipped
 * pixels and their neighbours left out, made a luminance at its own angle off the axis; the piece is the
 * median of its parts, its scatter from their median deviation. <b>Valid.</b> Sky that changes little over a
 * piece.
 * <b>Error.</b> Told with each piece. <b>Departures.</b> A part with land in it, a margin of half a degree
 * included, or with less than half of its pixels left, is left out; so is a piece with less than half of its
 * parts.
 */
public final class Patches {

    private static final int COLUMNS = 6;
    private static final int FEWEST_ROWS = 3;
    private static final int MOST_ROWS = 9;
    private static final int PARTS = 4;
    private static final double MARGIN_DEG = 0.5;
    /** Below two levels of 255 a frame shows its own darkness. */
    private static final double BLACK = SrgbCurve.light(2 / 255.0);

    private final LightImage image;
    private final Taken taken;
    private final ImageMap map;
    private final BitSet bright;
    private final Skyline skyline;
    private int clippedParts;
    private int parts;

    private Patches(LightImage image, Taken taken, ImageMap map, BitSet bright, Skyline skyline) {
        this.image = image;
        this.taken = taken;
        this.map = map;
        this.bright = bright;
        this.skyline = skyline;
    }

    /**
     * The pieces of sky in a frame, row by row.
     *
     * @throws BadInput when the frame is black, clipped or shows no sky
     */
    static List<Patch> of(LightImage image, Taken taken, ImageMap map, BitSet bright, Skyline skyline) {
        return new Patches(image, taken, map, bright, skyline).all();
    }

    private List<Patch> all() {
        int rows = Math.max(FEWEST_ROWS, Math.min(MOST_ROWS,
                Math.round((float) COLUMNS * image.height() / image.width())));
        List<Patch> patches = new ArrayList<>();
        List<Double> lights = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                piece(column, row, rows, lights).ifPresent(patches::add);
            }
        }
        if (patches.isEmpty()) {
            throw new BadInput(2 * clippedParts > parts
                    ? "the frame is overexposed: its sky is white; take one "
                    + "with less exposure" : "the frame shows no sky over the skyline to measure; check "
                    + "where it points");
        }
        if (lights.stream().mapToDouble(light -> light).sorted().skip(lights.size() / 2).findFirst()
                .orElseThrow() < BLACK) {
            throw new BadInput("the frame is black: its sky lies below level 2 of 255; take one with more "
                    + "exposure or a higher ISO");
        }
        return patches;
    }

    private Optional<Patch> piece(int column, int row, int rows, List<Double> lights) {
        List<Part> found = new ArrayList<>();
        for (int i = 0; i < PARTS * PARTS; i++) {
            int across = column * PARTS + i % PARTS;
            int down = row * PARTS + i / PARTS;
            int left = across * image.width() / (COLUMNS * PARTS);
            int right = (across + 1) * image.width() / (COLUMNS * PARTS);
            int top = down * image.height() / (rows * PARTS);
            int bottom = (down + 1) * image.height() / (rows * PARTS);
            parts++;
            if (!land(left, right, top, bottom)) {
                part(left, right, top, bottom).ifPresent(found::add);
            }
        }
        if (2 * found.size() < PARTS * PARTS) {
            return Optional.empty();
        }
        double light = Median.of(found.stream().mapToDouble(Part::light).toArray());
        double[] mags = found.stream().mapToDouble(Part::magArcsec2).toArray();
        double mag = Median.of(mags);
        double scatter = Median.scatter(mags, mag);
        double x = (column + 0.5) / COLUMNS;
        double y = (row + 0.5) / rows;
        lights.add(light);
        return Optional.of(new Patch(x, y, 1.0 / COLUMNS, 1.0 / rows,
                Direction.of(map.toSky(x * image.width(), y * image.height())),
                SkyBrightness.ofMagArcsec2(mag), scatter, taken.sharedErrorMag(light)));
    }

    /** Whether land may stand in a part. */
    private boolean land(int left, int right, int top, int bottom) {
        return IntStream.range(0, 4).anyMatch(corner -> {
            Direction seen = Direction.of(map.toSky(corner % 2 == 0 ? left : right, corner < 2 ? top
                    : bottom));
            return seen.altitude().degrees() < MARGIN_DEG
                    + Math.max(0, skyline.altitudeAt(seen.azimuth()).degrees());
        });
    }

    /** The sky of a part; its light is above nothing, so that it has a magnitude. */
    private Optional<Part> part(int left, int right, int top, int bottom) {
        float[] lights = new float[(right - left) * (bottom - top)];
        int count = 0;
        int clipped = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                if (image.clipped(x, y)) {
                    clipped++;
                } else if (!bright.get(y * image.width() + x)) {
                    lights[count++] = image.light(x, y);
                }
            }
        }
        if (2 * clipped > lights.length) {
            clippedParts++;
        }
        if (2 * count < lights.length || count == 0) {
            return Optional.empty();
        }
        Arrays.sort(lights, 0, count);
        double light = Math.max(lights[count / 2], SrgbCurve.light(0.5 / 255));
        return Optional.of(new Part(light, taken.luminance(light,
                map.offAxis((left + right) / 2.0, (top + bottom) / 2.0)).magArcsec2()));
    }

    /** A part: the share of white its pixels are, and the sky that this stands for. */
    private record Part(double light, double magArcsec2) {
    }
}
