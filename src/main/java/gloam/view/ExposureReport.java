package gloam.view;

import gloam.answer.Exposures;
import gloam.exposure.Trade;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * Aperture and time for one situation, all f-numbers side by side.
 *
 * @param generatedAt when the report was made
 * @param situation   what was asked
 * @param exposures   a row for each f-number, widest first
 * @param trade       sharpness against stars, where they ask for different f-numbers
 * @param remarks     what to make of it, a sentence or two each
 */
public record ExposureReport(OffsetDateTime generatedAt, Situation situation, List<ExposureRow> exposures,
                             Optional<SharpnessTrade> trade, List<String> remarks) implements Report {

    /** The report of exposures. */
    public static ExposureReport of(Exposures answer, Instant now) {
        SiteClock clock = new SiteClock(answer.question().computed().map(known -> known.site().zone())
                .orElse(ZoneOffset.UTC));
        Situation situation = Situation.of(answer, clock);
        List<ExposureRow> rows = answer.exposures().stream().map(at -> ExposureRow.of(answer, at, clock)).toList();
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
     * What opening the lens from where stars are sharpest to where most of them record gains and costs.
     *
     * @param sharpestFNumber  where a star's spot is narrowest
     * @param recordingFNumber where the trail limit is faintest
     * @param gainedMag        by how much fainter it is there
     * @param sharpestUm       width of the spot at the one
     * @param recordingUm      width of the spot at the other
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
