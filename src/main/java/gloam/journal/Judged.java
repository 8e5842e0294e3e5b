package gloam.journal;

import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.journal.FilmGrid.Axis;
import gloam.journal.Laplace.Response;
import gloam.journal.Laplace.Row;
import gloam.journal.Laplace.Term;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A sheet that was judged, and what is computed for it on films of a grid's failures.
 *
 * @param entry        the sheet
 * @param tone         its tone in stops
 * @param observations what was observed of it
 */
record Judged(Entry entry, Response tone, List<Observation> observations) {

    /** Speeds that the film of any sheet works at, errors of light included. */
    private static final Axis WORKING = new Axis(-8, 8, 33);

    /**
     * One thing observed.
     *
     * @param what       which
     * @param evidence   what it says
     * @param nightShare how much of the error of the night's light is in it, 0 to 1
     * @param term       its factor in the density of the film and its circumstances
     */
    record Observation(What what, Evidence evidence, double nightShare, Term term) {
    }

    /** What can be observed. */
    enum What {
        /** The sky's tone. */
        SKY_TONE,
        /** The faintest star. */
        FAINTEST_STAR
    }

    /** A sheet on films of the failures of a grid. */
    static Judged of(FilmGrid grid, Circumstances circumstances, Entry entry) {
        FilmGrid working = grid.withSpeeds(WORKING);
        Exposed sheet = entry.exposed();
        double[] tonesStops = working.toneStops(sheet.openings());
        Response tone = response(working, tonesStops);
        List<Observation> observations = new ArrayList<>();
        entry.outcome().verdict().ifPresent(verdict -> observations.add(
                observation(circumstances, sheet, verdict, tone)));
        entry.outcome().faintestMag().ifPresent(mag -> observations.add(observation(What.FAINTEST_STAR,
                Evidence.ofFaintest(mag), 0, circumstances.working(sheet, 0),
                response(working, limitsMag(working, sheet, tonesStops)), false)));
        return new Judged(entry, tone, List.copyOf(observations));
    }

    /**
     * A tone in words is the judge's, under the night's light; one in stops is nobody's, and half the
     * variance stated for it is taken to be the light's, as far as light can be off.
     */
    private static Observation observation(Circumstances circumstances, Exposed sheet, Verdict verdict,
            Response tone) {
        if (verdict instanceof Verdict.InStops measured) {
            double nightStops = NightAtSite.of(sheet).spreadStops();
            double share = Math.min(1, measured.spreadStops() * Math.sqrt(0.5) / nightStops);
            double own = Math.sqrt(measured.spreadStops() * measured.spreadStops()
                    - share * share * nightStops * nightStops);
            return observation(What.SKY_TONE, Evidence.ofTone(measured.stops(), own), share,
                    circumstances.working(sheet, share), tone, false);
        }
        return observation(What.SKY_TONE, Evidence.of(((Verdict.InWords) verdict).word()), 1,
                circumstances.working(sheet, 1), tone, true);
    }

    private static Observation observation(What what, Evidence evidence, double nightShare, Row row,
            Response response, boolean judged) {
        return new Observation(what, evidence, nightShare,
                new Term(row, Optional.of(response), judged, evidence::slope));
    }

    private static Response response(FilmGrid working, double[] ofFilms) {
        float[] kept = new float[ofFilms.length];
        for (int film = 0; film < kept.length; film++) {
            kept[film] = (float) ofFilms[film];
        }
        return new Response(working.speeds(), working.lnScales().steps(), kept);
    }

    private static double[] limitsMag(FilmGrid grid, Exposed exposed, double[] tonesStops) {
        double speedMmS = Math.max(exposed.stars().imageSpeedMmS(),
                PassingStars.slowestMmS(exposed.lens(), Optional.empty()));
        return IntStream.range(0, grid.size()).parallel()
                .mapToDouble(film -> Math.max(Outcome.MAGNITUDE.least(),
                TrailLimit.magnitude(new TrailLimit.Passing(new ExposedSheet(grid.film(film), exposed.lens(),
                exposed.fNumber(), exposed.openS(), Stops.factor(tonesStops[film]), exposed.middleLx()),
                speedMmS, exposed.stars().lossMag())))).toArray();
    }

    /**
     * How much the sheet alone tells about the film, in nats: by how far what is known with it is from what
     * was known before.
     */
    double toldNats(Posterior before) {
        FilmGrid grid = before.grid();
        double[] likelihoods = IntStream.range(0, grid.size()).mapToDouble(film -> likelihood(grid, film))
                .toArray();
        double mean = before.mean(likelihoods);
        return before.mean(IntStream.range(0, grid.size()).mapToDouble(film ->
                likelihoods[film] / mean * Math.log(likelihoods[film] / mean)).toArray());
    }

    private double likelihood(FilmGrid grid, int film) {
        int failure = film % grid.lnScales().steps();
        double speed = grid.speeds().at(film / grid.lnScales().steps());
        double product = 1;
        for (Observation observation : observations) {
            Response response = observation.term.response().orElseThrow();
            double light = response.steepness(speed, failure) * observation.nightShare
                    * NightAtSite.of(entry.exposed()).spreadStops();
            product *= observation.evidence.blurred(Math.hypot(light,
                    observation.term.judged() ? Circumstances.JUDGE_STOPS : 0))
                    .likelihood(response.at(speed, failure));
        }
        return product;
    }
}
