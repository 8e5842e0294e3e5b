package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.frame.SheetMaker;
import gloam.support.Places;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How well scans of many sheets made by the test are read, and whether those of other nights are refused. */
@Tag("search")
class ReadAccuracyTest {

    private static final int SHEETS = Integer.getInteger("gloam.scans", 60);
    private static final Instant OPENED = Instant.parse("2027-02-08T20:00:00Z");
    private static final int OPEN_S = 5400;
    /** Steps of 0.2 in density: common practice, no source. */
    private static final double[] WEDGE = {0.05, 0.25, 0.45, 0.65, 0.85, 1.05, 1.25, 1.45, 1.65, 1.85, 2.05};
    /** The air takes 0.23 mag at the zenith. */
    private static final double EXTINCTION_MAG = 0.23;
    private static final double LATITUDE_DEG = 44.2;
    /** Sine of the declination up to which a star is as fast as on the equator, to 0.1 mag. */
    private static final double NEAR_EQUATOR = 0.4;

    @TempDir
    Path folder;

    private final List<Double> aimDeg = new ArrayList<>();
    private final List<Double> rollDeg = new ArrayList<>();
    private final List<Double> focalPercent = new ArrayList<>();
    private final List<Double> lastsS = new ArrayList<>();
    private final List<Double> toneStops = new ArrayList<>();
    private final List<Double> toneSigmas = new ArrayList<>();
    private final List<Double> toneByWedgeStops = new ArrayList<>();
    private final List<Double> toneByWedgeSigmas = new ArrayList<>();
    private final List<Double> limitMag = new ArrayList<>();
    private final List<Double> limitSigmas = new ArrayList<>();
    private int moved;

    @Test
    void manySheets() throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), JournalOfOneScan.TRIP);
        int notFound = 0;
        int notRefused = 0;
        for (int seed = 0; seed < SHEETS; seed++) {
            Random random = new Random(seed);
            SheetMaker maker = maker(random, seed);
            double azimuthDeg = maker.azimuthDeg + 3 * random.nextDouble() - 1.5;
            double altitudeDeg = maker.altitudeDeg + 3 * random.nextDouble() - 1.5;
            add(azimuthDeg, altitudeDeg, OPENED);
            add(azimuthDeg, altitudeDeg, OPENED.plus(Duration.ofDays(10 + random.nextInt(150)))
                    .plusSeconds(random.nextInt(20_000)));
            Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
            boolean byWedge = seed % 2 == 1;
            notRefused += drawn(read(scan, 2 * seed + 2, byWedge)).isPresent() ? 1 : 0;
            Optional<JsonNode> found = drawn(read(scan, 2 * seed + 1, byWedge));
            found.ifPresent(reading -> compare(maker, reading, byWedge));
            notFound += found.isPresent() ? 0 : 1;
        }
        System.out.printf("%d sheets; not found %d, of another night not refused %d, moved %d%n", SHEETS,
                notFound, notRefused, moved);
        told("aim", aimDeg, "deg");
        told("roll", rollDeg, "deg");
        told("focal length", focalPercent, "%");
        told("length of the opening", lastsS, "s");
        told("tone", toneStops, "stops");
        told("tone", toneSigmas, "times its error");
        told("tone by a wedge", toneByWedgeStops, "stops");
        told("tone by a wedge", toneByWedgeSigmas, "times its error");
        told("limit", limitMag, "mag");
        told("limit", limitSigmas, "times its error");
        assertEquals(0, notRefused);
        assertEquals(0, moved);
        assertTrue(notFound <= SHEETS / 10, notFound + " not found");
        assertTrue(share(aimDeg, 0.95) < 0.1, "aim");
        assertTrue(share(rollDeg, 0.95) < 0.2, "roll");
        assertTrue(share(focalPercent, 0.95) < 0.5, "focal length");
        assertTrue(share(lastsS, 0.95) < 20, "length of the opening");
        assertTrue(share(toneSigmas, 0.95) < 2, "tone");
        assertTrue(share(toneByWedgeStops, 0.5) < 0.15, "tone by a wedge");
        assertTrue(share(toneByWedgeSigmas, 0.95) < 2, "tone by a wedge");
        assertTrue(share(limitSigmas, 0.95) < 2, "limit");
    }

    /** A reading that found trails of the entry; none where they are refused, or nothing is drawn at all. */
    private static Optional<JsonNode> drawn(Run run) {
        assertTrue(run.exit() == 0 || run.exit() == 2, run.err());
        return run.exit() == 2 ? Optional.empty() : Optional.of(JsonMapper.shared().readTree(run.out()))
                .filter(reading -> !reading.get("drawn").isNull());
    }

    private static SheetMaker maker(Random random, int seed) {
        SheetMaker maker = new SheetMaker(Places.at(LATITUDE_DEG, 9.7, 620));
        maker.seed = seed;
        maker.azimuthDeg = 360 * random.nextDouble();
        maker.altitudeDeg = 25 + 35 * random.nextDouble();
        maker.rollDeg = 3 * random.nextDouble() - 1.5;
        maker.focalMm = 120 * (0.99 + 0.02 * random.nextDouble());
        int lateS = random.nextInt(120) - 60;
        maker.openings = List.of(new SheetMaker.Open(OPENED.plusSeconds(lateS),
                OPENED.plusSeconds(OPEN_S - lateS)));
        maker.way = random.nextInt(8);
        maker.turnDeg = 4 * random.nextDouble() - 2;
        maker.perspective = 0.05 * random.nextDouble();
        maker.skyStops = -3.5 + 2.5 * random.nextDouble();
        maker.doublesMag = 4.3 + 1.7 * random.nextDouble();
        maker.blurPx = 0.5 + random.nextDouble();
        maker.grain = 0.02 + 0.02 * random.nextDouble();
        maker.border = Math.pow(10, -0.12);
        maker.wedge = seed % 2 == 1 ? WEDGE : new double[0];
        maker.gamma = 1.9 + 0.6 * random.nextDouble();
        return maker;
    }

    private void compare(SheetMaker maker, JsonNode found, boolean byWedge) {
        aimDeg.add(Direction.ofDegrees(number(found, "/drawn/found/azimuthDeg"),
                number(found, "/drawn/found/altitudeDeg"))
                .to(Direction.ofDegrees(maker.azimuthDeg, maker.altitudeDeg)).degrees());
        rollDeg.add(Math.abs(Math.IEEEremainder(number(found, "/drawn/found/rollDeg") - maker.rollDeg, 360)));
        focalPercent.add(100 * Math.abs(number(found, "/drawn/found/focalLengthMm") / maker.focalMm - 1));
        moved += found.at("/drawn/bump").isNull() ? 0 : 1;
        SheetMaker.Open open = maker.openings.get(0);
        JsonNode opens = found.at("/drawn/openings/0/opensLaterS");
        JsonNode closes = found.at("/drawn/openings/0/closesLaterS");
        if (opens.isNumber() && closes.isNumber()) {
            lastsS.add(Math.abs(closes.doubleValue() - opens.doubleValue() + OPEN_S
                    - Duration.between(open.from(), open.to()).toSeconds()));
        }
        if (found.at("/tone/bound").stringValue().equals("none")) {
            double off = Math.abs(number(found, "/tone/toneStops") - maker.skyStops);
            (byWedge ? toneByWedgeStops : toneStops).add(off);
            (byWedge ? toneByWedgeSigmas : toneSigmas).add(off / number(found, "/tone/errorStops"));
        }
        if (found.at("/drawn/trailLimitMag").isNumber() && Math.abs(declinationSine(maker)) < NEAR_EQUATOR) {
            double off = Math.abs(number(found, "/drawn/trailLimitMag") - maker.limitMag()
                    + EXTINCTION_MAG / Math.sin(Math.toRadians(maker.altitudeDeg)));
            limitMag.add(off);
            limitSigmas.add(off / number(found, "/drawn/limitErrorMag"));
        }
    }

    private static double declinationSine(SheetMaker maker) {
        double latitude = Math.toRadians(LATITUDE_DEG);
        double altitude = Math.toRadians(maker.altitudeDeg);
        return Math.sin(latitude) * Math.sin(altitude)
                + Math.cos(latitude) * Math.cos(altitude) * Math.cos(Math.toRadians(maker.azimuthDeg));
    }

    private static double number(JsonNode json, String path) {
        return json.at(path).doubleValue();
    }

    private static double share(List<Double> values, double share) {
        return values.stream().sorted().skip((int) (share * (values.size() - 1))).findFirst().orElseThrow();
    }

    private static void told(String what, List<Double> values, String unit) {
        System.out.printf("%s: median %.3f, 68 %% %.3f, 95 %% %.3f, most %.3f %s (%d)%n", what,
                share(values, 0.5), share(values, 0.68), share(values, 0.95), share(values, 1), unit,
                values.size());
    }

    private void add(double azimuthDeg, double altitudeDeg, Instant open) {
        Run run = Run.of(List.of("journal", "add", "--journal", folder.resolve("journal.jsonl").toString(),
                "--trip", folder.resolve("trip.yaml").toString(), "--azimuth",
                String.valueOf((azimuthDeg + 360) % 360), "--altitude", String.valueOf(altitudeDeg), "--open",
                open + "/" + OPEN_S + "s"));
        assertEquals(0, run.exit(), run.err());
    }

    private Run read(Path scan, int entry, boolean byWedge) {
        List<String> args = new ArrayList<>(List.of("journal", "read", scan.toString(), "--journal",
                folder.resolve("journal.jsonl").toString(), "--trip", folder.resolve("trip.yaml").toString(),
                "--entry", String.valueOf(entry), "--format", "json"));
        if (byWedge) {
            args.addAll(List.of("--wedge", "10,97,80,2", "--wedge-densities", DoubleStream.of(WEDGE)
                    .mapToObj(String::valueOf).collect(Collectors.joining(","))));
        }
        return Run.of(args);
    }
}
