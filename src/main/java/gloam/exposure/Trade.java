package gloam.exposure;

import gloam.exposure.ExposureTable.Row;
import gloam.gear.Lens;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is won and lost from the f-number at which stars are sharpest to the one at which most of them record.
 *
 * @param sharpest      the row whose stars have the narrowest spot
 * @param mostRecording the row with the faintest trail limit
 * @param gainedMag     how much fainter stars record there, more than 0
 * @param sharpestMm    width of the spot at the sharpest
 * @param blurredMm     width of the spot at the other
 */
public record Trade(Row sharpest, Row mostRecording, double gainedMag, double sharpestMm, double blurredMm) {

    /**
     * The trade among the rows of a lens; empty where one f-number is both or nothing records at one of them.
     */
    public static Optional<Trade> of(Lens lens, List<Row> rows) {
        Optional<Row> sharpest
                = rows.stream().filter(row -> row.fNumber().equals(lens.sharpestFNumber())).findFirst();
        Optional<Row> mostRecording = rows.stream().max(Comparator.comparingDouble(Row::trailLimitMag));
        return sharpest.flatMap(sharp -> mostRecording.map(most -> between(lens, sharp, most)))
                .filter(trade -> trade.gainedMag > 0 && Double.isFinite(trade.gainedMag));
    }

    private static Trade between(Lens lens, Row sharpest, Row mostRecording) {
        return new Trade(sharpest, mostRecording, mostRecording.trailLimitMag() - sharpest.trailLimitMag(),
                lens.spotMm(sharpest.fNumber()), lens.spotMm(mostRecording.fNumber()));
    }
}
