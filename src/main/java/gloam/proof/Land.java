package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.gear.Skyline;
import gloam.trail.Framing;

/** Which pixels show the land under the skyline. */
final class Land {

    private static final int BLOCK_PX = 16;
    /** How far altitudes inside a block may pass those at its corners. */
    private static final double MARGIN_DEG = 1;

    private final Raster raster;
    private final Framing framing;
    private final Skyline skyline;
    private final double highestDeg;
    private final boolean[] land;

    private Land(Raster raster, Framing framing, Skyline skyline) {
        this.raster = raster;
        this.framing = framing;
        this.skyline = skyline;
        this.highestDeg = skyline.points().stream().mapToDouble(Skyline.Point::altitudeDeg).max().orElse(0);
        this.land = new boolean[raster.widthPx() * raster.heightPx()];
    }

    /** The pixels of land, row by row. */
    static boolean[] of(Raster raster, Framing framing, Skyline skyline) {
        Land land = new Land(raster, framing, skyline);
        for (int top = 0; top < raster.heightPx(); top += BLOCK_PX) {
            for (int left = 0; left < raster.widthPx(); left += BLOCK_PX) {
                if (land.mayShow(left, top)) {
                    land.fill(left, top);
                }
            }
        }
        return land.land;
    }

    private boolean mayShow(int left, int top) {
        for (int corner = 0; corner < 4; corner++) {
            Direction direction = seen(left + corner % 2 * BLOCK_PX, top + corner / 2 * BLOCK_PX);
            if (direction.altitude().degrees() < highestDeg + MARGIN_DEG) {
                return true;
            }
        }
        return false;
    }

    private void fill(int left, int top) {
        for (int row = top; row < Math.min(raster.heightPx(), top + BLOCK_PX); row++) {
            for (int column = left; column < Math.min(raster.widthPx(), left + BLOCK_PX); column++) {
                Direction direction = seen(column, row);
                land[row * raster.widthPx() + column] =
                        direction.altitude().compareTo(skyline.altitudeAt(direction.azimuth())) < 0;
            }
        }
    }

    private Direction seen(int column, int row) {
        return framing.toSky(raster.xMm(column), raster.yMm(row));
    }
}
