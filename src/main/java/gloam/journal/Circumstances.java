package gloam.journal;

import gloam.exposure.SkyDoubt;
import gloam.journal.Laplace.Row;
import gloam.journal.Laplace.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What several sheets share besides the film's law: the speed of the film as made, that of its pack, the
 * judge, the cold, and how far each night's light is off.
 *
 * <p>All are unknowns, in stops, with the numbers of {@link Laplace}: first those that any sheet may share,
 * then the nights. A night brighter than computed is a faster film. Standard deviations are common sense
 * without a source: the film as made lies 0.3 stop from its box, a pack 0.35 stop from the film, with the
 * long tails of a t distribution, since old packs lie far off; the judge 0.3 stop from the words' guide; a
 * night's light is off as {@link SkyDoubt} has it; cold makes a film slower by 0 ± 0.03 stop a degree.
 *
 * @param packs   packs other than the one that the film looked for is from
 * @param nights  nights other than the one that the film is looked for in
 * @param pack    the pack that the film looked for is from; empty for one not opened yet
 * @param tonight the night whose light the film's speed is told against; empty for light as computed
 * @param meanC   mean temperature where enough sheets tell one to learn from it
 */
record Circumstances(List<String> packs, List<NightAtSite> nights, Optional<String> pack,
        Optional<NightAtSite> tonight,
                     OptionalDouble meanC) {

    /** Number of the judge's shift. */
    static final int JUDGE = 0;
    /** Number of the loss of speed by a degree of cold. */
    static final int COLD = 1;

    private static final int FILM = 2;
    private static final int TONIGHT = 3;

    private static final double FILM_STOPS = 0.3;
    private static final double PACK_STOPS = 0.35;
    private static final double PACK_FREEDOM = 4;
    static final double JUDGE_STOPS = 0.3;
    private static final double COLD_STOPS_A_DEGREE = 0.03;

    private static final int LEAST_SHEETS_OF_COLD = 8;
    private static final double LEAST_SPAN_OF_COLD_C = 10;

    /** What some sheets share, the film being looked for in a pack and a night. */
    static Circumstances of(List<Exposed> sheets, Optional<String> pack, Optional<NightAtSite> tonight) {
        return new Circumstances(
                packs(sheets).stream().filter(name -> !pack.map(Circumstances::key).equals(Optional.of(name)))
                        .toList(),
                sheets.stream().map(NightAtSite::of).distinct()
                        .filter(night -> !tonight.equals(Optional.of(night))).toList(),
                pack.map(Circumstances::key), tonight, meanC(sheets));
    }

    /** The packs that sheets are from, each once; sheets whose pack was not noted count as one. */
    static List<String> packs(List<Exposed> sheets) {
        return sheets.stream().map(sheet -> key(sheet.batch())).distinct().toList();
    }

    private static String key(String pack) {
        return pack.toLowerCase(Locale.ROOT);
    }

    private static OptionalDouble meanC(List<Exposed> sheets) {
        double[] noted = sheets.stream().map(Exposed::temperatureC).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).sorted().toArray();
        return noted.length >= LEAST_SHEETS_OF_COLD
                && noted[noted.length - 1] - noted[0] >= LEAST_SPAN_OF_COLD_C
                ? OptionalDouble.of((noted[0] + noted[noted.length - 1]) / 2) : OptionalDouble.empty();
    }

    /** How many unknowns any sheet may share. */
    int shared() {
        return TONIGHT + (tonight.isPresent() ? 1 : 0) + packs.size();
    }

    /** How many unknowns there are. */
    int all() {
        return shared() + nights.size();
    }

    /** By how many stops a pack's film is slower than published. */
    Row speed(String name) {
        Map<Integer, Double> factors = new TreeMap<>();
        double looked = addSpeed(name, factors);
        return Row.of(looked, factors);
    }

    /** By how many stops the judge's words are too light. */
    static Row judge() {
        return Row.of(0, Map.of(JUDGE, 1.0));
    }

    /** By how many stops a degree of cold makes the film slower. */
    static Row cold() {
        return Row.of(0, Map.of(COLD, 1.0));
    }

    /** How far a night's light is off. */
    Row light(NightAtSite night) {
        return light(night, 1);
    }

    /** How far a night's light is off, times a factor. */
    Row light(NightAtSite night, double times) {
        return Row.of(0, Map.of(number(night), times));
    }

    /**
     * By how many stops the film of a sheet works more slowly than published, as the computed light has it.
     *
     * @param share how much of the night's error is in what was observed
     */
    Row working(Exposed sheet, double share) {
        Map<Integer, Double> factors = new TreeMap<>();
        double looked = addSpeed(sheet.batch(), factors);
        factors.merge(number(NightAtSite.of(sheet)), -share, Double::sum);
        if (meanC.isPresent() && sheet.temperatureC().isPresent()) {
            factors.put(COLD, meanC.getAsDouble() - sheet.temperatureC().getAsDouble());
        }
        return Row.of(looked, factors);
    }

    private double addSpeed(String name, Map<Integer, Double> factors) {
        if (pack.equals(Optional.of(key(name)))) {
            tonight.ifPresent(night -> factors.merge(TONIGHT, 1.0, Double::sum));
            return 1;
        }
        factors.put(FILM, 1.0);
        factors.put(shared() - packs.size() + packs.indexOf(key(name)), 1.0);
        return 0;
    }

    private int number(NightAtSite night) {
        return tonight.equals(Optional.of(night)) ? TONIGHT : shared() + nights.indexOf(night);
    }

    /** What is known of all this before any sheet is judged. */
    List<Term> known() {
        List<Term> known = new ArrayList<>();
        known.add(normal(JUDGE, JUDGE_STOPS));
        known.add(normal(COLD, COLD_STOPS_A_DEGREE));
        known.add(normal(FILM, FILM_STOPS));
        tonight.ifPresent(night -> known.add(normal(TONIGHT, night.spreadStops())));
        nights.forEach(night -> known.add(normal(number(night), night.spreadStops())));
        packs.forEach(name -> known.add(longTailed(Row.of(0,
                Map.of(shared() - packs.size() + packs.indexOf(name), 1.0)))));
        Map<Integer, Double> fromFilm = new TreeMap<>(Map.of(FILM, -1.0));
        tonight.ifPresent(night -> fromFilm.put(TONIGHT, 1.0));
        known.add(longTailed(Row.of(1, fromFilm)));
        return known;
    }

    private static Term normal(int unknown, double spread) {
        double curvature = 1 / spread / spread;
        return Term.prior(Row.of(0, Map.of(unknown, 1.0)), value ->
                new Evidence.Slope(-value * value * curvature / 2, -value * curvature, curvature));
    }

    /** A t distribution, its curvature that of the normal distribution which touches it there from below. */
    private static Term longTailed(Row row) {
        double squares = PACK_FREEDOM * PACK_STOPS * PACK_STOPS;
        return Term.prior(row, value -> {
            double curvature = (PACK_FREEDOM + 1) / (squares + value * value);
            return new Evidence.Slope(-(PACK_FREEDOM + 1) / 2 * Math.log1p(value * value / squares),
                    -value * curvature, curvature);
        });
    }
}
