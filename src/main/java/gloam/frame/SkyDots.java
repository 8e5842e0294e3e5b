package gloam.frame;

import java.util.BitSet;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The sky over the horizon as a map on which stars are dots, to see at once whether one stands near:
 * Lambert's projection, which keeps areas and needs no trigonometry.
 */
final class SkyDots {

    private static final int SIDE = 1024;
    /** The map's radius: a little more than the horizon's, √2. */
    private static final double RADIUS = 1.42;

    private final BitSet dots = new BitSet(SIDE * SIDE);

    SkyDots(List<SkyStar> stars, double radiusRad) {
        double wide = radiusRad * SIDE / (2 * RADIUS);
        int reach = (int) Math.ceil(1.5 * wide);
        for (SkyStar star : stars) {
            int middle = index(star.direction());
            int x = middle % SIDE;
            int y = middle / SIDE;
            for (int row = Math.max(0, y - reach); row <= Math.min(SIDE - 1, y + reach); row++) {
                for (int column = Math.max(0, x - reach); column <= Math.min(SIDE - 1, x + reach); column++) {
                    if (Math.hypot(row - y, column - x) <= wide) {
                        dots.set(row * SIDE + column);
                    }
                }
            }
        }
    }

    /** Whether a star stands near a direction; never below the horizon. */
    boolean near(Vector3D direction) {
        return direction.getZ() >= 0 && dots.get(index(direction));
    }

    private static int index(Vector3D direction) {
        double stretch = Math.sqrt(2 / (1 + direction.getZ())) * SIDE / (2 * RADIUS);
        int x = (int) (SIDE / 2.0 + stretch * direction.getX());
        int y = (int) (SIDE / 2.0 + stretch * direction.getY());
        return y * SIDE + x;
    }
}
