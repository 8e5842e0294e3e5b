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
    private static final double MAG_A_STOP = 2.5 * Math.log10(2);

    /**
     * One thing observed.
     *
     * @param what       which
     * @param evidence   what it says
     * @param nightShare how much of the error of the night's light makes the film work faster in it, 0 to 1
     * @param onNight    what a stop of that error adds to it besides
     * @param judgeStops by how much the judge may be off in it
     * @param term       its factor in the density of the film and its circumstances
     */
    record Observation(What what, Evidence evidence, double nightShare, double onNight, double judgeStops,
            Term term) {

        private Observation(What what, Evidence evidence, double nightShare, double onNight,
                double judgeStops, Row row, Response response, Row plus) {
            this(what, evidence, nightShare, onNight, judgeStops,
                    new Term(row, Optional.of(response), plus, evidence::slope));
        }
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
        entry.outcome().tone().ifPresent(verdict -> observations.add(
                toneSeen(circumstances, sheet, verdict, tone)));
        Optional<Evidence> faintest = entry.outcome().limitMag().map(limit ->
                Evidence.ofLimit(limit.mean(), limit.sd())).or(() -> entry.outcome().faintestMag().stream()
                .mapToObj(Evidence::ofFaintest).findFirst());
        faintest.ifPresent(evidence -> observations.add(starSeen(circumstances, sheet, evidence,
                response(working, limitsMag(working, sheet, tonesStops)))));
        return new Judged(entry, tone, List.copyOf(observations));
    }

    /**
     * A tone in words is the judge's, under the night's light; one off a scan is nobody's; of one in stops
     * half the variance stated for it is taken to be the light's, as far as light can be off.
     */
    private static Observation toneSeen(Circumstances circumstances, Exposed sheet, Verdict verdict,
            Response tone) {
        if (verdict instanceof Verdict.InStops measured) {
            double nightStops = NightAtSite.of(sheet).spreadStops();
            double share = Math.min(1, measured.spreadStops() * Math.sqrt(0.5) / nightStops);
            double own = Math.sqrt(measured.spreadStops() * measured.spreadStops()
                    - share * share * nightStops * nightStops);
            return new Observation(What.SKY_TONE, Evidence.ofTone(measured.stops(), own), share, 0, 0,
                    circumstances.working(sheet, share), tone, Row.NONE);
        }
        if (verdict instanceof Verdict.OfScan scan) {
            return new Observation(What.SKY_TONE, Evidence.of(scan.tone()), 1, 0, 0,
                    circumstances.working(sheet, 1), tone, Row.NONE);
        }
        return new Observation(What.SKY_TONE, Evidence.of(((Verdict.InWords) verdict).word()), 1, 0,
                Circumstances.JUDGE_STOPS, circumstances.working(sheet, 1), tone, Circumstances.judge());
    }

    /**
     * Stars are as bright as ever where the sky is brighter than computed: so a sheet is as one that works
     * faster in the light as computed, on which stars are fainter by as much.
     */
    private static Observation starSeen(Circumstances circumstances, Exposed sheet, Evidence evidence,
            Response limit) {
        return new Observation(What.FAINTEST_STAR, evidence, 1, -MAG_A_STOP, 0,
                circumstances.working(sheet, 1), limit,
                circumstances.light(NightAtSite.of(sheet), -MAG_A_STOP));
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
            double light = (observation.onNight - response.steepness(speed, failure)
                    * observation.nightShare) * NightAtSite.of(entry.exposed()).spreadStops();
            product *= observation.evidence.blurred(Math.hypot(light, observation.judgeStops))
                    .likelihood(response.at(speed, failure));
        }
        return product;
    }
}
