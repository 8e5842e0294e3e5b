package gloam.view;

import gloam.answer.Exposures;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Exposure times of several films, side by side under the same light.
 *
 * @param generatedAt when the report was made
 * @param films       what each film comes to, in the order asked; the light and lens are the same for all
 * @param remarks     advice, a sentence or two each
 */
public record FilmsReport(OffsetDateTime generatedAt, List<FilmExposures> films, List<String> remarks)
        implements Report {

    /** Reports the exposures of films; their times are in UTC if no site is known. */
    public static FilmsReport of(List<Exposures> answers, Instant now) {
        SiteClock clock = SiteClock.of(answers.get(0));
        List<FilmExposures> films = answers.stream().map(answer -> FilmExposures.of(answer, clock)).toList();
        return new FilmsReport(clock.at(now), films, ExposureRemarks.ofFilms(films,
                answers.stream().anyMatch(answer -> answer.question().film().colour())));
    }

    @Override
    public Document document() {
        return ExposureText.document(films, Optional.empty(), remarks);
    }

    @Override
    public boolean empty() {
        return films.stream().flatMap(film -> film.exposures().stream())
                .allMatch(ExposureRow::neverFinishes);
    }
}
