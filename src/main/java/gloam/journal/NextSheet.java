package gloam.journal;

import gloam.gear.FNumber;
import gloam.units.Range;
import gloam.units.Stops;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Advice for the next sheets in a steady light: the exposure most likely right, the one that reveals most
 * about the film, which of the two suits the number of sheets left, and brackets.
 *
 * <p>A sheet is right if it comes out within half a stop of the wanted tone, errors of sky and eye included.
 * With two sheets or more left, the two exposures are compared by the probability that one of two sheets is
 * right if the second is exposed at the same f-number once the first has been judged in words.
 */
public final class NextSheet {

    /** Allowed numbers of sheets left. */
    public static final Range SHEETS_LEFT = new Range("sheets left", 1, 500, "");

    /** A sheet within so many stops of the wanted tone is right. */
    public static final double RIGHT_STOPS = 0.5;

    private static final int STEPS_A_STOP = 3;

    private final Posterior posterior;
    private final double toneStops;
    private final double[] timesS;
    private final List<Setting> settings;

    /**
     * What is wanted.
     *
     * @param meteredAtF1S metered time of the mid-tone at f/1 on the published film, in s
     * @param fNumbers     the f-numbers to choose from, at least one
     * @param shortestS    shortest exposure possible, in seconds
     * @param longestS     longest exposure possible, in seconds
     * @param toneStops    the tone wanted, in stops from the mid-tone
     */
    public record Wanted(double meteredAtF1S, List<FNumber> fNumbers, double shortestS, double longestS,
                         double toneStops) {

        /** Copies the list. */
        public Wanted {
            fNumbers = List.copyOf(fNumbers);
        }
    }

    /**
     * An exposure.
     *
     * @param fNumber          the f-number
     * @param exposureS        exposure time in seconds
     * @param rightChance      probability that it comes out right, 0 to 1
     * @param spreadAfterStops expected standard deviation of the tone, in stops, once the sheet has been
     *                         judged
     * @param rightByTheSecond probability, 0 to 1, that it or a second one, exposed once it has been judged,
     *                         is right
     */
    public record Choice(FNumber fNumber, double exposureS, double rightChance, double spreadAfterStops,
                         double rightByTheSecond) {
    }

    /**
     * The advice.
     *
     * @param likeliest   the exposure most likely right
     * @param telling     the exposure that reveals most about the film
     * @param learnFirst  whether the revealing one suits the number of sheets left better
     * @param spreadStops standard deviation of the tone now, in stops, by the film alone
     * @param brackets    brackets of 2, 3 and 4 sheets, as far as the possible times reach
     */
    public record Advice(Choice likeliest, Choice telling, boolean learnFirst, double spreadStops,
                         List<BracketOfTimes> brackets) {
    }

    /**
     * Sheets a stop apart.
     *
     * @param exposuresS  exposure times in seconds, shortest first
     * @param rightChance probability, 0 to 1, that at least one comes out right
     */
    public record BracketOfTimes(List<Double> exposuresS, double rightChance) {
    }

    /** One f-number. */
    private record Setting(FNumber fNumber, double[] log2Times, TimeSpread spread) {
    }

    /** An exposure that might be made. */
    private record Proposal(Setting setting, double exposureS) {

        double rightChance() {
            return setting.spread.rightChance(exposureS);
        }
    }

    /** Advises by what is known of the film. */
    public NextSheet(Posterior posterior, Wanted wanted) {
        this.posterior = posterior;
        this.toneStops = wanted.toneStops;
        int steps = (int) Math.floor(Stops.between(wanted.shortestS, wanted.longestS) * STEPS_A_STOP + 1e-9);
        this.timesS = IntStream.rangeClosed(0, steps)
                .mapToDouble(step -> wanted.shortestS * Stops.factor((double) step / STEPS_A_STOP)).toArray();
        this.settings = wanted.fNumbers.stream().map(fNumber -> {
            SteadyLight light = SteadyLight.of(posterior, wanted.meteredAtF1S * fNumber.squared(), toneStops);
            return new Setting(fNumber, light.log2Times(), TimeSpread.of(light));
        }).toList();
    }

    /** The advice for a number of sheets left. */
    public Advice advice(int sheetsLeft) {
        SHEETS_LEFT.check(sheetsLeft);
        Proposal likeliest = likeliestProposal();
        double[] question = likeliest.setting.log2Times;
        Choice right = choice(likeliest, question);
        Choice telling = choice(proposals()
                .min(Comparator.comparingDouble(proposal -> spreadAfter(proposal, question))).orElseThrow(),
                question);
        boolean learnFirst = sheetsLeft > 1 && telling.rightByTheSecond > right.rightByTheSecond;
        return new Advice(right, telling, learnFirst, posterior.estimate(question).sd(),
                IntStream.rangeClosed(2, 4).mapToObj(sheets -> bracket(likeliest, sheets))
                .flatMap(Optional::stream)
                        .toList());
    }

    /** The time in s of the exposure most likely right, of equals the shortest. */
    double likeliestS() {
        return likeliestProposal().exposureS;
    }

    private Proposal likeliestProposal() {
        return proposals().max(Comparator.comparingDouble(Proposal::rightChance)
                .thenComparing(Comparator.comparingDouble(Proposal::exposureS).reversed())).orElseThrow();
    }

    private Stream<Proposal> proposals() {
        return settings.stream().flatMap(setting ->
                DoubleStream.of(timesS).mapToObj(timeS -> new Proposal(setting, timeS)));
    }

    private Choice choice(Proposal proposal, double[] question) {
        return new Choice(proposal.setting.fNumber, proposal.exposureS, proposal.rightChance(),
                spreadAfter(proposal, question),
                proposal.setting.spread.rightByTheSecondChance(proposal.exposureS, timesS, toneStops));
    }

    /** Root of the mean variance left in a question after a sheet is judged in words. */
    private double spreadAfter(Proposal proposal, double[] question) {
        double variance = 0;
        double[] tones = tonesStops(proposal);
        for (ToneWord word : ToneWord.values()) {
            Evidence evidence = Evidence.of(word).blurred(TimeSpread.LIGHT_STOPS);
            double chance = 0;
            double sum = 0;
            double squares = 0;
            for (int film = 0; film < question.length; film++) {
                double weight = posterior.weight(film) * evidence.likelihood(tones[film]);
                chance += weight;
                sum += weight * question[film];
                squares += weight * question[film] * question[film];
            }
            variance += Math.max(0, squares - sum * sum / chance);
        }
        return Math.sqrt(variance);
    }

    private double[] tonesStops(Proposal proposal) {
        double log2S = Stops.between(1, proposal.exposureS);
        return DoubleStream.of(proposal.setting.log2Times).map(log2Time -> toneStops + log2S - log2Time)
                .toArray();
    }

    /**
     * Sheets a stop apart whose half-stops either way adjoin, set where one is likeliest right; none where
     * too long.
     */
    private Optional<BracketOfTimes> bracket(Proposal likeliest, int sheets) {
        double reach = Stops.factor((sheets - 1) / 2.0);
        return DoubleStream.of(timesS)
                .filter(middleS -> middleS / reach >= timesS[0]
                && middleS * reach <= timesS[timesS.length - 1])
                .mapToObj(middleS -> bracket(likeliest, sheets, middleS / reach))
                .max(Comparator.comparingDouble(BracketOfTimes::rightChance));
    }

    private static BracketOfTimes bracket(Proposal likeliest, int sheets, double firstS) {
        double[] bracketS = IntStream.range(0, sheets).mapToDouble(sheet -> firstS * Stops.factor(sheet))
                .toArray();
        return new BracketOfTimes(DoubleStream.of(bracketS).boxed().toList(),
                likeliest.setting.spread.oneRightChance(bracketS));
    }
}
