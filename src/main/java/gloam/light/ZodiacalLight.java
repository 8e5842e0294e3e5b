package gloam.light;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Sunlight scattered by the dust between the planets.
 *
 * <p><b>Model.</b> Leinert et al. 1998, A&amp;AS 127, 1, table 16, by ecliptic longitude from the Sun and
 * ecliptic latitude; through the air as {@link DiffuseAir} says. <b>Valid.</b> Annual mean from the Earth.
 * <b>Error.</b> 10 to 15 S10 where faint, a fifth where bright. <b>Departures.</b> The cells next to the Sun
 * that the paper leaves blank count like the nearest printed one in latitude; no yearly swing by the tilt of
 * the dust's plane.
 */
final class ZodiacalLight extends DiffuseLight {

    private static final double SPREAD_STOPS = 0.2;
    /** That of the Sun: the paper's unit is light of the Sun's colour. */
    private static final double COLOUR_BV = 0.65;
    /** Mean obliquity of the ecliptic at J2000.0 (IAU 2006). */
    private static final Rotation TO_ECLIPTIC = new Rotation(Vector3D.PLUS_I,
            Math.toRadians(84381.406 / 3600), RotationConvention.FRAME_TRANSFORM);
    private static final double[] LATITUDES_DEG = {5, 10, 15};

    private final DiffuseTable table = DiffuseTable.of("/gloam/light/zodiacal.tsv",
            (printed, apart, latitude) -> {
        for (double outerDeg : LATITUDES_DEG) {
            double s10 = printed.applyAsDouble(apart, outerDeg);
            if (outerDeg > latitude && !Double.isNaN(s10)) {
                return s10;
            }
        }
        throw new IllegalStateException("no latitude of the table is printed at " + apart + "° from the Sun");
    });

    ZodiacalLight() {
        super(COLOUR_BV, SPREAD_STOPS);
    }

    @Override
    double s10(Vector3D star, Vector3D sun) {
        Vector3D place = TO_ECLIPTIC.applyTo(star);
        double apartDeg = Math.abs(Math.toDegrees(place.getAlpha() - TO_ECLIPTIC.applyTo(sun).getAlpha()));
        return table.s10(Math.min(apartDeg, 360 - apartDeg), Math.abs(Math.toDegrees(place.getDelta())));
    }
}
