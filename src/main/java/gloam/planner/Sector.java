package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.units.BadInput;

/**
 * A part of the horizon, from one azimuth clockwise to another; through north where the second is less.
 *
 * @param fromDeg where it begins, 0 to 360
 * @param toDeg   where it ends, 0 to 360, not where it begins
 */
public record Sector(double fromDeg, double toDeg) {

    private static final double CIRCLE_DEG = 360;

    /** Refuses azimuths outside their range, and two that are the same, with {@link BadInput}. */
    public Sector {
        Direction.AZIMUTH.check(fromDeg);
        Direction.AZIMUTH.check(toDeg);
        if (fromDeg == toDeg) {
            throw new BadInput("from and to are the same azimuth; give two, clockwise");
        }
    }

    /** Whether an azimuth, in degrees from 0 to 360, lies in it, its ends included. */
    boolean holds(double azimuthDeg) {
        double widthDeg = fromDeg < toDeg ? toDeg - fromDeg : toDeg - fromDeg + CIRCLE_DEG;
        double insideDeg = azimuthDeg < fromDeg ? azimuthDeg - fromDeg + CIRCLE_DEG : azimuthDeg - fromDeg;
        return insideDeg <= widthDeg;
    }
}
