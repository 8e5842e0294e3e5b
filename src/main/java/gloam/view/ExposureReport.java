package gloam.view;

import gloam.answer.Exposures;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Exposure times in one situation, all f-numbers side by side.
 *
 * @param generatedAt when the report was made
 * @param situation   the light, film and lens asked about
 * @param exposures   a row for each f-number, widest first
 * @param trade       sharpness compared with the number of stars, if they call for different f-numbers
 * @param remarks     advice, a sentence or two each
 */
public record ExposureReport(OffsetDateTime generatedAt, Situation situation, List<ExposureRow> exposures,
                             Optional<FilmExposures.SharpnessTrade> trade, List<String> remarks)
        implements Report {

    /** Reports exposures; their times are in UTC if no site is known. */
    public static ExposureReport of(Exposures answer, Instant now) {
        SiteClock clock = SiteClock.of(answer);
        FilmExposures film = FilmExposures.of(answer, clock);
        return new ExposureReport(clock.at(now), film.situation(), film.exposures(), film.trade(),
                ExposureRemarks.of(film, answer.question().film().colour()));
    }

    @Override
    public Document document() {
        Optional<Block> figure = ExposureDrawing.suits(this)
                ? Optional.of(new Block.Figure("the times", () -> ExposureDrawing.of(this)))
                : Optional.empty();
        return ExposureText.document(List.of(new FilmExposures(situation, exposures, trade)), figure,
                remarks);
    }

    @Override
    public boolean empty() {
        return exposures.stream().allMatch(ExposureRow::neverFinishes);
    }
}
