package gloam.cli;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One question put in two ways, which must have one answer. */
final class FuzzPairs {

    private static final String SITE = " --place 41,-2,1000 --zone Europe/Madrid";
    private static final ZoneId ZONE = ZoneId.of("Europe/Madrid");

    private final RandomGenerator random;

    private FuzzPairs(RandomGenerator random) {
        this.random = random;
    }

    /** What the two ways differ in. */
    enum Kind { UNITS, MOMENTS, OPENINGS, ORDER, MOTION, TRIP_OR_OPTIONS, KEYS, JSON_OR_YAML, DAYLIGHT }

    static List<FuzzCase> of(Kind kind, RandomGenerator random) {
        return new FuzzPairs(random).drawn(kind);
    }

    /**
     * How the answers differ; those of proof and trail for one sheet only in that one speaks of a Sun that is
     * up.
     */
    static Optional<String> difference(List<FuzzCase> asked, List<Run> answers) {
        if (asked.get(0).startsWith("proof") && asked.get(1).startsWith("trail")) {
            Run trail = answers.get(1);
            return Optional.of("proof is refused for the Sun, trail says nothing of it").filter(silent ->
                    answers.get(0).err().contains("the Sun is up") && !(trail.out()
                    + trail.err()).contains("Sun"));
        }
        List<String> lines = lines(asked.get(0), answers.get(0));
        List<String> others = lines(asked.get(1), answers.get(1));
        int at = 0;
        while (at < Math.min(lines.size(), others.size()) && lines.get(at).equals(others.get(at))) {
            at++;
        }
        return lines.equals(others) ? Optional.empty() : Optional.of((at < lines.size() ? lines.get(at)
                : "the end")
                + "\n      against " + (at < others.size() ? others.get(at) : "the end"));
    }

    /** Exit code, output and errors; a star of which only the place is said is called by what was said. */
    private static List<String> lines(FuzzCase asked, Run answer) {
        String said = answer.exit() + "\n" + answer.out() + answer.err();
        return asked.after("--star").map(star -> said.replace(star, "star")).orElse(said).lines().toList();
    }

    private List<FuzzCase> drawn(Kind kind) {
        return switch (kind) {
            case UNITS -> units();
            case MOMENTS -> moments();
            case OPENINGS -> openings();
            case ORDER -> order();
            case MOTION -> motion();
            case TRIP_OR_OPTIONS -> tripOrOptions();
            case KEYS -> trips(true);
            case JSON_OR_YAML -> trips(false);
            case DAYLIGHT -> daylight();
        };
    }

    private List<FuzzCase> units() {
        int mm = 10 * (1 + random.nextInt(40));
        int minutes = 1 + random.nextInt(150);
        String common = format() + SITE.replace("41,-2,1000", "@place") + " --azimuth 180 --altitude 46"
                + " --from 2027-02-08T21:00 --lasts ";
        String one = "trail" + common.replace("@place", "41.5,-2.25,1000") + minutes + "m --focal-length "
                + mm
                + " --frame 102x127 --f-number 11 --film instant-mono-640 --focus 20";
        String other = "trail" + common.replace("@place", one("41:30:00N,2:15:00W,1km",
                "41°30′N,2°15′W,1000m", "+41.5-002.25+1000/"))
                + one("PT" + minutes + "M", minutes * 60 + "s", minutes / 60 + "h" + minutes % 60 + "m")
                + " --focal-length "
                + one(mm / 10 + "cm", mm + "mm") + " --frame " + one("10.2x12.7cm", "102x127mm")
                + " --f-number f/11"
                + " --film instant-mono-640 --focus " + one("2000cm", "20m", "20000mm");
        return same(one, other);
    }

    private List<FuzzCase> moments() {
        Instant at = Instant.parse("2027-03-28T00:00:00Z").plusSeconds(60L * random.nextInt(-600, 600));
        String local = at.atZone(ZONE).toLocalDateTime().toString();
        String line = one("sky --at @t", "expose --film instant-mono-640 --at @t --altitude 46",
                "trail --azimuth 180 --altitude 46"
                + " --focal-length 120 --frame 80x80 --from @t --lasts 30m") + SITE + format();
        String other = at.atZone(ZONE).toOffsetDateTime().toString();
        return same(line.replace("@t", local), line.replace("@t", one(at.toString(), other)));
    }

    private List<FuzzCase> openings() {
        Instant opens = Instant.parse("2027-02-08T20:00:00Z").plusSeconds(60L * random.nextInt(300));
        Duration lasts = Duration.ofMinutes(1 + random.nextInt(120));
        String line = "trail --azimuth 180 --altitude 46 --focal-length 120 --frame 80x80 --film "
                + "instant-mono-640 --f-number 11"
                + SITE + format();
        return same(line + " --from " + opens + " --lasts " + lasts,
                line + " --open " + opens + "/" + one(lasts.toString(), opens.plus(lasts).toString()));
    }

    /** The options of a line in another order. */
    private List<FuzzCase> order() {
        FuzzCase drawn = FuzzEdges.of(FuzzEdges.Kind.values()[random.nextInt(3)], random);
        List<String> args = drawn.args();
        List<List<String>> groups = new ArrayList<>();
        for (String arg : args) {
            if (arg.startsWith("--") || groups.isEmpty()) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(arg);
        }
        List<List<String>> options = new ArrayList<>(groups.subList(1, groups.size()));
        options.removeIf(option -> option.get(0).equals("--out") || option.get(0).equals("--star")
                && drawn.startsWith("sky"));
        List<String> first = joined(groups.get(0), options);
        Collections.shuffle(options, new Random(random.nextLong()));
        return List.of(new FuzzCase(first, Map.of(), false), new FuzzCase(joined(groups.get(0), options),
                Map.of(), false));
    }

    /** A parallax of nothing, or of next to nothing, changes no place. */
    private List<FuzzCase> motion() {
        String line = "sky --at " + (2001 + random.nextInt(58)) + "-02-08T22:00" + SITE
                + " --format json --star ";
        String star = random.nextInt(360) + ".5," + random.nextInt(-80, 80) + "," + random.nextInt(-20_000,
                20_000) + ","
                + random.nextInt(-20_000, 20_000);
        return same(line + star, line + star + ",0");
    }

    /** The same site and camera in a trip and by options; the site is called as one is that has no name. */
    private List<FuzzCase> tripOrOptions() {
        String trip = "title: t\nfilm: instant-mono-640\nsheets: 2\nnights: {from: 2027-02-08, to: "
                + "2027-02-10}\nsites: [{name: "
                + "\"41.0000° N 2.0000° W\", place: 41°N 2°W 1000m, zone: Europe/Madrid}]\ncamera: {name: "
                + "camera, "
                + "focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11], transmittance: 0.9, spot-um: "
                + "40, changeover-min: 0}\n";
        String camera = " --focal-length 120 --frame 80x80 --f-number 11 --film instant-mono-640";
        String shot = "trail --azimuth " + random.nextInt(360) + " --altitude " + random.nextInt(90)
                + " --from 2027-02-08T21:00 --lasts " + (1 + random.nextInt(90)) + "m";
        String expose = "expose --from 2027-02-08T" + random.nextInt(19, 24) + ":15 --altitude "
                + random.nextInt(90);
        String night = "sky --night 2027-02-0" + (1 + random.nextInt(9));
        String line = one(shot, expose, night) + format();
        boolean sky = line.startsWith("sky");
        return List.of(new FuzzCase(words(line + " --trip @/trip.yaml"), Map.of("trip.yaml",
                FuzzFiles.bytes(trip)), false),
                new FuzzCase(words(line + SITE + (sky ? "" : camera)), Map.of(), false));
    }

    /** A trip in YAML and in JSON, or with its keys in another order. */
    private List<FuzzCase> trips(boolean shuffled) {
        FuzzCase drawn = FuzzTrips.of(random.nextInt(4) == 0, random);
        String name = drawn.files().keySet().iterator().next();
        ObjectNode trip = FuzzTrips.read(new String(drawn.files().get(name), StandardCharsets.UTF_8));
        List<String> args = new ArrayList<>(drawn.args().subList(0, 5));
        args.set(2, "@/trip.yaml");
        FuzzCase one = new FuzzCase(args, Map.of("trip.yaml", FuzzTrips.written(trip, false)), false);
        ObjectNode other = shuffled ? (ObjectNode) shuffled(trip) : trip;
        return List.of(one, new FuzzCase(args, Map.of("trip.yaml", FuzzTrips.written(other, !shuffled)),
                false));
    }

    private JsonNode shuffled(JsonNode node) {
        if (node instanceof ObjectNode object) {
            List<Map.Entry<String, JsonNode>> fields = new ArrayList<>(object.properties());
            Collections.shuffle(fields, new Random(random.nextLong()));
            ObjectNode other = object.objectNode();
            fields.forEach(field -> other.set(field.getKey(), shuffled(field.getValue())));
            return other;
        }
        if (node.isArray()) {
            ArrayNode other = FuzzTrips.read("{}").arrayNode();
            node.forEach(element -> other.add(shuffled(element)));
            return other;
        }
        return node;
    }

    private List<FuzzCase> daylight() {
        String shot = SITE + " --azimuth 30 --altitude 46 --focal-length 120 --frame 80x80 --film "
                + "negative-slow-25 --f-number 64"
                + " --from 2027-02-08T" + random.nextInt(10, 24) + ":00 --lasts 5m";
        return same("proof --size 16" + shot, "trail" + shot);
    }

    private static List<String> joined(List<String> command, List<List<String>> options) {
        List<String> args = new ArrayList<>(command);
        options.forEach(args::addAll);
        return args;
    }

    private static List<FuzzCase> same(String one, String other) {
        return List.of(new FuzzCase(words(one), Map.of(), false), new FuzzCase(words(other), Map.of(),
                false));
    }

    private static List<String> words(String line) {
        return List.of(line.split(" "));
    }

    private String format() {
        return random.nextBoolean() ? " --format json" : "";
    }

    private String one(String... of) {
        return of[random.nextInt(of.length)];
    }
}
