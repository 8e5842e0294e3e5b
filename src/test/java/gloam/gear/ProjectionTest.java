package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProjectionTest {

    /** Rounding of doubles. */
    private static final double ROUNDING = 1e-12;

    @Test
    void radiiFollowFromTheDefinitions() {
        assertEquals(1, Projection.RECTILINEAR.radius(Angle.ofDegrees(45)), ROUNDING);
        assertEquals(Math.PI / 4, Projection.EQUIDISTANT.radius(Angle.ofDegrees(45)), ROUNDING);
        assertEquals(Math.sqrt(2), Projection.EQUISOLID.radius(Angle.ofDegrees(90)), ROUNDING);
    }

    @Test
    void aRectilinearLensSeesLessThanARightAngle() {
        assertEquals(Double.POSITIVE_INFINITY, Projection.RECTILINEAR.radius(Angle.ofDegrees(90)));
        assertEquals(Double.POSITIVE_INFINITY, Projection.RECTILINEAR.radius(Angle.ofDegrees(120)));
    }

    @Test
    void anEquisolidImageCircleHoldsTheSphereByArea() {
        for (double offAxisDeg : new double[] {1, 20, 70, 130}) {
            Angle offAxis = Angle.ofDegrees(offAxisDeg);
            double capArea = 2 * Math.PI * (1 - offAxis.cos()); // area of a spherical cap of radius 1
            double radius = Projection.EQUISOLID.radius(offAxis);
            assertEquals(capArea, Math.PI * radius * radius, ROUNDING);
        }
    }

    @ParameterizedTest
    @EnumSource
    void anglesComeBackAndRadiiGrow(Projection projection) {
        double before = -1;
        for (double offAxisDeg = 0; offAxisDeg < 90; offAxisDeg += 0.5) {
            double radius = projection.radius(Angle.ofDegrees(offAxisDeg));
            assertEquals(offAxisDeg, projection.offAxis(radius).degrees(), 1e-10); // rounding near 90°
            assertTrue(radius > before);
            before = radius;
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"EQUIDISTANT", "EQUISOLID"})
    void beyondTheImageCircleOfAFisheyeItIsStillBehind(Projection projection) {
        assertEquals(180, projection.offAxis(10).degrees(), ROUNDING);
    }
}
