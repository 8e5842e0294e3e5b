package gloam.proof;

import gloam.trail.Framing;
import gloam.units.Stops;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What wide light makes of a sheet: progress of each layer at every pixel, its logarithm straight between the
 * corners of cells that are quartered until it runs straight inside them.
 */
final class LightMesh {

    /**
     * How far the middle of a cell may be off; that of its quarters, which are painted, is off by a fourth of
     * it.
     */
    private static final double STRAIGHT_WITHIN_STOPS = 0.015;
    /** Stands in for darkness in the logarithm. */
    private static final double DARKNESS_STOPS = -100;

    private final Raster raster;
    private final PointProgress points;
    private final int cells;
    private final int mostQuarterings;
    private final double[][] progress;

    private LightMesh(Raster raster, PointProgress points, int cells) {
        this.raster = raster;
        this.points = points;
        this.cells = cells;
        int cellPx = Math.max(raster.widthPx(), raster.heightPx()) / cells;
        this.mostQuarterings = 32 - Integer.numberOfLeadingZeros(cellPx);
        this.progress = new double[points.layers()][raster.widthPx() * raster.heightPx()];
    }

    /**
     * Progress of each layer in the middle of every pixel, row by row.
     *
     * @param cells along each side of the frame at first
     */
    static double[][] progress(Raster raster, PointProgress points, int cells) {
        LightMesh mesh = new LightMesh(raster, points, cells);
        IntStream.range(0, cells).parallel().forEach(row -> mesh.new Strip().fill(row));
        return mesh.progress;
    }

    /**
     * A row of cells, which shares nothing with the others. Places count in the smallest cells there may be.
     */
    private final class Strip {

        private final Map<Integer, double[]> known = new HashMap<>();
        private final int cellSize = 1 << mostQuarterings;
        private final int across = cells * cellSize;

        void fill(int row) {
            for (int column = 0; column < cells; column++) {
                fill(new Cell(column * cellSize, row * cellSize, cellSize));
            }
        }

        private void fill(Cell cell) {
            if (cell.size == 1) {
                paint(cell);
                return;
            }
            boolean straight = straight(cell);
            for (int quarter = 0; quarter < 4; quarter++) {
                int half = cell.size / 2;
                Cell part = new Cell(cell.left + quarter % 2 * half, cell.top + quarter / 2 * half, half);
                if (straight) {
                    paint(part);
                } else {
                    fill(part);
                }
            }
        }

        /** Whether middle and edges of a cell are what its corners say. */
        private boolean straight(Cell cell) {
            Corners corners = corners(cell);
            for (int place = 1; place < 9; place++) {
                if (place % 2 == 1 || place == 4) {
                    double right = place % 3 / 2.0;
                    double down = place / 3 / 2.0;
                    double[] there = stops(cell.left + (int) (right * cell.size),
                            cell.top + (int) (down * cell.size));
                    for (int layer = 0; layer < there.length; layer++) {
                        double offStops = Math.abs(corners.stops(layer, right, down) - there[layer]);
                        if (offStops > STRAIGHT_WITHIN_STOPS) {
                            return false;
                        }
                    }
                }
            }
            return true;
        }

        private void paint(Cell cell) {
            Corners corners = corners(cell);
            int left = firstPixel(cell.left, raster.widthPx());
            int right = firstPixel(cell.left + cell.size, raster.widthPx());
            int bottom = firstPixel(cell.top + cell.size, raster.heightPx());
            for (int row = firstPixel(cell.top, raster.heightPx()); row < bottom; row++) {
                double down = ((row + 0.5) * across / raster.heightPx() - cell.top) / cell.size;
                for (int column = left; column < right; column++) {
                    double over = ((column + 0.5) * across / raster.widthPx() - cell.left) / cell.size;
                    for (int layer = 0; layer < progress.length; layer++) {
                        progress[layer][row * raster.widthPx() + column] =
                                Stops.factor(corners.stops(layer, over, down));
                    }
                }
            }
        }

        /** The first pixel whose middle does not lie before a place. */
        private int firstPixel(int place, int pixels) {
            return (int) Math.ceil((double) place * pixels / across - 0.5);
        }

        private Corners corners(Cell cell) {
            int right = cell.left + cell.size;
            int bottom = cell.top + cell.size;
            return new Corners(stops(cell.left, cell.top), stops(right, cell.top), stops(cell.left, bottom),
                    stops(right, bottom));
        }

        /** Progress of each layer in stops. */
        private double[] stops(int x, int y) {
            return known.computeIfAbsent(y * (across + 1) + x, place -> {
                Framing.Point point = new Framing.Point(
                        raster.frame().widthMm() * ((double) x / across - 0.5),
                        raster.frame().heightMm() * (0.5 - (double) y / across));
                return Arrays.stream(points.at(point))
                        .map(made -> Math.max(DARKNESS_STOPS, Stops.between(1, made))).toArray();
            });
        }
    }

    private record Cell(int left, int top, int size) {
    }

    /** Progress of each layer in stops at the corners of a cell. */
    private record Corners(double[] topLeft, double[] topRight, double[] bottomLeft, double[] bottomRight) {

        /** Straight in between, the place given by shares of the cell from its upper left corner. */
        double stops(int layer, double right, double down) {
            return (1 - down) * ((1 - right) * topLeft[layer] + right * topRight[layer])
                    + down * ((1 - right) * bottomLeft[layer] + right * bottomRight[layer]);
        }
    }
}
