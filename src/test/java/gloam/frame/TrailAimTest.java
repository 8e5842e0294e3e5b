package gloam.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.FrameAxes;
import gloam.trail.Framing;
import gloam.units.Angle;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Sheets drawn by the test: trails by formulas of its own, grain, blur, dust, a sky that is not even. */
class TrailAimTest {

    private static final Site SITE = Places.at(44.2, 9.7, 620);
    private static final Instant OPENED = Instant.parse("2027-02-08T20:00:00Z");
    private static final int SIDE = 600;
    private static final double FOCAL_MM = 120;
    private static final double FRAME_MM = 80;

    private static Camera camera() {
        return new Camera("box",
                new Lens(FOCAL_MM, List.of(FNumber.marked(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE), new Frame(FRAME_MM, FRAME_MM), Duration.ZERO);
    }

    /** The brighter stars' directions every 4 min of an hour and a half. */
    private static List<List<Vector3D>> trails(Instant opened, double faintestMag, double from, double to,
            double every) {
        AnalyticEphemeris ephemeris = new AnalyticEphemeris();
        List<List<Vector3D>> trails = new ArrayList<>();
        for (Star star : StarCatalogue.builtIn().stars()) {
            if (star.magnitude() < faintestMag) {
                List<Vector3D> trail = new ArrayList<>();
                for (double minute = from; minute <= to; minute += every) {
                    Direction seen = ephemeris.position(star, SITE,
                            opened.plusMillis(Math.round(60_000 * minute)))
                            .apparentDirection();
                    if (seen.altitude().degrees() > 0.5) {
                        trail.add(seen.vector());
                    }
                }
                trails.add(trail);
            }
        }
        return trails;
    }

    private static List<PredictedTrail> predicted(Instant opened) {
        List<List<Vector3D>> open = trails(opened, 3.8, 0, 90, 4);
        List<PredictedTrail> predicted = new ArrayList<>();
        List<List<Vector3D>> begin = trails(opened, 3.8, -7.75, 8, 0.5);
        List<List<Vector3D>> end = trails(opened, 3.8, 82.25, 98, 0.5);
        for (int i = 0; i < open.size(); i++) {
            List<Vector3D> directions = open.get(i);
            predicted.add(new PredictedTrail(0, IntStream.range(0, directions.size()).mapToObj(j ->
                    new PredictedTrail.Moment(opened.plusSeconds(240L * j), directions.get(j))).toList(),
                    begin.get(i), end.get(i), 0.5 * 0.2507));
        }
        return predicted;
    }

    private static final Vector3D POLE = new Vector3D(0, Math.cos(Math.toRadians(44.2)),
            Math.sin(Math.toRadians(44.2)));

    /** The sheet of a camera: x to the right, y down, its own sines and cosines. */
    private static LightImage sheet(double azimuthDeg, double altitudeDeg, double rollDeg, double focalMm,
            long seed) {
        double[] light = new double[SIDE * SIDE];
        double a = Math.toRadians(azimuthDeg);
        double h = Math.toRadians(altitudeDeg);
        double r = Math.toRadians(rollDeg);
        for (List<Vector3D> trail : trails(OPENED, 4.2, 0, 90, 3)) {
            for (int i = 0; i + 1 < trail.size(); i++) {
                for (int part = 0; part < 40; part++) {
                    Vector3D v = trail.get(i).scalarMultiply(1 - part / 40.0).add(trail.get(i + 1)
                            .scalarMultiply(part / 40.0)).normalize();
                    double ahead = v.getX() * Math.cos(h) * Math.sin(a) + v.getY() * Math.cos(h) * Math.cos(a)
                            + v.getZ() * Math.sin(h);
                    double right = v.getX() * Math.cos(a) - v.getY() * Math.sin(a);
                    double up = -v.getX() * Math.sin(h) * Math.sin(a) - v.getY() * Math.sin(h) * Math.cos(a)
                            + v.getZ() * Math.cos(h);
                    if (ahead > 0.5) {
                        double xMm = focalMm * (right * Math.cos(r) - up * Math.sin(r)) / ahead;
                        double yMm = focalMm * (up * Math.cos(r) + right * Math.sin(r)) / ahead;
                        spot(light, SIDE / 2.0 + xMm / FRAME_MM * SIDE, SIDE / 2.0 - yMm / FRAME_MM * SIDE);
                    }
                }
            }
        }
        Random random = new Random(seed);
        LightImage image = new LightImage(SIDE, SIDE);
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double level = 0.25 + 0.2 * y / SIDE + Math.min(0.35, light[y * SIDE + x])
                        + 0.03 * random.nextGaussian();
                image.add(x, y, (float) FrameMaker.linear(Math.max(0, Math.min(1, level))));
            }
        }
        for (int i = 0; i < 60; i++) {
            int x = random.nextInt(SIDE - 4);
            int y = random.nextInt(SIDE - 4);
            for (int j = 0; j < 9; j++) {
                image.add(x + j % 3, y + j / 3, 0.4f);
            }
        }
        return image;
    }

    private static void spot(double[] light, double x, double y) {
        for (int row = (int) y - 3; row <= y + 3; row++) {
            for (int column = (int) x - 3; column <= x + 3; column++) {
                if (row >= 0 && row < SIDE && column >= 0 && column < SIDE) {
                    double square = Math.pow(column + 0.5 - x, 2) + Math.pow(row + 0.5 - y, 2);
                    light[row * SIDE + column] += 0.04 * Math.exp(-square / 2);
                }
            }
        }
    }

    private static ImageMap noted(double azimuthDeg, double altitudeDeg, double rollDeg, LightImage image) {
        return new ImageMap(FrameAxes.of(new Framing(Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Angle.ofDegrees(rollDeg), camera())), 0, image.width(), image.height());
    }

    @Test
    void theAimIsFoundUnderTheTrails() {
        for (int seed = 0; seed < 4; seed++) {
            Random random = new Random(70 + seed);
            random.nextDouble();
            double azimuth = 360 * random.nextDouble();
            double altitude = 30 + 30 * random.nextDouble();
            double azimuthOff = 4 * random.nextDouble() - 2;
            double altitudeOff = 4 * random.nextDouble() - 2;
            double rollOff = 4 * random.nextDouble() - 2;
            LightImage sheet = sheet(azimuth, altitude, 1, FOCAL_MM * (0.99 + 0.02 * random.nextDouble()),
                    seed);
            TrailAim found = TrailAim.of(sheet,
                    noted(azimuth + azimuthOff, altitude + altitudeOff, 1 + rollOff, sheet),
                    predicted(OPENED), POLE).orElseThrow(() -> new AssertionError("aim not found"));
            Framing framing = found.map().axes().framing();
            assertEquals(0, framing.aim().to(Direction.ofDegrees(azimuth, altitude)).degrees(), 0.1,
                    seed + ": " + found);
            assertEquals(1, framing.roll().signed().degrees(), 0.2, seed + ": " + found);
            assertTrue(found.onRidges() > 0.7, seed + ": " + found);
        }
    }

    @Test
    void trailsOfAnotherNightAreNotThose() {
        for (int seed = 0; seed < 4; seed++) {
            double azimuth = 60 * seed;
            LightImage sheet = sheet(azimuth, 40, 0, FOCAL_MM, seed);
            Optional<TrailAim> other = TrailAim.of(sheet, noted(azimuth, 40, 0, sheet),
                    predicted(OPENED.plus(Duration.ofDays(20 + 11 * seed))), POLE);
            assertTrue(other.isEmpty(), seed + ": " + other);
        }
    }
}
