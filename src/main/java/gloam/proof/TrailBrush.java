package gloam.proof;

import gloam.trail.Framing;

/** Draws short lines of light onto the pixels of every layer. */
final class TrailBrush {

    private final Raster raster;
    private final double[][] progress;

    /** A brush for pixels in rows, one list of them for each layer. */
    TrailBrush(Raster raster, double[][] progress) {
        this.raster = raster;
        this.progress = progress;
    }

    /** Adds to each layer so much progress times mm², spread along the line from one point to another. */
    void stroke(Spot spot, Framing.Point from, Framing.Point to, double[] amountsMm2) {
        double reachMm = spot.reachMm();
        int left = lowest(raster.column(Math.min(from.xMm(), to.xMm()) - reachMm));
        int right = highest(raster.column(Math.max(from.xMm(), to.xMm()) + reachMm), raster.widthPx());
        int top = lowest(raster.row(Math.max(from.yMm(), to.yMm()) + reachMm));
        int bottom = highest(raster.row(Math.min(from.yMm(), to.yMm()) - reachMm), raster.heightPx());
        double lengthMm = from.distanceMm(to);
        double unitX = lengthMm == 0 ? 1 : (to.xMm() - from.xMm()) / lengthMm;
        double unitY = lengthMm == 0 ? 0 : (to.yMm() - from.yMm()) / lengthMm;
        for (int row = top; row <= bottom; row++) {
            double offY = raster.yMm(row) - from.yMm();
            for (int column = left; column <= right; column++) {
                double offX = raster.xMm(column) - from.xMm();
                double asideMm = offY * unitX - offX * unitY;
                if (Math.abs(asideMm) <= reachMm) {
                    double share = spot.perMm2(offX * unitX + offY * unitY, asideMm, lengthMm);
                    for (int layer = 0; layer < progress.length; layer++) {
                        progress[layer][row * raster.widthPx() + column] += share * amountsMm2[layer];
                    }
                }
            }
        }
    }

    private static int lowest(double pixel) {
        return (int) Math.max(0, Math.ceil(pixel));
    }

    private static int highest(double pixel, int count) {
        return (int) Math.min(count - 1, Math.floor(pixel));
    }
}
