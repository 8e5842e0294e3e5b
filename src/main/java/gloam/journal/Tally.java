package gloam.journal;

import gloam.units.Label;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How a group of sheets came out.
 *
 * @param group    what they have in common
 * @param sheets   how many there are
 * @param kept     how many are keepers
 * @param undecided how many are neither kept nor rejected yet
 * @param spoilers the causes that spoiled sheets, the most frequent first
 * @param compared how many were planned and their tone is known
 * @param offPlanStops by how much those came out lighter than planned in the mean; empty if there are none
 */
public record Tally(String group, int sheets, int kept, int undecided, List<Spoiled> spoilers, int compared,
        OptionalDouble offPlanStops) {

    private static final List<String> SEASONS = List.of("winter", "spring", "summer", "autumn");
    private static final double TROPIC_DEG = 23.44;

    /** Copies the list. */
    public Tally {
        spoilers = List.copyOf(spoilers);
    }

    /** How many sheets one cause spoiled. */
    public record Spoiled(String by, int sheets) {
    }

    /** Share of keepers among the sheets decided on, 0 to 1; 0 if there are none. */
    public double keptShare() {
        return sheets == undecided ? 0 : (double) kept / (sheets - undecided);
    }

    /** All sheets together. */
    public static Tally all(List<Entry> sheets) {
        return of("all sheets", sheets);
    }

    /** By film. */
    public static List<Tally> byFilm(List<Entry> sheets) {
        return grouped(sheets, entry -> entry.exposed().film());
    }

    /** By film and pack, where the pack was noted. */
    public static List<Tally> byPack(List<Entry> sheets) {
        return grouped(sheets.stream().filter(entry -> !entry.exposed().batch().isEmpty()).toList(),
                entry -> entry.exposed().film() + ", " + entry.exposed().batch());
    }

    /** By wish, where it was noted. */
    public static List<Tally> byWish(List<Entry> sheets) {
        return grouped(sheets.stream().filter(entry -> entry.wish().isPresent()).toList(),
                entry -> entry.wish().orElseThrow());
    }

    /** By season at the site: three months each, beginning in December; reversed in the south. */
    public static List<Tally> bySeason(List<Entry> sheets) {
        List<Tally> tallies = new ArrayList<>(grouped(sheets, Tally::season));
        tallies.sort(Comparator.comparingInt(tally -> SEASONS.indexOf(tally.group)));
        return tallies;
    }

    static String season(Entry entry) {
        Optional<Place> place = entry.exposed().place();
        double latitudeDeg = place.map(where -> where.latitude().degrees()).orElse(TROPIC_DEG);
        int month = entry.exposed().whole().start()
                .atZone(place.map(Place::zone).orElse(ZoneOffset.UTC)).getMonthValue();
        int season = month % 12 / 3;
        return SEASONS.get(latitudeDeg < 0 ? (season + 2) % 4 : season);
    }

    private static List<Tally> grouped(List<Entry> sheets, Function<Entry, String> group) {
        Map<String, List<Entry>> groups =
                sheets.stream().collect(Collectors.groupingBy(group, TreeMap::new, Collectors.toList()));
        return groups.entrySet().stream().map(part -> of(part.getKey(), part.getValue())).toList();
    }

    private static Tally of(String group, List<Entry> sheets) {
        int kept = (int) sheets.stream().filter(entry -> entry.outcome().kept().orElse(false)).count();
        int undecided = (int) sheets.stream().filter(entry -> entry.outcome().kept().isEmpty()).count();
        Map<String, Integer> counts = new LinkedHashMap<>();
        sheets.stream().flatMap(entry -> entry.outcome().spoiledBy().stream())
                .map(Label::words)
                .forEach(name -> counts.merge(name, 1, Integer::sum));
        List<Spoiled> spoilers = counts.entrySet().stream()
                .map(count -> new Spoiled(count.getKey(), count.getValue()))
                .sorted(Comparator.comparingInt(Spoiled::sheets).reversed().thenComparing(Spoiled::by))
                .toList();
        double[] offPlanStops = sheets.stream().flatMap(entry -> entry.offPlanStops().stream().boxed())
                .mapToDouble(Double::doubleValue).toArray();
        return new Tally(group, sheets.size(), kept, undecided, spoilers, offPlanStops.length,
                Arrays.stream(offPlanStops).average());
    }
}
