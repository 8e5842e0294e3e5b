package gloam.view;

import gloam.answer.Exposures;
import gloam.exposure.Trade;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
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
                             Optional<SharpnessTrade> trade, List<String> remarks) implements Report {

    /** Reports exposures; their times are in UTC if no site is known. */
    public static ExposureReport of(Exposures answer, Instant now) {
        SiteClock clock = new SiteClock(answer.question().computed().map(known -> known.site().zone())
                .orElse(ZoneOffset.UTC));
        Situation situation = Situation.of(answer, clock);
        List<ExposureRow> rows = answer.exposures().stream().map(at -> ExposureRow.of(answer, at, clock))
                .toList();
        Optional<SharpnessTrade> trade = answer.trade().map(SharpnessTrade::of);
        return new ExposureReport(clock.at(now), situation, rows, trade,
                ExposureRemarks.of(situation, rows, trade, answer.question().film().colour()));
    }

    @Override
    public Document document() {
        return ExposureText.document(this);
    }

    @Override
    public boolean empty() {
        return exposures.stream().allMatch(ExposureRow::neverFinishes);
    }

    /**
     * What is gained and lost by opening the lens from the f-number with the sharpest stars to the one that
     * records most.
     *
     * @param sharpestFNumber  f-number at which a star's spot is narrowest
     * @param recordingFNumber f-number with the faintest trail limit
     * @param gainedMag        by how many magnitudes the limit is fainter there
     * @param sharpestUm       width of the spot at the sharpest f-number, in µm
     * @param recordingUm      width of the spot at the other one, in µm
     */
    public record SharpnessTrade(double sharpestFNumber, double recordingFNumber, double gainedMag,
                                 double sharpestUm, double recordingUm) {

        static SharpnessTrade of(Trade trade) {
            return new SharpnessTrade(trade.sharpest().fNumber().marked(),
                    trade.mostRecording().fNumber().marked(), trade.gainedMag(),
                    trade.sharpestMm() * 1000, trade.blurredMm() * 1000);
        }
    }
}
