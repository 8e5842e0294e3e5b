package gloam.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Valid trips at the edges of what a trip may be: polar days and nights, pinholes, whole days on one sheet,
 * one minute.
 */
final class FuzzTrips {

    private static final List<String> AIMS = List.of("pole: {}", "pole: {roll-deg: 90}",
            "point: {azimuth-deg: 0, altitude-deg: 90}",
            "point: {azimuth-deg: 360, altitude-deg: 0}", "point: {azimuth-deg: 180, altitude-deg: 46}",
            "point: {azimuth-deg: 255, altitude-deg: 14, roll-deg: -180}",
            "follow: {body: mars, level-within-deg: 45}",
            "follow: {body: moon}", "follow: {star: Arcturus}", "follow: {star: Polaris}",
            "follow: {body: venus}",
            "follow: {star: Vega, altitude-deg: {least: -90, most: 90}, azimuth-deg: {from: 359, to: 1}}");
    private static final List<String> WANTED = List.of("tone-stops: -12", "tone-stops: 0",
            "tone-at-most-stops: -1",
            "tone-at-most-stops: 6", "worth: 0.01");
    private static final List<String> NARROWED = List.of("records-at-least: 1", "records-at-least: 6000",
            "records: moon",
            "trail-mm: {least: 0, most: 2000}", "trail-mm: {least: 25}", "repeat: 3",
            "time-of-night: {from: \"02:10\", to: \"02:55\"}",
            "sun-depth-deg: {least: 3}", "moon: {altitude-deg: {least: -90, most: 90}}",
            "film: instant-colour-125", "arc-deg: {least: 360, most: 360}", "moon: {lit-percent: {most: 0}}",
            "moon: in-frame", "site: site 0", "records: [mars, Polaris]");
    private static final List<String> OPEN = List.of("{shortest: 0.05, longest: 1}",
            "{shortest: 60, longest: 240}",
            "{shortest: 20, longest: 90}", "{shortest: 720, longest: 1440}",
            "{shortest: 1440, longest: 1440}", "{shortest: 1, longest: 1}");
    private static final List<String> FORMATS = List.of("text", "json", "svg", "html", "ics");

    private final RandomGenerator random;

    private FuzzTrips(RandomGenerator random) {
        this.random = random;
    }

    /** A trip that is checked, ranked or planned. */
    static FuzzCase of(boolean planned, RandomGenerator random) {
        return new FuzzTrips(random).drawn(planned);
    }

    private FuzzCase drawn(boolean planned) {
        ObjectNode trip = trip(random.nextInt(4) > 0 ? 1 : 3, planned);
        boolean json = random.nextBoolean();
        String name = json ? "trip.json" : "trip.yaml";
        List<String> args = new ArrayList<>(List.of(planned ? "plan" : one("check", "nights"), "--trip", "@/"
                + name));
        String format = planned ? one(FORMATS) : one("text", "json");
        args.addAll(List.of("--format", format));
        if (random.nextInt(3) == 0) {
            args.addAll(List.of("--out", "@/new." + (format.equals("text") ? "txt" : format)));
        }
        if (json && random.nextInt(4) == 0) {
            args.addAll(List.of("--out", "@/trip.json"));
        }
        if (planned && random.nextInt(6) == 0) {
            args.addAll(List.of("--from-now", trip.at("/nights/from").stringValue() + "T22:00", "--spent",
                    "1"));
            if (random.nextInt(3) == 0) {
                args.addAll(List.of("--done", "nobody's"));
            }
        }
        return new FuzzCase(args, Map.of(name, written(trip, json)), false);
    }

    /** A trip of up to so many nights. */
    private ObjectNode trip(int nights, boolean wishes) {
        boolean polarNight = random.nextInt(4) == 0;
        LocalDate from = LocalDate.parse(polarNight ? one("2027-12-19", "2027-01-05")
                : new FuzzEdges(random).date());
        LocalDate last = LocalDate.of(2059, 12, 31);
        LocalDate to = from.plusDays(random.nextInt(nights));
        StringBuilder text = new StringBuilder("title: " + one("Edges", "\"\u05d0\u05d1\u05d2 trip\"",
                "Ñandú", "\u4e2d\u6587")
                + "\nfilm: " + one("instant-mono-640", "negative-classic-100", "negative-slow-25")
                + one("", "\nsheets-per-night: 1", "\nawake: {from: \"12:00\", until: \"11:59\"}",
                "\nawake: {from: \"00:00\", until: \"00:00\"}")
                + "\nsheets: "
                + (1 + random.nextInt(4)) + "\nnights: {from: " + from + ", to: " + (to.isAfter(last) ? last
                : to) + "}\nsites:\n");
        for (int i = 0; i <= random.nextInt(2); i++) {
            text.append(site(i, polarNight));
        }
        text.append(camera());
        if (wishes || random.nextBoolean()) {
            text.append("wishes:\n");
            for (int i = 0; i <= random.nextInt(3); i++) {
                text.append("  - {name: wish ").append(i).append(", ").append(wish(polarNight)).append("}\n");
            }
        }
        return read(text.toString());
    }

    private String site(int number, boolean polarNight) {
        return "  - {name: site " + number + ", latitude-deg: " + (polarNight ? one("78.2", "85", "90")
                : one("41", "69.6", "78.2", "-85", "90", "-90", "0", "-33.45", "51.7"))
                + ", longitude-deg: " + one("0", "24", "15.6", "-171.8", "180") + ", height-m: " + one("0",
                "1080", "9000")
                + ", zone: " + one(FuzzEdges.ZONES) + one("", ", dark-sky-mag-arcsec2: 14",
                ", sea-horizon: true") + one("", "", ", extinction-mag: " + one("0", "0.3", "2"),
                ", light-domes: [{azimuth-deg: 0, people: 5.0e+7, distance-km: 1}, {azimuth-deg: 360, "
                + "altitude-deg: 5, mag-arcsec2: " + one("12", "22.5") + "}]",
                ", sky: [{at: 2027-02-08T" + one("17:30", "19:00", "23:00") + ", altitude-deg: "
                + one("5", "90") + ", mag-arcsec2: " + one("12", "21", "23") + ", error-mag: "
                + one("0.01", "2") + "}, {at: 2027-02-09T05:00, mag-arcsec2: 20}]") + "}\n";
    }

    private String camera() {
        if (random.nextInt(4) == 0) {
            return "camera: {name: fisheye, focal-length-mm: " + one("5", "15", "40") + ", frame-mm: "
                    + one("203x254", "36x24")
                    + ", f-numbers: [5.6, 8], projection: " + one("equidistant", "equisolid") + "}\n";
        }
        return "camera: {name: box, focal-length-mm: " + one("5", "15", "40", "120", "114", "2000")
                + ", frame-mm: "
                + one("80x80", "4x5in", "203x254", "36x24", "8x10in") + ", f-numbers: " + one("[8, 11, 16]",
                "[200, 250]", "[0.7]", "[64]")
                + ", changeover-min: " + one("0", "6", "240") + ", projection: " + one("rectilinear",
                "rectilinear", "equidistant", "equisolid")
                + one("", ", focus-m: 20", ", corner-stops: 4", ", filter-stops: 20") + "}\n";
    }

    private String wish(boolean polarNight) {
        return one(AIMS) + ", sky: " + (polarNight ? one("dark", "any") : one("dark", "moonlit", "dusk",
                "dawn", "any")) + ", "
                + one(WANTED) + ", exposure-min: " + (polarNight ? "{shortest: 1440, longest: 1440}"
                : one(OPEN))
                + one("", ", " + one(NARROWED));
    }

    static ObjectNode read(String yaml) {
        return (ObjectNode) new YAMLMapper().readTree(yaml);
    }

    static byte[] written(ObjectNode trip, boolean json) {
        return (json ? new ObjectMapper() : new YAMLMapper()).writeValueAsBytes(trip);
    }

    private String one(String... of) {
        return of[random.nextInt(of.length)];
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }
}
