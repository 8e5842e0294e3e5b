package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.Camera;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.Angle;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FramingTest {

    /** Rounding of doubles on a sheet of some 100 mm. */
    private static final double ROUNDING_MM = 1e-10;

    private static final Camera CAMERA = Cameras.rectilinear(100, 80, 60);

    private static Framing framing(double azimuthDeg, double altitudeDeg, double rollDeg, Camera camera) {
        return new Framing(Direction.ofDegrees(azimuthDeg, altitudeDeg), Angle.ofDegrees(rollDeg), camera);
    }

    private static void assertFalls(double xMm, double yMm, Framing framing, double azimuthDeg,
                                    double altitudeDeg) {
        Framing.Point point = framing.toFrame(Direction.ofDegrees(azimuthDeg, altitudeDeg)).orElseThrow();
        assertEquals(xMm, point.xMm(), ROUNDING_MM);
        assertEquals(yMm, point.yMm(), ROUNDING_MM);
    }

    @Test
    void rightIsGrowingAzimuthAndUpIsUp() {
        Framing level = framing(350, 0, 0, CAMERA);
        double tan = 100 * Math.tan(Math.toRadians(15));
        assertFalls(0, 0, level, 350, 0);
        assertFalls(tan, 0, level, 5, 0);
        assertFalls(-tan, 0, level, 335, 0);
        assertFalls(0, tan, level, 350, 15);
    }

    @Test
    void rolledClockwiseAsSeenFromBehindTheSceneTurnsTheOtherWay() {
        Framing rolled = framing(350, 0, 90, CAMERA);
        double tan = 100 * Math.tan(Math.toRadians(15));
        assertFalls(-tan, 0, rolled, 350, 15);
        assertFalls(0, tan, rolled, 5, 0);
        Framing slightly = framing(350, 0, 10, CAMERA);
        assertTrue(slightly.toFrame(Direction.ofDegrees(350, 15)).orElseThrow().xMm() < 0);
    }

    @Test
    void atTheZenithTheLowerEdgeLiesTowardsTheAzimuthOfTheAim() {
        Framing up = framing(90, 90, 0, CAMERA);
        double tan = 100 * Math.tan(Math.toRadians(10));
        assertFalls(0, 0, up, 123, 90);
        assertFalls(0, -tan, up, 90, 80);
        assertFalls(0, tan, up, 270, 80);
        assertFalls(tan, 0, up, 180, 80);
        assertFalls(-tan, 0, up, 0, 80);
    }

    /**
     * The gnomonic projection by standard coordinates, as astrometry writes it: ξ and η from longitude and
     * latitude about a tangent point (W. M. Smart, Textbook on Spherical Astronomy, ch. XII), with azimuth
     * and altitude for them.
     */
    @ParameterizedTest
    @CsvSource({
        "200, 35, 205, 40", "10, 50, 350, 42", "0, 0, 20, -10",
        "95, 80, 150, 85", "271, -20, 300, 5", "45, 60, 46, 60",
    })
    void aRectilinearLensIsTheGnomonicProjection(double aimAzimuthDeg, double aimAltitudeDeg,
                                                 double azimuthDeg, double altitudeDeg) {
        double difference = Math.toRadians(azimuthDeg - aimAzimuthDeg);
        double h0 = Math.toRadians(aimAltitudeDeg);
        double h = Math.toRadians(altitudeDeg);
        double below = Math.sin(h) * Math.sin(h0) + Math.cos(h) * Math.cos(h0) * Math.cos(difference);
        double xi = Math.cos(h) * Math.sin(difference) / below;
        double eta = (Math.sin(h) * Math.cos(h0) - Math.cos(h) * Math.sin(h0) * Math.cos(difference)) / below;
        assertFalls(100 * xi, 100 * eta, framing(aimAzimuthDeg, aimAltitudeDeg, 0, CAMERA), azimuthDeg,
                altitudeDeg);
    }

    @Test
    void fisheyesKeepTheirScale() {
        Camera equidistant = Cameras.of(30, 100, 100, Projection.EQUIDISTANT);
        Camera equisolid = Cameras.of(30, 100, 100, Projection.EQUISOLID);
        assertFalls(0, 30 * Math.PI / 2, framing(180, 90, 0, equidistant), 0, 0);
        assertFalls(0, 30 * Math.sqrt(2), framing(180, 90, 0, equisolid), 0, 0);
        assertFalls(30 * Math.PI / 6, 0, framing(0, 0, 0, equidistant), 30, 0);
        assertFalls(60 * Math.sin(Math.toRadians(15)), 0, framing(0, 0, 0, equisolid), 30, 0);
    }

    @Test
    void aLensFocusedNearDrawsLarger() {
        Lens far = Cameras.rectilinear(120, 80, 60).lens();
        Lens near = new Lens(120, far.fNumbers(), far.transmittance(), 3, far.spotUm(), 0, far.projection(),
                Vignetting.NONE);
        Camera camera = new Camera("camera", near, CAMERA.frame(), CAMERA.changeover());
        double imageDistanceMm = 1 / (1.0 / 120 - 1.0 / 3000); // thin lens
        assertFalls(imageDistanceMm * Math.tan(Math.toRadians(12)), 0, framing(0, 0, 0, camera), 12, 0);
    }

    @Test
    void aRectilinearLensDoesNotSeeBehindItself() {
        Framing level = framing(0, 0, 0, CAMERA);
        assertEquals(Optional.empty(), level.toFrame(Direction.ofDegrees(180, 10)));
        assertEquals(Optional.empty(), level.toFrame(Direction.ofDegrees(90.1, 0)));
        assertTrue(level.toFrame(Direction.ofDegrees(89, 0)).isPresent());
    }

    @Test
    void seesWhatFallsOnTheFrame() {
        Framing level = framing(0, 0, 0, CAMERA);
        assertTrue(level.sees(Direction.ofDegrees(21, 0)));   // atan(40/100) = 21.80°
        assertFalse(level.sees(Direction.ofDegrees(22.5, 0)));
        assertFalse(level.sees(Direction.ofDegrees(0, 17)));  // atan(30/100) = 16.70°
        assertFalse(level.sees(Direction.ofDegrees(180, 0)));
    }

    @Test
    void noAimPutsTheZenithBesideTheMiddleLine() {
        Framing level = framing(0, 0, 0, CAMERA);
        assertEquals(Optional.empty(), level.placing(Direction.ZENITH, 20, 0));
        assertEquals(Optional.empty(), level.placing(Direction.ofDegrees(0, 85), 0, -30));
    }

    @ParameterizedTest
    @EnumSource
    void aDirectionIsPutAtTheCentreByAimingAtIt(Projection projection) {
        Framing framing = framing(10, 20, 33, Cameras.of(50, 80, 60, projection));
        Direction target = Direction.ofDegrees(222, 44);
        // rounding
        assertEquals(0, framing.placing(target, 0, 0).orElseThrow().aim().to(target).degrees(), 1e-10);
    }
}
