package gloam.journal;

import gloam.journal.Laplace.Mode;
import gloam.journal.Laplace.Row;
import gloam.journal.Laplace.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The films of a grid as sheets leave them, with the likeliest circumstances on each.
 *
 * @param posterior how likely each film is
 * @param laplace   the density of films and circumstances
 * @param modes     the circumstances on each film
 * @param sheets    the sheets, as computed for the grid
 */
record Fitting(Posterior posterior, Laplace laplace, List<Mode> modes, List<Judged> sheets) {

    /** Sheets on the films of a grid. */
    static Fitting of(FilmGrid grid, List<Entry> sheets, Circumstances circumstances) {
        List<Judged> judged = sheets.stream().map(entry -> Judged.of(grid, circumstances, entry)).toList();
        List<Term> terms = new ArrayList<>(circumstances.known());
        judged.forEach(sheet -> sheet.observations().forEach(observation -> terms.add(observation.term())));
        Laplace laplace = new Laplace(terms, circumstances.shared(), circumstances.all());
        Mode[] modes = new Mode[grid.size()];
        IntStream.range(0, grid.lnScales().steps()).parallel().forEach(failure -> {
            double[] start = new double[circumstances.all()];
            for (int speed = 0; speed < grid.speeds().steps(); speed++) {
                Mode mode = laplace.at(grid.speeds().at(speed), failure, start);
                modes[grid.number(speed, failure)] = mode;
                start = mode.values();
            }
        });
        double[] logs = IntStream.range(0, grid.size()).mapToDouble(film ->
                modes[film].log() + grid.lnPrior(film % grid.lnScales().steps())).toArray();
        return new Fitting(Posterior.of(grid, logs), laplace, List.of(modes), judged);
    }

    /** Mean and standard deviation of a sum of the circumstances. */
    Estimate estimate(Row row) {
        FilmGrid grid = posterior.grid();
        return about(IntStream.range(0, grid.size()).mapToDouble(film ->
                row.at(speed(film), modes.get(film).values())).toArray(), row, 1);
    }

    /** Mean and standard deviation of a sheet's tone in the light as computed. */
    Estimate toneStops(Judged sheet, Row speed) {
        FilmGrid grid = posterior.grid();
        int likeliest = posterior.likeliest();
        return about(IntStream.range(0, grid.size()).mapToDouble(film ->
                sheet.tone().at(speed.at(speed(film), modes.get(film).values()), failure(film))).toArray(),
                speed, sheet.tone().steepness(speed.at(speed(likeliest), modes.get(likeliest).values()),
                        failure(likeliest)));
    }

    /**
     * A sheet that was seen.
     *
     * @param sheet          the sheet, as computed for a grid
     * @param speed          the speed of its pack
     * @param publishedStops its tone on the published film
     */
    record Seen(Judged sheet, Row speed, double publishedStops) {
    }

    /** By how many stops sheets look lighter to the judge, in the mean, than on the published film. */
    Estimate lighterStops(List<Seen> seen) {
        FilmGrid grid = posterior.grid();
        double[] ofFilms = IntStream.range(0, grid.size()).mapToDouble(film -> seen.stream()
                .mapToDouble(one -> one.sheet.tone().at(one.speed.at(speed(film), modes.get(film).values()),
                        failure(film)) - one.publishedStops)
                .average().orElseThrow() + modes.get(film).values()[Circumstances.JUDGE]).toArray();
        int likeliest = posterior.likeliest();
        Map<Integer, Double> factors = new TreeMap<>(Map.of(Circumstances.JUDGE, 1.0));
        for (Seen one : seen) {
            double steepness = one.sheet.tone().steepness(one.speed.at(speed(likeliest),
                    modes.get(likeliest).values()), failure(likeliest)) / seen.size();
            for (int i = 0; i < one.speed.unknowns().length; i++) {
                factors.merge(one.speed.unknowns()[i], steepness * one.speed.factors()[i], Double::sum);
            }
        }
        return about(ofFilms, Row.of(0, factors), 1);
    }

    private Estimate about(double[] ofFilms, Row row, double steepness) {
        Estimate between = posterior.estimate(ofFilms);
        int likeliest = posterior.likeliest();
        double within = laplace.about(speed(likeliest), failure(likeliest), modes.get(likeliest).values())
                .variance(row) * steepness * steepness;
        return new Estimate(between.mean(), Math.sqrt(between.sd() * between.sd() + within));
    }

    /** Chance that an observation is a wrong note. */
    double strayChance(Judged.Observation observation) {
        FilmGrid grid = posterior.grid();
        return posterior.mean(IntStream.range(0, grid.size()).mapToDouble(film ->
                observation.evidence().strayChance(observation.term().value(speed(film), failure(film),
                        modes.get(film).values()))).toArray());
    }

    private double speed(int film) {
        return posterior.grid().speeds().at(film / posterior.grid().lnScales().steps());
    }

    private int failure(int film) {
        return film % posterior.grid().lnScales().steps();
    }
}
