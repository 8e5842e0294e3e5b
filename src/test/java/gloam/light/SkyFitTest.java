package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Measurements set what is free in a site's sky, each as far as it goes. */
class SkyFitTest {

    private static final Instant AT = Instant.parse("2027-02-06T22:00:00Z");
    private static final StandingSky DARK = new StandingSky(Direction.ofDegrees(270, -40),
            Direction.ofDegrees(200, -40), 384_400, Angle.ofDegrees(90));
    private static final Site STATED = Places.at(44, 9, 500).with(List.of(
            new LightDome(Angle.ofDegrees(90), new LightDome.Town(30_000, 15), 3000)));

    private static SkyReading reading(double azimuthDeg, double altitudeDeg, double mag, double spreadMag) {
        return new SkyReading(AT, Angle.ofDegrees(azimuthDeg), Angle.ofDegrees(altitudeDeg), mag, spreadMag,
                OptionalDouble.empty());
    }

    private static double mag(Site site, double azimuthDeg, double altitudeDeg) {
        return new SkyLight(DARK, site).at(Direction.ofDegrees(azimuthDeg, altitudeDeg), AT).total()
                .magArcsec2();
    }

    @Test
    void siteWithoutMeasurementsStaysAsItIs() {
        assertSame(STATED, SkyFit.of(DARK, STATED));
    }

    /** Of a sky that is truly another, good measurements find zenith and town again, and know them better. */
    @Test
    void truthIsFoundAgain() {
        Site truth = new Site("truth", STATED.latitude(), STATED.longitude(), STATED.heightM(), STATED.zone(),
                21.4, STATED.extinctionMag(), STATED.skyline()).with(List.of(
                new LightDome(Angle.ofDegrees(90), new LightDome.Town(60_000, 15), 3000)));
        List<SkyReading> readings = new ArrayList<>();
        for (double[] aim : new double[][] {{0, 90}, {90, 15}, {90, 20}, {90, 30}, {270, 20}, {0, 40}}) {
            readings.add(reading(aim[0], aim[1], mag(truth, aim[0], aim[1]), 0.02));
        }
        Site fitted = SkyFit.of(DARK, STATED.measured(readings));
        assertEquals(21.4, fitted.darkSkyMagArcsec2(), 0.05);
        assertEquals(60_000, ((LightDome.Town) fitted.lightDomes().get(0).known()).people(), 6_000);
        assertTrue(fitted.zenithSpreadStops() < 0.2, "± " + fitted.zenithSpreadStops());
        assertTrue(fitted.lightDomes().get(0).spreadStops() < 0.35, "± "
                + fitted.lightDomes().get(0).spreadStops());
        fitted.skyReadings().forEach(left -> assertEquals(0, left.leftMag().orElseThrow(), 0.05));
        assertTrue(spread(fitted, 15) < 0.6 * spread(STATED, 15));
    }

    private static double spread(Site site, double altitudeDeg) {
        return new SkyLight(DARK, site).at(Direction.ofDegrees(90, altitudeDeg), AT).spreadStops();
    }

    /** Two measurements of one number, each as good as the other, count like one of 1/√2 of the error. */
    @Test
    void measurementsCountByTheirErrors() {
        double stated = mag(STATED, 0, 90);
        double rough = SkyFit.of(DARK, STATED.measured(List.of(reading(0, 90, stated - 0.4, 1.5))))
                .darkSkyMagArcsec2();
        double good = SkyFit.of(DARK, STATED.measured(List.of(reading(0, 90, stated - 0.4, 0.02))))
                .darkSkyMagArcsec2();
        assertTrue(rough > 21.58 && good < 21.4, rough + " " + good);
        double one = SkyFit.of(DARK, STATED.measured(List.of(reading(0, 90, stated, 0.2))))
                .zenithSpreadStops();
        double four = SkyFit.of(DARK, STATED.measured(IntStream.range(0, 4).mapToObj(i ->
                reading(0, 90, stated, 0.4)).toList())).zenithSpreadStops();
        assertTrue(one < 0.3 && four < 0.3);
    }

    /** The fitted zenith lies within its own ± in two of three, in simulation by the errors assumed. */
    @Test
    void fittedZenithIsKnownAsWellAsItSays() {
        Random random = new Random(7);
        int inside = 0;
        int draws = 300;
        Site dark = Places.at(44, 9, 500);
        for (int draw = 0; draw < draws; draw++) {
            double zenithStops = 0.3 * random.nextGaussian();
            double truly = 21.6 - 2.5 * Math.log10(2) * zenithStops;
            Site truth = new Site("truth", dark.latitude(), dark.longitude(), dark.heightM(), dark.zone(),
                    Math.min(22.5, truly), dark.extinctionMag(), dark.skyline());
            SkyLight.Sample seen = new SkyLight(DARK, truth).at(Direction.ZENITH, AT);
            double cdM2 = seen.of(LightSource.AIRGLOW).cdM2()
                    + seen.of(LightSource.ZODIACAL).cdM2() * Math.pow(2, 0.2 * random.nextGaussian())
                    + seen.of(LightSource.STARS).cdM2() * Math.pow(2, 0.3 * random.nextGaussian());
            double shown = new SkyBrightness(cdM2).magArcsec2() + 0.1 * random.nextGaussian();
            Site fitted = SkyFit.of(DARK, dark.measured(List.of(reading(0, 90, shown, 0.1))));
            double offStops = (fitted.darkSkyMagArcsec2() - truth.darkSkyMagArcsec2()) / 2.5 / Math.log10(2);
            inside += Math.abs(offStops) <= fitted.zenithSpreadStops() ? 1 : 0;
        }
        assertEquals(0.68, (double) inside / draws, 0.08); // three standard deviations of 300 draws
    }
}
