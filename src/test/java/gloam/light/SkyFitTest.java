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
        return new SkyReading(AT, Angle.ofDegrees(azimuthDeg), Angle.ofDegrees(altitudeDeg), mag, spreadMag);
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

    private static final Site PLAIN = Places.at(44, 9, 500);
    private static final StandingSky DUSK = new StandingSky(Direction.ofDegrees(270, -8),
            Direction.ofDegrees(200, -40), 384_400, Angle.ofDegrees(90));

    private static SkyLight.Sample dusk(Site site, Instant at) {
        return new SkyLight(DUSK, site).at(Direction.ofDegrees(300, 25), at);
    }

    /** A zenith in dusk a magnitude brighter than usual: so is that dusk, known to 0.3 stop, and no other. */
    @Test
    void aTwilightThatWasMeasuredIsKnownThatEvening() {
        double usual = new SkyLight(DUSK, PLAIN).at(Direction.ZENITH, AT).total().magArcsec2();
        Site fitted = SkyFit.of(DUSK, PLAIN.measured(List.of(reading(0, 90, usual - 1, 0.05))));
        double darkMag = fitted.darkSkyMagArcsec2();
        assertEquals(PLAIN.darkSkyMagArcsec2(), darkMag, 0.02, "the night is not of it");
        // prior of 0.8 stop against 0.3: a seventh of the step is left
        assertEquals(dusk(PLAIN, AT).total().magArcsec2() - 1,
                dusk(fitted, AT).total().magArcsec2(), 0.18);
        assertEquals(0.3, dusk(fitted, AT).spreadStops(), 0.02);
        assertEquals(0.8, dusk(PLAIN, AT).spreadStops(), 0.02);
        Instant nextEvening = AT.plusSeconds(86_400);
        assertEquals(0.8, dusk(fitted, nextEvening).spreadStops(), 0.02);
        assertEquals(dusk(PLAIN, nextEvening).total().magArcsec2(),
                dusk(fitted, nextEvening).total().magArcsec2(), 0.02);
        double lux = new GroundLight(DUSK, PLAIN).lux(AT);
        assertEquals(1, Math.log(new GroundLight(DUSK, fitted).lux(AT) / lux) / Math.log(Math.pow(10, 0.4)),
                0.2, "the ground lies in the same light");
        double before = dusk(fitted, AT).total().cdM2();
        for (int minute = 10; minute <= 480; minute += 10) {
            double now = dusk(fitted, AT.plusSeconds(60L * minute)).total().cdM2();
            assertEquals(0, Math.log(now / before) / Math.log(2), 0.1, "at minute " + minute);
            before = now;
        }
    }

    /** In simulation the dusk of an evening lies inside its ± in two of three or more. */
    @Test
    void aMeasuredTwilightIsKnownAsWellAsItSays() {
        Random random = new Random(11);
        double usual = new SkyLight(DUSK, PLAIN).at(Direction.ZENITH, AT).total().magArcsec2();
        int inside = 0;
        int draws = 300;
        for (int draw = 0; draw < draws; draw++) {
            double truly = 0.8 * random.nextGaussian();
            double errorMag = 0.4;
            double shown = usual - 2.5 * Math.log10(2) * truly + errorMag * random.nextGaussian();
            SkyLight.Sample fitted = dusk(SkyFit.of(DUSK, PLAIN.measured(
                    List.of(reading(0, 90, shown, errorMag)))), AT);
            double offStops = Math.log(dusk(PLAIN, AT).total().cdM2() * Math.pow(2, truly)
                    / fitted.total().cdM2()) / Math.log(2);
            inside += Math.abs(offStops) <= fitted.spreadStops() ? 1 : 0;
        }
        // three standard deviations of 300 draws below; above, since a third of a stop stays open
        assertTrue(inside >= (0.68 - 0.08) * draws && inside < 0.9 * draws, inside + " of " + draws);
    }
}
