package gloam.trail;

import gloam.ephemeris.Direction;
import java.util.Optional;

/**
 * The celestial pole over a site, and where it falls on a sheet.
 *
 * @param north     whether it is the north pole of the sky, else the south pole
 * @param direction where it is seen; the altitude is the site's latitude, lifted by refraction
 * @param place     where it falls on the sheet, on the frame or beside it; empty where the lens does not see
 * @param inFrame   whether that is on the frame
 */
public record CelestialPole(boolean north, Direction direction, Optional<Framing.Point> place,
                            boolean inFrame) {
}
