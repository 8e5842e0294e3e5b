package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.Projection;
import gloam.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The edges of the frame under every projection: what lies on one is neither inside nor outside. */
class FrameAxesTest {

    private static final double WIDTH_MM = 60;
    private static final double HEIGHT_MM = 40;

    @ParameterizedTest
    @EnumSource
    void edgesOfTheFrameAreWhereItEnds(Projection projection) {
        FrameAxes axes = FrameAxes.of(new Framing(Direction.ofDegrees(140, 35), Angle.ofDegrees(20),
                Cameras.of(30, WIDTH_MM, HEIGHT_MM, projection)));
        for (double share = -0.9; share < 1; share += 0.3) {
            for (Trail.Edge edge : Trail.Edge.values()) {
                assertEquals(0, inside(axes, edge, 1, share), 1e-9, edge + " " + share);
                assertTrue(inside(axes, edge, 0.8, share) > 0, edge + " inside");
                assertTrue(inside(axes, edge, 1.2, share) < 0, edge + " outside");
                if (projection != Projection.RECTILINEAR) {
                    double halfMm = (edge.alongX() ? WIDTH_MM : HEIGHT_MM) / 2;
                    assertEquals(0.2 * halfMm, inside(axes, edge, 0.8, share), 1e-9,
                            "millimetres from the edge");
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theCentreIsHalfAFrameInside(Projection projection) {
        FrameAxes axes = FrameAxes.of(new Framing(Direction.ofDegrees(140, 35), Angle.ZERO,
                Cameras.of(30, WIDTH_MM, HEIGHT_MM, projection)));
        assertEquals(WIDTH_MM / 2, axes.inside(axes.ahead(), Trail.Edge.RIGHT), 1e-9);
        assertEquals(HEIGHT_MM / 2, axes.inside(axes.ahead(), Trail.Edge.TOP), 1e-9);
    }

    /** How far inside an edge the point stands that many times as far out as the edge, somewhere along it. */
    private static double inside(FrameAxes axes, Trail.Edge edge, double out, double along) {
        double towardsMm = edge.sign() * out * (edge.alongX() ? WIDTH_MM : HEIGHT_MM) / 2;
        double besideMm = along * (edge.alongX() ? HEIGHT_MM : WIDTH_MM) / 2;
        return axes.inside(edge.alongX() ? axes.toSky(towardsMm, besideMm) : axes.toSky(besideMm, towardsMm),
                edge);
    }
}
