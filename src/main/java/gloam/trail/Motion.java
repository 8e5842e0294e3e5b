package gloam.trail;

import gloam.units.Angle;
import gloam.units.Finite;

/**
 * How an image moves over the sheet at an instant.
 *
 * @param direction from +x towards +y, 0 (included) to 360° (left out)
 * @param speedMmS  in mm/s
 */
public record Motion(Angle direction, double speedMmS) {

    /** Refuses a speed that is not finite. */
    public Motion {
        Finite.check(speedMmS, "speed in mm/s");
    }

    static Motion of(Framing.Point from, Framing.Point to, double lastsS) {
        double alongX = to.xMm() - from.xMm();
        double alongY = to.yMm() - from.yMm();
        return new Motion(Angle.ofRadians(Math.atan2(alongY, alongX)).positive(),
                Math.hypot(alongX, alongY) / lastsS);
    }
}
