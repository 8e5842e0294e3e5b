package gloam.store;

import gloam.units.Quantity;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The list of all keys of the trip file. It is made by reading trips that contain every key with the code
 * that reads any trip, so it has every key that the code asks for, with its range and default.
 *
 * <p>The meaning of a key is the comment above it in those trips.
 */
public final class TripKeys {

    private static final String TRIPS = "/gloam/store/trip-keys.yaml";
    private static final String NEXT_TRIP = "---\n";

    private TripKeys() {
    }

    /** Every key; the keys of a section follow it. */
    public static List<TripKey> all() {
        Map<String, Asked> keys = new LinkedHashMap<>();
        for (String trip : Input.inside(TRIPS).text().split("(?m)^" + NEXT_TRIP)) {
            Listing listing = new Listing(trip.lines().toList(), keys);
            Source source = Source.of(Input.inside(TRIPS, trip), listing);
            listing.result(() -> TripFile.reading(source));
        }
        return sections(keys.values().stream().map(Asked::key).toList());
    }

    /** The keys in order: each section's together, where its first one stands. */
    private static List<TripKey> sections(List<TripKey> keys) {
        List<TripKey> sorted = new ArrayList<>();
        for (TripKey key : keys) {
            String parent = parent(key.path());
            int at = sorted.size();
            while (at > 0 && !parent.isEmpty() && !within(parent, sorted.get(at - 1).path())) {
                at--;
            }
            sorted.add(at, key);
        }
        return List.copyOf(sorted);
    }

    private static boolean within(String section, String path) {
        return path.equals(section) || path.startsWith(section + ".") || path.startsWith(section + "[");
    }

    private static String parent(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.'))).replaceFirst("\\[]$", "");
    }

    /**
     * One path for the same key wherever it occurs: in every item of a list, in every film and every layer of
     * one, in a wish and in each of its openings, in the camera and in each of several.
     */
    static String general(String path) {
        return path.replaceFirst("\\.openings\\[0]\\.", ".")
                .replaceFirst("\\.openings\\[\\d+]\\.(?=(point|follow|pole|sky)\\b)", ".")
                .replaceAll("\\[\\d+]", "[]").replaceFirst("^(wishes|cameras)\\[]\\.film\\.", "film.")
                .replaceFirst("^cameras\\[]\\.(?!name$|film$)", "camera.")
                .replaceFirst("\\.(red|green|blue)\\.", ".");
    }

    /** Notes the keys of a trip while it is read. */
    private static final class Listing extends Findings {

        private final List<String> lines;
        private final Map<String, Asked> keys;

        Listing(List<String> lines, Map<String, Asked> keys) {
            this.lines = lines;
            this.keys = keys;
        }

        @Override
        void asked(String path, OptionalInt line) {
            Asked key = key(path);
            if (key.meaning.isEmpty() && line.isPresent()) {
                key.meaning = commentAbove(line.getAsInt() - 1);
                key.example = lines.get(line.getAsInt() - 1).replaceFirst("^[ -]*[a-z0-9-]+:", "").strip();
            }
        }

        @Override
        void without(String path, String what) {
            key(path).without = what;
        }

        @Override
        void readAs(String path, String kind) {
            String general = general(path);
            Asked list = keys.get(general.replaceFirst("\\[]$", ""));
            if (keys.containsKey(general)) {
                keys.get(general).kind = kind;
            } else if (list != null && !kind.equals("section")) {
                list.each = ", each " + kind;
            }
        }

        @Override
        void readAs(String path, Range range) {
            String allowed = new Range(range.what(), range.least(), range.most(), "").allowed();
            readAs(path, range.unit().isEmpty() ? allowed : Quantity.unitName(range) + ", " + allowed);
        }

        private Asked key(String path) {
            return keys.computeIfAbsent(general(path), Asked::new);
        }

        private String commentAbove(int line) {
            int first = line;
            while (first > 0 && lines.get(first - 1).strip().startsWith("#")) {
                first--;
            }
            return String.join(" ", lines.subList(first, line).stream()
                    .map(comment -> comment.strip().substring(1).strip()).toList());
        }
    }

    /** A key as far as it is known. */
    private static final class Asked {

        private final String path;
        private String kind = "";
        private String each = "";
        private String without = "";
        private String meaning = "";
        private String example = "";

        Asked(String path) {
            this.path = path;
        }

        TripKey key() {
            String items = kind.startsWith("list") ? each : "";
            return new TripKey(path, kind + items, without, meaning, example);
        }
    }
}
