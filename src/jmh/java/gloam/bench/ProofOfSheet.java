package gloam.bench;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.gear.Vignetting;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.store.FilmFile;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * The picture of a sheet of three hours, 1000 × 1000 pixels, with every star of the catalogue; another aim
 * and another night each time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ProofOfSheet {

    private static final Duration OPEN = Duration.ofHours(3);
    private static final Instant NEW_MOON = Instant.parse("2027-02-06T21:00:00Z");
    private static final Instant FULL_MOON = Instant.parse("2027-02-20T21:00:00Z");
    private static final Duration MONTH = Duration.ofMinutes(42_524);
    private static final int MONTHS = 12;
    private static final int LONG_SIDE_PX = 1000;

    private final Ephemeris ephemeris = OrekitEphemeris.builtIn();
    private final Site site = new Site("bench", Angle.ofDegrees(41), Angle.ofDegrees(0), 1000, ZoneOffset.UTC,
            21.6, 0.2, Skyline.FLAT);
    private int turn;

    /** A moonless night on a film of one layer. */
    @Benchmark
    public Picture grey() {
        return picture("instant-mono-640", dark(), anywhere());
    }

    /** A moonless night on a film of three. */
    @Benchmark
    public Picture colour() {
        return picture("instant-colour-125", dark(), anywhere());
    }

    /** The full Moon runs through the frame. */
    @Benchmark
    public Picture moonInFrame() {
        Interval open = Interval.lasting(FULL_MOON.plus(MONTH.multipliedBy(turn % MONTHS)), OPEN);
        return picture("instant-mono-640", open,
                ephemeris.position(Body.MOON, site, open.middle()).apparentDirection());
    }

    private Interval dark() {
        return Interval.lasting(NEW_MOON.plus(MONTH.multipliedBy(turn % MONTHS)).plusSeconds(turn), OPEN);
    }

    private Direction anywhere() {
        return Direction.ofDegrees(turn * 73.17 % 360, 20 + turn * 17.31 % 50);
    }

    private Picture picture(String film, Interval open, Direction aim) {
        turn++;
        Lens lens = new Lens(120, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR,
                Vignetting.NONE);
        Camera camera = new Camera("bench", lens, new Frame(80, 80), Duration.ZERO);
        Sheet sheet = new Sheet(site, FilmFile.film(film), List.of(new Setting(Framing.level(aim, camera),
                lens.fNumbers().get(0), List.of(open))));
        return Proof.of(ephemeris, sheet, OptionalDouble.empty(), StarCatalogue.builtIn().stars(),
                Raster.of(camera.frame(), LONG_SIDE_PX))
                .picture(FilmStock.Kind.POSITIVE);
    }
}
