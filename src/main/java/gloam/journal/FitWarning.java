package gloam.journal;

/** What to look into before a fit is trusted. */
public sealed interface FitWarning {

    /**
     * What is noted of most sheets fits no such film, so that it was left aside.
     *
     * @param doubted of how many sheets
     * @param sheets  of so many used
     */
    record MostDoubted(int doubted, int sheets) implements FitWarning {
    }

    /**
     * The sheets came out otherwise than on the published film, and tones in words alone do not tell whether
     * the film is another or the judge's words are off.
     *
     * @param stops by how many stops lighter; minus is darker
     */
    record FarFromPublished(double stops) implements FitWarning {
    }

    /**
     * What was known of such films before holds the fit back.
     *
     * @param stops by how many stops slower the sheets alone would have the film; minus is faster
     */
    record HeldBack(double stops) implements FitWarning {
    }

    /**
     * The sheets of a night came out as if its light had been other than computed or measured.
     *
     * @param night the night, and by how much its light was off
     */
    record LightOff(FilmFit.NightLight night) implements FitWarning {
    }

    /**
     * Tones in words lie off what measured tones and stars show.
     *
     * @param stops by how many stops they are too light; minus is too dark
     */
    record JudgeOff(double stops) implements FitWarning {
    }

    /**
     * Packs differ.
     *
     * @param slowest the slowest
     * @param fastest the fastest
     */
    record PacksApart(FilmFit.PackSpeed slowest, FilmFit.PackSpeed fastest) implements FitWarning {

        /** How far they are apart in stops. */
        public double stops() {
            return slowest.speedOffsetStops().mean() - fastest.speedOffsetStops().mean();
        }
    }
}
