package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.ReferenceTable;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class FainterStarsReferenceTest {

    @Test
    void numbersGrowAsTheWholeSkysDo() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("hipparcos/star-numbers.csv").rows();
        for (ReferenceTable.Row from : rows) {
            for (ReferenceTable.Row to : rows) {
                double expected = Math.max(1, to.number("stars") / from.number("stars"));
                assertEquals(expected, 1 + FainterStars.each(from.number("mag"), to.number("mag")),
                        1e-3 * expected, from + " " + to);
            }
        }
    }

    /**
     * Bright stars of a stretch of sky stand for its fainter ones, near the Milky Way and away from it: the
     * catalogue's own to magnitude 6 from those to 5, in 12 caps of 40° about the corners of an icosahedron.
     */
    @Test
    void brightStarsStandForFaintOnesAround() {
        double golden = (1 + Math.sqrt(5)) / 2;
        List<Star> stars = StarCatalogue.builtIn().stars();
        for (int i = 0; i < 12; i++) {
            double one = i % 2 == 0 ? 1 : -1;
            double large = i % 4 < 2 ? golden : -golden;
            Vector3D to = i < 4 ? new Vector3D(0, one, large) : i < 8 ? new Vector3D(one, large, 0)
                    : new Vector3D(large, 0, one);
            List<Star> cap = stars.stream().filter(star -> Vector3D.angle(star.place(), to)
                    < Math.toRadians(40)).toList();
            double bright = cap.stream().filter(star -> star.magnitude() <= 5).count();
            // Poisson: three standard deviations of the bright ones, who are 100 and more
            assertEquals(cap.size(), bright * (1 + FainterStars.each(5, 6)),
                    3 * cap.size() / Math.sqrt(bright), "corner " + i);
        }
    }

    @Test
    void nothingIsBetweenAMagnitudeAndABrighterOne() {
        assertEquals(0, FainterStars.each(6, 5.9));
        assertEquals(0, FainterStars.each(6, Double.NEGATIVE_INFINITY));
        assertEquals(FainterStars.each(6, 11), FainterStars.each(6, 30), "counted to magnitude 11");
    }
}
