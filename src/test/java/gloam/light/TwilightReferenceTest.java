package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TwilightReferenceTest {

    private static final TwilightGlow GLOW = new TwilightGlow();
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
        // Two independent sources meet here: the zenith by Koomen and Patat spread over the sky by single
        // scattering and Yoachim's law, and
        // the supplement's polynomial less its night. A factor 1.45 because sites and dust
        // differ by 0.4 mag at the zenith.
        double zenithCdM2 = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(depressionDeg)).cdM2();
        double fromSkyLx = zenithCdM2 * hemisphere(depressionDeg);
        double tabulatedLx = GroundLight.sunLx(-depressionDeg) - GroundLight.sunLx(-18);
        assertEquals(0, Math.log(fromSkyLx / tabulatedLx), Math.log(1.45));
    }

    /** Illuminance of level ground by a sky whose zenith has unit luminance. */
    private static double hemisphere(double depressionDeg) {
        TwilightGlow.Spread sky = GLOW.spread(depressionDeg, site(0, 0.25));
        double sum = 0;
        for (double altitudeDeg = 0.5; altitudeDeg < 90; altitudeDeg++) {
            for (double azimuthDeg = 1; azimuthDeg < 180; azimuthDeg += 2) {
                sum += 2 * sky.relativeToZenith(altitudeDeg, azimuthDeg)
                        * Math.sin(2 * Math.toRadians(altitudeDeg)) / 2;
            }
        }
        return sum * Math.toRadians(1) * Math.toRadians(2);
    }

    private static Site site(double heightM, double extinctionMag) {
        Site usual = Places.at(44, 9, heightM);
        return new Site(usual.name(), usual.latitude(), usual.longitude(), heightM, usual.zone(), 21.6,
                extinctionMag, usual.skyline());
    }

    /** Sites of 30 m and 2800 m; from 6° down Patat's site of 2635 m speaks for the high one. */
    @ParameterizedTest
    @CsvSource({"0, 2800, 8.0", "0, 30, 15.0", "3, 2800, 1.0", "3, 30, 2.0"})
    void zenithIsKoomensByHeight(double depressionDeg, double heightM, double candlesAFt2) {
        assertEquals(new SkyBrightness(candlesAFt2 * 10.7639).magArcsec2(),
                TwilightGlow.zenithMagArcsec2(depressionDeg, heightM), 0.02);
    }

    static Stream<Row> directions() {
        return ReferenceTable.read("yoachim-2016/twilight-directions.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("directions")
    void lateTwilightSpreadsAsMeasured(Row row) {
        double ratio = row.number("ratio");
        assertEquals(ratio, GLOW.spread(12, site(2650, 0.15)).relativeToZenith(row.number("altitudeDeg"),
                row.number("azimuthDeg")), 0.05 * ratio);
    }

    /**
     * Light scattered once alone, which knows no measurement, makes the zenith as measured between 3° and
     * 6°, where it is set to agree at 3°: an independent computation has 10.68, 11.92 and 13.39 mag/arcsec².
     */
    @ParameterizedTest
    @CsvSource({"3, 9.62", "4, 10.68", "5, 11.92", "6, 13.39"})
    void zenithOfLightScatteredOnceIsTheMeasuredOne(double depressionDeg, double magArcsec2) {
        double once = 9.62 - 2.5 * Math.log10(GLOW.spread(depressionDeg, site(0, 0.25)).once()
                .relative(90, 0));
        assertEquals(magArcsec2, once, 0.02);
        assertEquals(once, TwilightGlow.zenithMagArcsec2(depressionDeg), 0.12);
    }

    /** The Earth's shadow stands opposite the Sun, the glow over it; both end before the night. */
    @Test
    void glowStandsOverTheSunAndTheShadowOpposite() {
        TwilightGlow.Spread sky = GLOW.spread(6, site(600, 0.2));
        assertTrue(sky.relativeToZenith(14, 0) > 10);
        assertTrue(sky.relativeToZenith(14, 0) > 1.5 * sky.relativeToZenith(14, 45));
        assertTrue(sky.relativeToZenith(14, 180) < 1);
        assertEquals(1, sky.relativeToZenith(90, 77), 1e-9);
        for (double deg = -20; deg < 24; deg += 0.05) {
            TwilightGlow.Spread now = GLOW.spread(deg, site(600, 0.2));
            TwilightGlow.Spread next = GLOW.spread(deg + 0.05, site(600, 0.2));
            assertTrue(now.often() >= 0 && now.often() <= 1, now + " at " + deg);
            for (double altitudeDeg : new double[] {0, 5, 14, 30, 60}) {
                assertEquals(1, next.relativeToZenith(altitudeDeg, 0) / now.relativeToZenith(altitudeDeg, 0),
                        0.06, altitudeDeg + "° high at " + deg);
            }
        }
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
