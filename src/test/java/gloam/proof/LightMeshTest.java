package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.FilmPlane;
import gloam.exposure.LightCurve;
import gloam.exposure.ProgressCurve;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.gear.Frame;
import gloam.light.SkyLight;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.trail.Track;
import gloam.trail.TrailEstimator;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightMeshTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Frame FRAME = new Frame(80, 80);
    private static final FilmStock FILM = Sheets.mono(Reciprocity.power(1.3, 1));
    /** A fiftieth of a stop, which nobody sees in any tone. */
    private static final double WITHIN_STOPS = 0.02;

    /** The first quarter and the old Moon, each in the frame: as the shutter opens, and how long. */
    @ParameterizedTest
    @CsvSource({"2027-02-13T22:00:00Z, 60, 11", "2027-02-28T05:00:00Z, 20, 22"})
    void everyPixelNearTheMoonsWayIsWhatTheExposureEngineSays(String open, int minutes, double fNumber) {
        Sheet sheet = moonlit(Sheets.open(open, minutes), fNumber);
        Raster raster = Raster.of(FRAME, 1000);
        double[] progress = mesh(sheet, FILM, raster, Fineness.MOON)[0];
        SkyLight sky = new SkyLight(EPHEMERIS, sheet.site());
        Map<Instant, SkyLight.Moment> moments = new HashMap<>();
        Interval whole = sheet.first().whole();
        Track moon = new TrailEstimator(EPHEMERIS, sheet.site()).track(sheet.first().framing(), Body.MOON,
                whole);
        int looked = 0;
        for (double share = -0.05; share < 1.1; share += 0.21) {
            Framing.Point on = moon.at(whole.start().plusMillis(
                    (long) (1000 * whole.seconds() * Math.max(0, Math.min(1, share))))).orElseThrow();
            for (int column = (int) raster.column(on.xMm()) - 60; column <= raster.column(on.xMm()) + 60;
                    column += 5) {
                int row = (int) raster.row(on.yMm()) + (column * 7 % 13 - 6);
                if (column < 0 || column > 999 || row < 0 || row > 999) {
                    continue;
                }
                double[] expected = around(sheet, raster, sky, moments, column, row);
                double stops = Stops.between(1, progress[row * 1000 + column]);
                assertTrue(stops >= DoubleStream.of(expected).min().orElseThrow() - WITHIN_STOPS
                        && stops <= DoubleStream.of(expected).max().orElseThrow() + WITHIN_STOPS,
                        column + ", " + row + ": " + stops + " beside " + Arrays.toString(expected));
                looked++;
            }
        }
        assertTrue(looked > 80);
    }

    @Tag("search")
    @ParameterizedTest
    @CsvSource({"2027-02-20T22:00:00Z, 60, 11", "2027-02-20T23:00:00Z, 180, 45"})
    void everyPixelNearTheFullMoonsWayIsToo(String open, int minutes, double fNumber) {
        everyPixelNearTheMoonsWayIsWhatTheExposureEngineSays(open, minutes, fNumber);
    }

    /**
     * Tones in stops by the engine in the middle of a pixel and a fourth of one to each side: where the
     * glow's edge runs through a pixel its tone climbs by a third of a stop.
     */
    private static double[] around(Sheet sheet, Raster raster, SkyLight sky, Map<Instant,
            SkyLight.Moment> moments,
                                   int column, int row) {
        double quarterMm = (raster.xMm(1) - raster.xMm(0)) / 4;
        return IntStream.range(0, 5).mapToDouble(side -> {
            Direction seen = sheet.first().framing().toSky(raster.xMm(column)
                    + (side == 1 ? quarterMm : side == 2 ? -quarterMm : 0),
                    raster.yMm(row) + (side == 3 ? quarterMm : side == 4 ? -quarterMm : 0));
            double cosine = seen.to(sheet.first().framing().aim()).cos();
            LightCurve light = at -> Math.pow(cosine, 4) * FilmPlane.illuminanceLx(sheet.first().lens(),
                    sheet.first().fNumber(),
                    moments.computeIfAbsent(at, sky::moment).at(seen).total());
            // the Moon moves by its own radius in a minute: fifteen looks in it
            Interval whole = sheet.first().whole();
            return Stops.between(1, new ProgressCurve(FILM, light, whole, Duration.ofSeconds(4))
                    .progress(whole.start(), whole.endExclusive()));
        }).toArray();
    }

    private static Sheet moonlit(Interval open, double fNumber) {
        TrailEstimator estimator = new TrailEstimator(EPHEMERIS, Places.MID_NORTH);
        Direction moon = estimator.direction(Body.MOON, open.middle());
        assertTrue(moon.altitude().degrees() > 5);
        Direction aim = new Direction(moon.azimuth().plus(Angle.ofDegrees(3)),
                moon.altitude().minus(Angle.ofDegrees(2)));
        return Sheets.sheet(Places.MID_NORTH, aim, Sheets.lens(120, fNumber, 0.15), FRAME, FILM, open);
    }

    private static double[][] mesh(Sheet sheet, FilmStock film, Raster raster, Fineness fineness) {
        return LightMesh.progress(raster, new PointProgress(sheet.first(), Layer.of(film),
                new SkyMoments(new SkyLight(EPHEMERIS, sheet.site())), fineness.panel()), fineness.cells());
    }

    /** A dark, a moonlit and a dusk sky, and a wide frame on a horizon in dusk. */
    @ParameterizedTest
    @CsvSource({"0, 41, 2027-02-06T21:00:00Z, 180, 120", "100, 35, 2027-02-17T19:30:00Z, 60, 120",
        "200, 25, 2027-02-08T17:40:00Z, 60, 120", "75, 5, 2027-02-08T17:40:00Z, 240, 40"})
    void cellsManyTimesAsFineChangeNothingThatShows(double azimuthDeg, double altitudeDeg, String open,
    int minutes,
                                                   double focalLengthMm) {
        Sheet sheet = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Sheets.lens(focalLengthMm, 11, 0.05), FRAME, Sheets.colour(), Sheets.open(open, minutes));
        Raster raster = Raster.of(FRAME, 60);
        double[][] usual = mesh(sheet, sheet.film(), raster, Fineness.SMOOTH);
        double[][] finer = mesh(sheet, sheet.film(), raster,
                new Fineness(60, Duration.ofMinutes(5)));
        for (int layer = 0; layer < 3; layer++) {
            for (int pixel = 0; pixel < usual[layer].length; pixel++) {
                assertEquals(0, Stops.between(finer[layer][pixel], usual[layer][pixel]), WITHIN_STOPS);
            }
        }
    }

    @Test
    void everyPixelOfAnOddFrameIsPaintedOnce() {
        Frame odd = new Frame(90, 35);
        Sheet sheet = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(0, 60), Sheets.lens(300, 11, 0.05),
                odd,
                FILM, Sheets.open("2027-02-06T21:00:00Z", 10));
        for (int longSidePx : List.of(16, 17, 333)) {
            for (double value : mesh(sheet, FILM, Raster.of(odd, longSidePx), Fineness.SMOOTH)[0]) {
                assertTrue(value > 0);
            }
        }
    }
}
