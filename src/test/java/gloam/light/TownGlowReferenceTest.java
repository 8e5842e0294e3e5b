package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import gloam.support.StandingSky;
import gloam.units.Angle;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TownGlowReferenceTest {

    private static final Instant AT = Instant.parse("2027-02-06T22:00:00Z");
    private static final LightModel TOWNS = LightSource.TOWNS.model();
    private static final StandingSky DARK = new StandingSky(Direction.ofDegrees(300, -50),
            Direction.ofDegrees(90, -40), 384_400, Angle.ofDegrees(60));

    /** Walker 1977, PASP 89, 405: arithmetic of the law, to three digits. */
    @ParameterizedTest
    @CsvSource({"3162, 10, 0.100", "10000, 25, 0.032", "100000, 25, 0.320", "100000, 50, 0.0566",
        "1000000, 50, 0.566", "1000000, 100, 0.100"})
    void glowFallsWithDistanceAsWalkerFound(double people, double distanceKm, double overNatural) {
        assertEquals(overNatural, TownGlow.walker(people, distanceKm), 0.002 * overNatural);
        Site site = site(0, new LightDome.Town(people, distanceKm));
        double natural = SkyBrightness.ofMagArcsec2(21.9).cdM2();
        assertEquals(overNatural, townsCdM2(site, Direction.ofDegrees(0, 45)) / natural, 0.002 * overNatural);
    }

    /** Garstang 1991, PASP 103, 1109: his phase function of dust, evaluated to four digits. */
    @ParameterizedTest
    @CsvSource({"0, 7.500", "5, 1.871", "10, 0.934", "30, 0.267", "60, 0.0585", "90, 0.0198", "120, 0.0103",
        "150, 0.0172", "180, 0.0338"})
    void dustScattersForwards(double deg, double aSteradian) {
        assertEquals(aSteradian, TownAir.dustPhase(deg), 0.005 * aSteradian);
    }

    /** All that Garstang's town sends out is 0.15 · 0.85 + 0.15 of its light, the latter to 0.1 %. */
    @Test
    void townSendsOutWhatItReflectsAndWhatEscapes() {
        double sum = 0;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            double angle = (i + 0.5) * Math.PI / 2 / steps;
            sum += 2 * Math.PI * Math.sin(angle) * TownAir.emission(angle) * Math.PI / 2 / steps;
        }
        assertEquals(0.15 * 0.85 + 0.15 * 0.9994, sum, 1e-4);
    }

    /**
     * Clarity K of his air: whole extinction 0.232, 0.332, 0.510 mag at K 0.5, 1, 2, of it 0.1225 of
     * molecules.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.232", "1, 0.332", "2, 0.510"})
    void clarityFollowsFromExtinction(double clarity, double extinctionMag) {
        assertEquals(clarity, TownAir.clarity(extinctionMag - 0.1225, 0), 0.01 * clarity);
    }

    static Stream<Row> shapes() {
        return ReferenceTable.read("garstang-1986/town-shape.csv").stream();
    }

    /** By an integral of its own, in 40 000 straight steps. */
    @ParameterizedTest
    @MethodSource("shapes")
    void glowSpreadsOverTheSkyAsInThePaper(Row row) {
        TownAir air = new TownAir(0, row.number("clarity"));
        double distanceKm = row.number("distanceKm");
        double up = Math.sin(Math.toRadians(row.number("altitudeDeg")));
        double towards = Math.sqrt(1 - up * up) * Math.cos(Math.toRadians(row.number("azimuthDeg")));
        double ratio = row.number("ratio");
        assertEquals(ratio, air.luminance(distanceKm, up, towards)
                / air.luminance(distanceKm, Math.sqrt(0.5), Math.sqrt(0.5)), 0.005 * ratio);
    }

    /** A stated zenith holds the towns' light in it: towns change where light comes from, not how much. */
    @Test
    void zenithIsStillTheStatedOne() {
        Site dark = Places.at(44, 9, 500);
        Site town = dark.with(List.of(dome(200, new LightDome.Town(20_000, 15))));
        assertEquals(zenithCdM2(dark), zenithCdM2(town), 1e-9);
        assertTrue(townsCdM2(town, Direction.ZENITH) > 0.01 * zenithCdM2(town));
    }

    private static double zenithCdM2(Site site) {
        return new SkyLight(DARK, site).at(Direction.ZENITH, AT).total().cdM2();
    }

    /**
     * 14° high over a town of 20 000 people 15 km away, 0.2295 of a natural sky 45° high by Walker 1977: the
     * ratios of the table above for K 0.5, which at sea level is an extinction of 0.2703 mag.
     */
    @ParameterizedTest
    @CsvSource({"14, 0, 13.565", "14, 45, 1.7348", "14, 90, 0.51787", "14, 180, 0.55292", "30, 0, 2.692",
        "90, 0, 0.24097"})
    void lowAimsAreBrighterOverATown(double altitudeDeg, double azimuthDeg, double ratio) {
        Site usual = Places.at(44, 9, 0);
        Site town = new Site(usual.name(), usual.latitude(), usual.longitude(), 0, usual.zone(), 21.6, 0.2703,
                usual.skyline()).with(List.of(dome(0, new LightDome.Town(20_000, 15))));
        double expected = 0.2295 * ratio * SkyBrightness.ofMagArcsec2(21.9).cdM2();
        assertEquals(expected, townsCdM2(town, Direction.ofDegrees(azimuthDeg, altitudeDeg)),
                0.01 * expected);
    }

    /** What was measured over a town is there again, but for the stars that stand there just then. */
    @Test
    void measuredGlowIsFoundAgain() {
        Site site = Places.at(44, 9, 500).with(List.of(
                dome(30, new LightDome.Measured(Angle.ofDegrees(15), 19.5)),
                dome(100, new LightDome.Measured(Angle.ofDegrees(20), 20.0)),
                dome(31, new LightDome.Measured(Angle.ofDegrees(30), 20.4))));
        assertEquals(19.5, site30(site, 30, 15), 0.2);
        assertEquals(20.0, site30(site, 100, 20), 0.2);
        // a measurement darker than the sky itself is no town, and takes nothing away
        Site dark = Places.at(44, 9, 500).with(List.of(dome(0,
                new LightDome.Measured(Angle.ofDegrees(15), 22))));
        assertEquals(0, townsCdM2(dark, Direction.ofDegrees(0, 15)));
    }

    private static double site30(Site site, double azimuthDeg, double altitudeDeg) {
        return new SkyLight(DARK, site).at(Direction.ofDegrees(azimuthDeg, altitudeDeg), AT).total()
                .magArcsec2();
    }

    /** North is a direction as any other. */
    @Test
    void glowHasNoSeamAtNorth() {
        Site site = Places.at(44, 9, 500).with(List.of(dome(2, new LightDome.Town(20_000, 15))));
        double before = townsCdM2(site, Direction.ofDegrees(359.999, 10));
        assertEquals(before, townsCdM2(site, Direction.ofDegrees(0.001, 10)), 1e-3 * before);
        assertEquals(townsCdM2(site, Direction.ofDegrees(358, 10)),
                townsCdM2(site, Direction.ofDegrees(6, 10)), 1e-9);
        for (double altitudeDeg = 0; altitudeDeg <= 90; altitudeDeg += 0.5) {
            double here = townsCdM2(site, Direction.ofDegrees(2, altitudeDeg));
            assertEquals(here, townsCdM2(site, Direction.ofDegrees(2.01, altitudeDeg)), 0.01 * here);
        }
    }

    /** Level ground has what comes from the whole sky: the same added up in steps of 2° by 3°. */
    @Test
    void groundHasTheWholeGlow() {
        Site dark = Places.at(44, 9, 500);
        Site town = dark.with(List.of(dome(0, new LightDome.Town(300_000, 15))));
        LightModel.OverSite over = TOWNS.over(town);
        double sumLx = 0;
        for (double altitudeDeg = 1; altitudeDeg < 90; altitudeDeg += 2) {
            for (double azimuthDeg = 1.5; azimuthDeg < 360; azimuthDeg += 3) {
                sumLx += over.path(Direction.ofDegrees(azimuthDeg, altitudeDeg))
                        * Math.sin(Math.toRadians(2 * altitudeDeg)) / 2 * Math.toRadians(2)
                        * Math.toRadians(3);
            }
        }
        assertEquals(sumLx, over.at(Circumstances.of(DARK, town, AT)).groundLx(), 0.03 * sumLx);
    }

    /** Ballesteros 2012, EPL 97, 34008, turned round. */
    @ParameterizedTest
    @CsvSource({"2000", "2700", "3000", "4000", "6500"})
    void lampsHaveTheColourOfTheirTemperature(double kelvin) {
        assertEquals(kelvin, SkyColour.temperatureK(SkyColour.bvOfTemperature(kelvin)), 1e-6 * kelvin);
        LightDome warm = new LightDome(Angle.ZERO, new LightDome.Town(20_000, 15), kelvin);
        assertEquals(SkyColour.bvOfTemperature(kelvin),
                TOWNS.over(Places.at(44, 9, 0).with(List.of(warm, warm)))
                .at(Circumstances.of(DARK, Places.at(44, 9, 0), AT)).colourBv(), 1e-9);
    }

    private static LightDome dome(double azimuthDeg, LightDome.Known known) {
        return new LightDome(Angle.ofDegrees(azimuthDeg), known, 3000);
    }

    private static Site site(double heightM, LightDome.Known known) {
        return Places.at(44, 9, heightM).with(List.of(dome(0, known)));
    }

    private static double townsCdM2(Site site, Direction direction) {
        return new SkyLight(DARK, site).at(direction, AT).of(LightSource.TOWNS).cdM2();
    }
}
