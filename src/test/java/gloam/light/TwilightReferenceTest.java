package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TwilightReferenceTest {

    private static final double PARANAL_NIGHT_MAG = 21.61;

    static Stream<Row> patat() {
        return ReferenceTable.read("patat-2006/twilight-zenith-v.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("patat")
    void zenithAgreesWithMeasurementsOnAHighMountain(Row row) {
        double twilight = TwilightGlow.zenithMagArcsec2(row.number("depressionDeg"));
        SkyBrightness total = SkyBrightness.ofMagArcsec2(twilight)
                .plus(SkyBrightness.ofMagArcsec2(PARANAL_NIGHT_MAG));
        assertEquals(row.number("magArcsec2"), total.magArcsec2(), 0.18);
    }

    static Stream<Row> koomen() {
        return ReferenceTable.read("koomen-1952/twilight-zenith.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("koomen")
    void zenithLiesNearMeasurementsAtAHighAndALowSite(Row row) {
        double cdM2ACandleFt2 = 10.7639;
        double darker = new SkyBrightness(row.number("highSite") * cdM2ACandleFt2).magArcsec2() + 0.3;
        double brighter = new SkyBrightness(row.number("lowSite") * cdM2ACandleFt2).magArcsec2() - 0.3;
        double zenith = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(row.number("depressionDeg")))
                .plus(SkyBrightness.ofMagArcsec2(PARANAL_NIGHT_MAG)).magArcsec2();
        assertTrue(zenith > brighter && zenith < darker, brighter + " < " + zenith + " < " + darker);
    }

    /**
     * The end of astronomical twilight by definition: with the Sun 17° to 18° down its light no longer counts
     * beside the night, a tenth of a magnitude or less; with the Sun 12° down, at the end of nautical
     * twilight, it prevails.
     */
    @Test
    void nightComesAtTheEndOfAstronomicalTwilight() {
        SkyBrightness night = SkyBrightness.ofMagArcsec2(21.8);
        for (double depressionDeg : new double[] {17, 17.5, 18}) {
            SkyBrightness twilight = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(depressionDeg));
            assertEquals(night.magArcsec2(), night.plus(twilight).magArcsec2(), 0.1);
        }
        assertTrue(TwilightGlow.zenithMagArcsec2(12) < night.magArcsec2() - 1);
    }

    @ParameterizedTest
    @CsvSource({"3", "6", "9", "12"})
    void wholeSkyLightsTheGroundAsTheExplanatorySupplementSays(double depressionDeg) {
        // Two independent sources meet here: the zenith by Koomen and Patat spread over the sky after
        // Schaefer, and the supplement's polynomial less its night. A factor 1.45 because sites and dust
        // differ by 0.4 mag at the zenith.
        double zenithCdM2 = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(depressionDeg)).cdM2();
        double fromSkyLx = zenithCdM2 * hemisphere(depressionDeg, 0.25);
        double tabulatedLx = GroundLight.sunLx(-depressionDeg) - GroundLight.sunLx(-18);
        assertEquals(0, Math.log(fromSkyLx / tabulatedLx), Math.log(1.45));
    }

    /** Illuminance of level ground by a sky whose zenith has unit luminance. */
    private static double hemisphere(double depressionDeg, double extinctionMag) {
        Direction sun = Direction.ofDegrees(0, -depressionDeg);
        double sum = 0;
        for (double zenithDeg = 0.5; zenithDeg < 90; zenithDeg++) {
            for (double azimuthDeg = 1; azimuthDeg < 360; azimuthDeg += 2) {
                double fromSunDeg = sun.to(Direction.ofDegrees(azimuthDeg, 90 - zenithDeg)).degrees();
                double zenithRad = Math.toRadians(zenithDeg);
                sum += TwilightGlow.relativeToZenith(zenithDeg, fromSunDeg, depressionDeg, extinctionMag)
                        * Math.sin(zenithRad) * Math.cos(zenithRad);
            }
        }
        return sum * Math.toRadians(1) * Math.toRadians(2);
    }

    @ParameterizedTest
    @CsvSource({"0, 585, 410", "-6, 3.5, 2", "-12, 0.009, 0.007", "-18, 7e-4, 5e-4"})
    void illuminanceAtTheEndsOfTheTwilightsIsThatOfTheGlossary(double altitudeDeg, double mostLx,
            double leastLx) {
        // American Meteorological Society, Glossary of Meteorology: sunset 585 to 410 lx (upper limb on the
        // horizon, centre at -50'), end of civil twilight 3.5 to 2, of nautical 0.008, of astronomical
        // 6e-4; the last two to one digit
        double lux = GroundLight.sunLx(altitudeDeg == 0 ? -5 / 6.0 : altitudeDeg);
        assertTrue(lux <= mostLx && lux >= leastLx, lux + " lx");
    }

    @Test
    void zenithFallsWithoutSteps() {
        for (double deg = -89; deg < 40; deg += 0.1) {
            double step = TwilightGlow.zenithMagArcsec2(deg + 0.1) - TwilightGlow.zenithMagArcsec2(deg);
            // steepest stretch 1.46 mag a degree
            assertTrue(step > 0 && step < 0.16, "step " + step + " at " + deg);
        }
    }
}
