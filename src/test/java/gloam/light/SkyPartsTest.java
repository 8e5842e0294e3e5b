package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The sky put together from its models, for a Sun and a Moon that stand where the test says. */
class SkyPartsTest {

    private static final Instant AT = Instant.parse("2027-02-06T22:00:00Z");
    private static final Site SITE = Places.MID_NORTH; // extinction 0.2 mag, zenith 21.6 mag/arcsec²
    /** Of the full Moon: Krisciunas and Schaefer 1991, p. 1035. */
    private static final double SURGE = 1.35;
    private static final double EARTH_RADIUS_KM = 6378.137; // WGS 84
    private static final double NANOLAMBERT_CD_M2 = 1e-5 / Math.PI; // 1 lambert = 1e4/π cd/m²

    /** Of its published equation, whose numbers are tested by themselves, the Moon's light is the product. */
    @Test
    void moonlightIsThatOfItsEquation() {
        StandingSky sky = sky(-40, 30, 384_400, 60);
        Direction aim = Direction.ofDegrees(180, 50); // the Moon stands at azimuth 90°
        double apartDeg = Direction.ofDegrees(90, 30).to(aim).degrees();
        double expected = NANOLAMBERT_CD_M2
                * MoonGlow.nanolamberts(MoonGlow.meanIntensity(60), apartDeg, 60, 40, SITE.extinctionMag());
        SkyLight.Sample seen = new SkyLight(sky, SITE).at(aim, AT);
        assertEquals(expected, seen.of(LightSource.MOON).cdM2(), 1e-9 * expected);
        assertEquals(seen.of(LightSource.MOON).cdM2(), new SkyLight(sky, SITE).moment(AT)
                .at(new SkyLight(sky, SITE).patch(aim)).of(LightSource.MOON).cdM2());
    }

    /** Twilight is the zenith's times its spread by azimuth from the Sun, the shorter way round. */
    @Test
    void twilightIsTheZenithsTimesItsSpread() {
        SkyLight sky = new SkyLight(sky(-8, -40, 384_400, 60), SITE); // the Sun stands at azimuth 270°
        double zenith = SkyBrightness.ofMagArcsec2(TwilightGlow.zenithMagArcsec2(8, SITE.heightM())).cdM2();
        TwilightGlow.Spread spread = new TwilightGlow().spread(8, SITE);
        for (double azimuthDeg : new double[] {240, 300, 90, 359.9}) {
            double apartDeg = Math.abs(Math.IEEEremainder(azimuthDeg - 270, 360));
            double expected = zenith * spread.relativeToZenith(30, apartDeg);
            assertEquals(expected, sky.at(Direction.ofDegrees(azimuthDeg, 30), AT).of(LightSource.TWILIGHT)
                    .cdM2(), 1e-6 * expected);
        }
        assertEquals(zenith, sky.at(Direction.ZENITH, AT).of(LightSource.TWILIGHT).cdM2(), 1e-9 * zenith);
    }

    /**
     * A moonlit sky is bluer than a moonless one, deep twilight bluer still: Patat 2003, and the colour of
     * scattered light.
     */
    @Test
    void colourIsThatOfTheLightThatPrevails() {
        double dark = new SkyLight(sky(-40, -40, 384_400, 60), SITE).at(Direction.ZENITH, AT).colourBv();
        double moonlit = new SkyLight(sky(-40, 60, 384_400, 0), SITE).at(Direction.ZENITH, AT).colourBv();
        double twilight = new SkyLight(sky(-6, -40, 384_400, 60), SITE).at(Direction.ZENITH, AT).colourBv();
        assertTrue(twilight < moonlit && moonlit < dark, twilight + " " + moonlit + " " + dark);
    }

    /**
     * The supplement's Moon counts by its parallax at the Earth's centre: overhead that is one radius further
     * than from here.
     */
    @Test
    void groundUnderTheMoonReckonsFromTheCentreOfTheEarth() {
        double overheadKm = 384_400 - EARTH_RADIUS_KM;
        double parallaxDeg = Math.toDegrees(Math.asin(EARTH_RADIUS_KM / 384_400));
        double expected = SURGE * GroundLight.moonLx(90, 0, parallaxDeg);
        assertEquals(expected, moonLx(90, overheadKm), 1e-9 * expected);
        double fromHorizonKm = Math.sqrt(384_400.0 * 384_400 - EARTH_RADIUS_KM * EARTH_RADIUS_KM);
        double low = SURGE * GroundLight.moonLx(0, 0, parallaxDeg);
        assertEquals(low, moonLx(0, fromHorizonKm), 1e-9 * low);
    }

    /** Below −0.8° the Moon fades as sunlight does, by the supplement's own polynomials. */
    @Test
    void setMoonFadesAsTheSunDoes() {
        double geocentricKm = Math.sqrt(384_400.0 * 384_400 + EARTH_RADIUS_KM * EARTH_RADIUS_KM
                + 2 * 384_400 * EARTH_RADIUS_KM * Math.sin(Math.toRadians(-4)));
        double atLimit = SURGE * GroundLight.moonLx(-0.8, 0,
                Math.toDegrees(Math.asin(EARTH_RADIUS_KM / geocentricKm)));
        double expected = atLimit * GroundLight.sunLx(-4) / GroundLight.sunLx(-0.8);
        assertEquals(expected, moonLx(-4, 384_400), 1e-6 * atLimit);
        assertTrue(moonLx(-4, 384_400) < moonLx(-1, 384_400) / 4);
    }

    @Test
    void groundIsContinuousWhereTwilightEnds() {
        double before = new GroundLight(sky(-17.99, -40, 384_400, 60), SITE).lux(AT);
        double after = new GroundLight(sky(-18.01, -40, 384_400, 60), SITE).lux(AT);
        assertEquals(after, before, 0.02 * after);
    }

    /** A matt surface of reflectance 1 under π lx has 1 cd/m² (Lambert's law). */
    @Test
    void landscapeIsAMattSurface() {
        GroundLight ground = new GroundLight(sky(-40, 45, 384_400, 0), SITE);
        assertEquals(0.18 * ground.lux(AT) / Math.PI, ground.landscape(0.18, AT).cdM2(), 1e-12);
    }

    /** Green 1992, table for sea level: 0.016 + 0.1451 + 0.120 mag. */
    @Test
    void clearAirIsStatedToAThousandth() {
        assertEquals(0.281, Atmosphere.statedClearExtinctionMag(0));
    }

    @Test
    void noLightIsALuminanceAndLessIsNone() {
        assertEquals(Double.POSITIVE_INFINITY, new SkyBrightness(0).magArcsec2());
        assertThrows(IllegalArgumentException.class, () -> new SkyBrightness(-1e-12));
    }

    private static double moonLx(double altitudeDeg, double km) {
        double with = new GroundLight(sky(-40, altitudeDeg, km, 0), SITE).lux(AT);
        return with - Math.PI * SkyBrightness.ofMagArcsec2(SITE.darkSkyMagArcsec2()).cdM2();
    }

    /** The Sun in the west, the Moon in the east. */
    private static StandingSky sky(double sunDeg, double moonDeg, double moonKm, double phaseDeg) {
        return new StandingSky(Direction.ofDegrees(270, sunDeg), Direction.ofDegrees(90, moonDeg), moonKm,
                Angle.ofDegrees(phaseDeg));
    }
}
