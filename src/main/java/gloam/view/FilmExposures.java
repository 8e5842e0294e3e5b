package gloam.view;

import gloam.answer.Exposures;
import gloam.exposure.Trade;
import java.util.List;
import java.util.Optional;

/**
 * What one film comes to in one situation.
 *
 * @param situation the light, film and lens asked about
 * @param exposures a row for each f-number, widest first
 * @param trade     sharpness compared with the number of stars, if they call for different f-numbers
 */
public record FilmExposures(Situation situation, List<ExposureRow> exposures,
                            Optional<SharpnessTrade> trade) {

    static FilmExposures of(Exposures answer, SiteClock clock) {
        return new FilmExposures(Situation.of(answer, clock), answer.exposures().stream()
                .map(at -> ExposureRow.of(answer, at, clock)).toList(),
                answer.trade().map(SharpnessTrade::of));
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
