package gloam.light;

import gloam.ephemeris.Star;
import gloam.units.Angle;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Light of the stars too faint to stand alone and of the dust between them: the Milky Way.
 *
 * <p><b>Model.</b> Pioneer 10 (Toller 1981) after Leinert et al. 1998, A&amp;AS 127, 1, table 35, by galactic
 * coordinates, brought from 440 nm to V by its colour; through the air as {@link DiffuseAir} says.
 * <b>Valid.</b> The whole sky in cells of 4° to 10°. <b>Error.</b> 0.3 stop: a tenth in the photometry, the
 * colour, a reading of the table that was not checked against the paper. <b>Departures.</b> Stars brighter
 * than about 6.5 are left out, as they are there; cells that were not mapped count like those as far on the
 * other side of the galaxy's plane; beyond 80° of latitude like those at 80°; air as for zodiacal light.
 */
final class Starlight extends DiffuseLight {

    private static final double SPREAD_STOPS = 0.3;
    private static final double COLOUR_BV = 0.75;
    private static final double SUN_BV = 0.65;
    private static final double BLUE_TO_VISUAL = Math.pow(10, 0.4 * (COLOUR_BV - SUN_BV));
    private static final double HIGHEST_DEG = 80;
    private static final double LAST_DEG = 350;
    /** ESA 1997, The Hipparcos and Tycho Catalogues, vol. 1, section 1.5.3. */
    private static final Star POLE = Star.at("galactic pole", 192.85948, 27.12825);
    private static final Rotation TO_GALACTIC = new Rotation(POLE.place(), Star.GALACTIC_CENTRE.place(),
            Vector3D.PLUS_K, Vector3D.PLUS_I);

    private final DiffuseTable table = DiffuseTable.of("/gloam/light/starlight.tsv",
            (printed, latitude, longitude) -> printed.applyAsDouble(-latitude, longitude));

    Starlight() {
        super(COLOUR_BV, SPREAD_STOPS);
    }

    @Override
    double s10(Vector3D star, Vector3D sun) {
        Vector3D place = TO_GALACTIC.applyTo(star);
        double aroundDeg = Angle.ofRadians(place.getAlpha()).positive().degrees();
        double latitudeDeg = Math.toDegrees(place.getDelta());
        double heldDeg = Math.max(-HIGHEST_DEG, Math.min(HIGHEST_DEG, latitudeDeg));
        return BLUE_TO_VISUAL * (aroundDeg <= LAST_DEG ? table.s10(heldDeg, aroundDeg)
                : between(table.s10(heldDeg, LAST_DEG), table.s10(heldDeg, 0),
                (aroundDeg - LAST_DEG) / (360 - LAST_DEG)));
    }

    /** Straight in the logarithm, as inside the table. */
    private static double between(double from, double to, double share) {
        return from * Math.pow(to / from, share);
    }
}
