package gloam.cli;

import gloam.ephemeris.orekit.OrekitEphemeris;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Cases whose files are damaged: a sound file of each kind, mangled, and a command that reads it. */
final class FuzzFiles {

    private static final String TRIP = """
            title: Everything
            sites:
              - {name: Shore, latitude-deg: 41, longitude-deg: -2, height-m: 300, zone: Europe/Madrid, sea-horizon: true,
                 dark-sky-mag-arcsec2: 21.4, extinction-mag: 0.3, skyline: skyline.csv}
            nights: {from: 2027-02-08, to: 2027-02-08, stay: 1}
            camera: {name: Box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [11, 16],
                     focus-m: 20, t-stop: {f-number: 11, t-number: 12.3}, corner-stops: 1.5, spot-um: 40, changeover-min: 6,
                     projection: rectilinear, filter-stops: 0}
            film: film.yaml
            sheets: 2
            preview: {f-number: 2, iso: 640, exposure-s: 30}
            forecast: forecast.csv
            wishes:
              - {name: Wheel, pole: {roll-deg: 10}, arc-deg: {least: 5, most: 90}, sky: dark, tone-stops: -2,
                 records-at-least: 1, exposure-min: {shortest: 20, longest: 60}, worth: 2, repeat: 2}
              - {name: Mars, follow: {body: mars, level-within-deg: 40}, tone-at-most-stops: -1, records: mars,
                 trail-mm: {least: 1, most: 50}, f-numbers: [11], time-of-night: {from: 20:00, to: 05:00},
                 moon: {altitude-deg: {least: -90, most: 10}}, film: instant-colour-125}
            """;
    private static final String FILM = """
            name: film of one's own
            iso: 200
            kind: negative
            layers: three
            reciprocity:
              red: {model: schwarzschild, schwarzschild-p: 0.8, from-s: 2}
              green: {model: table, points: [{metered-s: 1, corrected-s: 1}, {metered-s: 10, corrected-s: 30}]}
              blue: {model: catenary, bend: 0.3, best-s: 0.1}
            tone: {density-min: 0.1, density-max: 2, density-mid: 0.7, gamma: 1.7}
            """;
    private static final String SKYLINE =
            "azimuth_deg,altitude_deg\n# the ridge\n0,1\n90,12.5\n180,3\n270,0\n";
    private static final String FORECAST = "time,cloud_fraction,temperature_c,humidity_percent,wind_kmh\n"
            + "2027-02-08T18:00+01:00,0.1,8,70,10\n2027-02-09T00:00+01:00,0.5,,,\n2027-02-09T08:00+01:00,1,0,95,0\n";
    private static final String TAF = """
            TAF LEXX 081100Z 0812/0912 24010KT 9999 FEW030 BECMG 0818/0820 SCT040
              PROB30 TEMPO 0820/0902 BKN020 FM090300 VRB03KT CAVOK TEMPO 0904/0908 OVC003=
            """;
    private static final String TABLE = "metered_s,corrected_s\n1,1.2\n10,30\n100,900\n";

    /** A site, a sky figure and a film said directly, cheap to answer. */
    private static final List<String> EXPOSE = List.of("expose", "--sky-mag-arcsec2", "21", "--f-number",
            "11,16");
    private static final List<String> JOURNAL = List.of("list", "stats", "export", "fit", "next");
    private static final int FIT_IN = 200;

    private static final Map<String, byte[]> SOUND_TRIP = Map.of("trip.yaml", bytes(TRIP), "film.yaml",
            bytes(FILM),
            "skyline.csv", bytes(SKYLINE), "forecast.csv", bytes(FORECAST), "plan.json", plannedNights(),
            "journal.jsonl", file("demo-data/journal.jsonl"));

    private final Map<String, byte[]> sound = new HashMap<>();
    private final RandomGenerator random;
    private final UnaryOperator<byte[]> damage;

    private FuzzFiles(RandomGenerator random, UnaryOperator<byte[]> damage) {
        this.random = random;
        this.damage = damage;
    }

    /** The kinds of files that are read. */
    enum Kind { TRIP, DEMO, FILM, SKYLINE, FORECAST, TAF, PLAN, JOURNAL, JOURNAL_ADD, TABLE, FINALS, PLANETS }

    /** A case with a damaged file of that kind. */
    static FuzzCase of(Kind kind, RandomGenerator random) {
        return new FuzzFiles(random, sound -> Mutation.of(sound, random)).damaged(kind);
    }

    /** The same with the file as it was before it is damaged. */
    static FuzzCase sound(Kind kind) {
        return new FuzzFiles(new SplittableRandom(1), UnaryOperator.identity()).damaged(kind);
    }

    private FuzzCase damaged(Kind kind) {
        return switch (kind) {
            case TRIP -> trip("trip.yaml", TRIP);
            case DEMO -> trip("demo.yaml", text(demo()));
            case FILM -> one("film.yaml", film(), with(EXPOSE, "--film", "@/film.yaml"));
            case SKYLINE -> trip("skyline.csv", SKYLINE);
            case FORECAST -> trip("forecast.csv", FORECAST);
            case TAF -> taf();
            case PLAN -> plan();
            case JOURNAL -> journal();
            case JOURNAL_ADD -> one("journal.jsonl", file("demo-data/journal.jsonl"),
                    added("--film", "instant-mono-640",
                    "--f-number", "11", "--open", "2027-02-08T21:00Z/2027-02-08T22:00Z"));
            case TABLE -> one("table.csv", bytes(TABLE),
                    with(EXPOSE, "--iso", "100", "--reciprocity", "table:@/table.csv"));
            case FINALS -> one("finals.all", Mutation.finals(), at("--earth-orientation", "@/finals.all"));
            case PLANETS -> one("planets.405", planets(), at("--ephemeris", "@/planets.405"));
        };
    }

    private Path demo() {
        return Path.of("demo-data", List.of("trip.yaml", "trip-arctic.yaml", "trip-south.yaml")
                .get(random.nextInt(3)));
    }

    private byte[] film() {
        return random.nextBoolean() ? bytes(FILM)
                : file("src/main/resources/gloam/films/"
                + List.of("instant-colour-125", "negative-classic-100")
                        .get(random.nextInt(2)) + ".json");
    }

    /** A sound trip of one night with one of its files damaged. */
    private FuzzCase trip(String damaged, String content) {
        sound.put("trip.yaml", bytes(TRIP));
        sound.put("film.yaml", bytes(FILM));
        sound.put("skyline.csv", bytes(SKYLINE));
        sound.put("skyline-loma.csv", bytes(SKYLINE));
        sound.put("camera-plate.yaml", file("demo-data/camera-plate.yaml"));
        sound.put("forecast.csv", bytes(FORECAST));
        sound.put("forecast.taf", bytes(TAF));
        String trip = damaged.endsWith(".yaml") ? damaged : "trip.yaml";
        return one(damaged, bytes(content), List.of("check", "--trip", "@/" + trip));
    }

    /** A sound trip of one night with the files it names, a plan and a journal. */
    static Map<String, byte[]> soundTrip() {
        return SOUND_TRIP;
    }

    private FuzzCase taf() {
        FuzzCase damaged = trip("forecast.taf", TAF);
        Map<String, byte[]> files = new HashMap<>(damaged.files());
        files.put("trip.yaml", bytes(TRIP.replace("forecast.csv", "forecast.taf")));
        return new FuzzCase(damaged.args(), files);
    }

    private FuzzCase plan() {
        sound.put("trip.yaml", file("demo-data/trip.yaml"));
        sound.put("skyline-loma.csv", bytes(SKYLINE));
        return one("plan.json", SOUND_TRIP.get("plan.json"),
                added("--plan", "@/plan.json", "--sheet", "1", "--trip", "@/trip.yaml", "--site",
                "Loma Callada"));
    }

    private FuzzCase journal() {
        String command = random.nextInt(FIT_IN) == 0 ? JOURNAL.get(3 + random.nextInt(2))
                : JOURNAL.get(random.nextInt(3));
        List<String> args = new ArrayList<>(List.of("journal", command, "--journal", "@/journal.jsonl"));
        if (command.equals("fit") || command.equals("next")) {
            args.addAll(List.of("--film", "instant-mono-640"));
        }
        if (command.equals("next")) {
            args.addAll(List.of("--f-number", "11", "--sky-mag-arcsec2", "21.5"));
        }
        return one("journal.jsonl", file("demo-data/journal.jsonl"), args);
    }

    private FuzzCase one(String name, byte[] content, List<String> args) {
        sound.put(name, damage.apply(content));
        return new FuzzCase(args, sound);
    }

    private static List<String> added(String... more) {
        return with(List.of("journal", "add", "--journal", "@/journal.jsonl", "--sky-mag-arcsec2", "21.4"),
                more);
    }

    private static List<String> at(String... more) {
        return with(List.of("sky", "--lat", "41", "--lon", "-2", "--height", "0", "--zone", "UTC", "--at",
                "2027-02-10T22:00Z"), more);
    }

    private static List<String> with(List<String> args, String... more) {
        List<String> all = new ArrayList<>(args);
        all.addAll(Arrays.asList(more));
        return all;
    }

    private static byte[] planets() {
        try (InputStream in = OrekitEphemeris.class.getResourceAsStream("/gloam/ephemeris/unxp2027.405")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(Path file) {
        return new String(file(file.toString()), StandardCharsets.UTF_8);
    }

    /** The first two nights of a plan that have windows. */
    private static byte[] plannedNights() {
        ObjectNode plan = (ObjectNode) new ObjectMapper()
                .readTree(file("src/test/resources/golden/plan-json/out"));
        ArrayNode nights = (ArrayNode) plan.get("nights");
        nights.removeIf(night -> night.get("windows").isEmpty());
        while (nights.size() > 2) {
            nights.remove(2);
        }
        return bytes(plan.toPrettyString());
    }

    private static byte[] file(String name) {
        try {
            return Files.readAllBytes(Path.of(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
