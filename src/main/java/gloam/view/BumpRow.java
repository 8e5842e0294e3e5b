package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.ephemeris.Direction;
import java.time.Instant;
import java.time.OffsetDateTime;

/**
 * That a camera was moved while its sheet was exposed.
 *
 * @param at          when
 * @param movedDeg    how far its aim moved
 * @param azimuthDeg  where it pointed from then on, from north through east
 * @param altitudeDeg how high
 */
public record BumpRow(OffsetDateTime at, double movedDeg, double azimuthDeg, double altitudeDeg) {

    static BumpRow of(Instant at, Direction before, Direction after, SiteClock clock) {
        return new BumpRow(clock.at(at), before.to(after).degrees(), after.azimuth().degrees(),
                after.altitude().degrees());
    }

    @JsonIgnore
    String text() {
        return "At " + Wording.minute(at) + " (to 2 min) the camera was moved by "
                + Wording.number(movedDeg, 1) + "°; from then on it pointed to azimuth "
                + Wording.direction(azimuthDeg) + "° (" + Wording.bearing(azimuthDeg) + "), altitude "
                + Wording.number(altitudeDeg, 1) + "°.";
    }
}
