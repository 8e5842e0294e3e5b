package gloam.view;

import gloam.answer.Exposures;
import gloam.answer.ToneCourse;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * Exposure times in one situation, all f-numbers side by side.
 *
 * @param generatedAt when the report was made
 * @param situation   the light, film and lens asked about
 * @param exposures   a row for each f-number, widest first
 * @param course      how the tone grows through the night, where one f-number is asked about
 * @param trade       sharpness compared with the number of stars, if they call for different f-numbers
 * @param remarks     advice, a sentence or two each
 */
public record ExposureReport(OffsetDateTime generatedAt, Situation situation, List<ExposureRow> exposures,
                             Optional<ToneCourse> course, Optional<FilmExposures.SharpnessTrade> trade,
                             List<String> remarks)
        implements Report {

    /** Reports exposures; their times are in UTC if no site is known. */
    public static ExposureReport of(Exposures answer, Instant now) {
        SiteClock clock = SiteClock.of(answer);
        FilmExposures film = FilmExposures.of(answer, clock);
        return new ExposureReport(clock.at(now), film.situation(), film.exposures(), answer.course(),
                film.trade(), ExposureRemarks.of(film, answer.question().film().colour()));
    }

    @Override
    public ZoneId zone() {
        return situation.site().map(Site::zone).orElse(ZoneOffset.UTC);
    }

    @Override
    public Document document() {
        Optional<Block> figure = course.<Block>map(found ->
                new Block.Figure("tone against time", made -> ToneCourseDrawing.of(this, found, made)))
                .or(() -> ExposureDrawing.suits(this)
                ? Optional.of(new Block.Figure("the times", made -> ExposureDrawing.of(this, made)))
                : Optional.empty());
        return ExposureText.document(List.of(new FilmExposures(situation, exposures, trade)), figure,
                remarks);
    }

    @Override
    public boolean empty() {
        return exposures.stream().allMatch(ExposureRow::neverFinishes);
    }
}
