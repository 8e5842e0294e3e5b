package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MoonlessSkyReferenceTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Instant FIRST_MIDNIGHT = Instant.parse("2027-01-01T00:00:00Z");

    static Stream<Row> zenithDistances() {
        return ReferenceTable.read("patat-2003/dark-sky-by-zenith-distance.csv").stream();
    }

    /**
     * Of the paper's law, which gives 60 % of the light to airglow in a layer and the rest to a sky beyond
     * it.
     */
    @ParameterizedTest
    @MethodSource("zenithDistances")
    void airglowBrightensAwayFromTheZenithAsMeasured(Row row) {
        double zenithDeg = row.number("zenithDeg");
        double airmass = 1 / Math.sqrt(1 - 0.96 * Math.pow(Math.sin(Math.toRadians(zenithDeg)), 2));
                // the paper's
        double beyond = Math.pow(10, -0.4 * 0.11 * (airmass - 1));
        double whole = 0.4 * beyond + 0.6 * Airglow.relativeToZenith(zenithDeg, 0.11);
        assertEquals(row.number("brightenedMag"), 2.5 * Math.log10(whole), 0.01);
    }

    /** What a site says of its zenith counts once: the median of a year's midnights has it. */
    @Test
    void zenithIsTheSitesOwnOnADarkNight() {
        for (Site site : List.of(Places.MID_NORTH, Places.MID_SOUTH, Places.EQUATOR)) {
            SkyLight sky = new SkyLight(EPHEMERIS, site);
            double[] zenithsCdM2 = midnights(site)
                    .mapToDouble(at -> moonlessCdM2(sky.moment(at), Direction.ZENITH)).toArray();
            // quartiles of the parts do not add up to that of the whole, nor is the Sun always opposite the
            // zenith
            assertEquals(site.darkSkyMagArcsec2(),
                    new SkyBrightness(StatUtils.percentile(zenithsCdM2, 25)).magArcsec2(), 0.1, site.name());
        }
    }

    /**
     * A site darker than zodiacal light and stars alone still has some airglow, and a city's sky is its own.
     */
    @Test
    void theRestIsNeverNothing() {
        assertTrue(airglowCdM2(22.5) > 0);
        assertTrue(airglowCdM2(22.5) < airglowCdM2(21.5));
        double city = SkyBrightness.ofMagArcsec2(17).cdM2();
        assertEquals(city, airglowCdM2(17), 0.02 * city);
    }

    private static double airglowCdM2(double darkSkyMagArcsec2) {
        Site usual = Places.MID_NORTH;
        Site site = new Site(usual.name(), usual.latitude(), usual.longitude(), usual.heightM(), usual.zone(),
                darkSkyMagArcsec2, usual.extinctionMag(), usual.skyline());
        return new SkyLight(EPHEMERIS, site).at(Direction.ZENITH, FIRST_MIDNIGHT).of(LightSource.AIRGLOW)
                .cdM2();
    }

    private static double moonlessCdM2(SkyLight.Moment sky, Direction direction) {
        return sky.at(direction).without(LightSource.MOON, LightSource.TWILIGHT).cdM2();
    }

    /** One in ten of a year's. */
    private static Stream<Instant> midnights(Site site) {
        double hoursEast = site.longitude().degrees() / 15;
        return IntStream.range(0, 37).mapToObj(i ->
                FIRST_MIDNIGHT.plusSeconds((long) (864_000 * i - 3600 * hoursEast)));
    }
}
