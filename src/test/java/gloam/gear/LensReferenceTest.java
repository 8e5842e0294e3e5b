package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Stops;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LensReferenceTest {

    private static final double INFINITY = Double.POSITIVE_INFINITY;

    static Stream<Row> blurs() {
        return ReferenceTable.read("thin-lens/blur-at-infinity.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("blurs")
    void starsAreBlurredByANearFocus(Row row) {
        double expectedMm = row.number("blurMm");
        assertEquals(expectedMm, lens(150, 10).defocusMm(FNumber.exact(row.number("fNumber"))),
                5e-4 * expectedMm);
    }

    static Stream<Row> fallOff() {
        return ReferenceTable.read("thin-lens/fall-off.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("fallOff")
    void lightFallsOffByTheFourthPowerOfTheCosine(Row row) {
        Angle offAxis = Angle.ofDegrees(row.number("offAxisDeg"));
        assertEquals(row.number("share"),
                lens(150, INFINITY).relativeIllumination(offAxis, FNumber.exact(8)), 5e-5);
    }

    @Test
    void bellowsTakeLight() {
        // 18 in of bellows on a 12 in lens: factor 2.25 (US Army training text SS0512, p. 44); focus at 3 f
        // gives 1.5 f
        assertEquals(2.25, 1 / lens(304.8, 3 * 0.3048).throughput(), 1e-9); // exact
        // and 8 s become 18 s there
        assertEquals(18, 8 / lens(304.8, 3 * 0.3048).throughput(), 1e-9);
        // image at 8, object at 12 (in any unit): factor 2.78 by the same text, printed 2.8; f = 1/(1/8 +
        // 1/12)
        assertEquals(2.78, 1 / lens(48, 0.12).throughput(), 0.005);
        // m = 0.5: factor 2 1/4 (Langford, Basic Photography); m = 0.5 is a focus at 3 f
        assertEquals(2.25, 1 / lens(100, 0.3).throughput(), 1e-9);
        // f = 200 mm, subject at 3 m: factor 1.15, 0.20 stop (photography forum, thread 97368); rounded to
        // 0.01
        assertEquals(0.20, -Stops.between(1, lens(200, 3).throughput()), 0.01);
        // object at 80 f with transmittance 0.9 etc. turns q = 0.6516 into 0.635; independently computed to
        // 0.001
        assertEquals(0.635, 0.6516 * lens(100, 8).throughput(), 0.001);
    }

    @Test
    void filterFactorOfEightIsThreeStops() {
        Lens filtered = new Lens(150, List.of(FNumber.exact(8)), 1, INFINITY, 50, 3, Projection.RECTILINEAR,
                Vignetting.NONE);
        assertEquals(1 / 8.0, filtered.throughput(), 1e-12); // rounding
    }

    @Test
    void lossOfLightCountsAsAHigherFNumber() {
        // T = N/√τ: f/2 at τ = 0.8 is T 2.236, independently computed to four digits
        Lens lens = new Lens(150, List.of(FNumber.exact(2)), 0.8, INFINITY, 50, 0, Projection.RECTILINEAR,
                Vignetting.NONE);
        assertEquals(2.236, lens.tNumber(FNumber.exact(2)), 5e-4);
    }

    @Test
    void aTNumberTellsTheTransmittance() {
        // the same figures the other way: τ = (2/2.236)² = 0.8, T given to four digits
        assertEquals(0.8, Lens.transmittanceOf(FNumber.exact(2), 2.236), 2e-4);
        assertEquals(1, Lens.transmittanceOf(FNumber.exact(11), 11));
    }

    @Test
    void moreLightThanComesInIsRefused() {
        assertEquals("T-number 10.00 is below the f-number 11.31, markings taken exactly; a lens passes no "
                + "more light than comes in, so its T-number is the f-number or more",
                assertThrows(BadInput.class,
                () -> Lens.transmittanceOf(FNumber.exact(Math.pow(2, 3.5)), 10)).getMessage());
        // (11/33)² = 1/9
        assertTrue(assertThrows(BadInput.class,
                () -> Lens.transmittanceOf(FNumber.exact(11), 33)).getMessage()
                .startsWith("transmittance 0.1111"));
    }

    @Test
    void diffractionDiscIsTheAiryDiscs() {
        // 2.44 λ N at 550 nm, given to 10 nm
        assertEquals(0.01610, lens(150, INFINITY).diffractionMm(FNumber.exact(12)), 5e-6);
    }

    @Test
    void hyperfocalDistanceDrawsInfinityWithinTheSpot() {
        // f²/(N c) + f, independently computed
        assertEquals(18.900, lens(150, INFINITY).hyperfocalM(FNumber.exact(12), 0.1), 1e-9);
        assertEquals(37.650, lens(150, INFINITY).hyperfocalM(FNumber.exact(12), 0.05), 1e-9);
        assertEquals(0.1, lens(150, 18.900).defocusMm(FNumber.exact(12)), 1e-9);
    }

    @Test
    void sharpestWhereDefocusEqualsDiffraction() {
        // N = sqrt(A/(2.44 λ)) = 41.26 with a blur of 0.0783 mm, f = 150 mm focused at 10 m; independently
        // computed
        Lens lens = new Lens(150, List.of(FNumber.exact(11), FNumber.exact(32), FNumber.exact(38),
                FNumber.exact(41.26), FNumber.exact(45), FNumber.exact(64)), 1, 10, 1, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
        assertEquals(FNumber.exact(41.26), lens.sharpestFNumber());
        assertEquals(0.0783, lens.spotMm(FNumber.exact(41.26)), 5e-5); // given to 0.1 µm
    }

    @ParameterizedTest
    @EnumSource(Projection.class)
    void lightFallsOffOutwardsFromTheAxis(Projection projection) {
        Lens lens = new Lens(30, List.of(FNumber.exact(8)), 1, INFINITY, 50, 0, projection, Vignetting.NONE);
        assertEquals(1, lens.relativeIllumination(Angle.ZERO, FNumber.exact(8)));
        for (int deg = 0; deg < 85; deg += 5) {
            assertTrue(lens.relativeIllumination(Angle.ofDegrees(deg + 5.0), FNumber.exact(8))
                    < lens.relativeIllumination(Angle.ofDegrees(deg), FNumber.exact(8)));
        }
        assertEquals(0, lens.relativeIllumination(Angle.ofDegrees(90), FNumber.exact(8)),
                1e-15); // rounding of the cosine
    }

    @Test
    void focusNearerThanTheLongestBellowsIsRefused() {
        BadInput refused = assertThrows(BadInput.class, () -> lens(150, 0.1649));
        assertEquals("focus distance 0.1649 m is out of range; give 0.165 m and more", refused.getMessage());
        assertEquals(Lens.MOST_EXTENSION, lens(150, 0.165).extension(), 1e-9); // rounding of doubles
    }

    private static Lens lens(double focalLengthMm, double focusM) {
        return new Lens(focalLengthMm, List.of(FNumber.exact(8)), 1, focusM, 50, 0, Projection.RECTILINEAR,
                Vignetting.NONE);
    }
}
