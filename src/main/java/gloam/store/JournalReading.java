package gloam.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import gloam.ephemeris.Direction;
import gloam.journal.Estimate;
import gloam.journal.ScanReading;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;

/**
 * What a scan of a sheet showed, as it stands in a line of the journal. All its keys are written, those that
 * say nothing as null, so that a later reading, as a merge patch (RFC 7386), leaves nothing of one before.
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalReading(String file, String sha256, BigDecimal toneStops, BigDecimal toneErrorStops,
        ScanReading.Bound toneBound, Optional<TrailKeys> trails) {

    private static final int DEGREE_DECIMALS = 3;

    /** The keys of a reading. */
    static JournalReading of(ScanReading reading) {
        ScanReading.Tone tone = reading.tone();
        return new JournalReading(reading.file(), reading.sha256(), JournalLine.cut(tone.stops(), 2),
                JournalLine.cut(tone.errorStops(), 2), tone.bound(), reading.trails().map(TrailKeys::of));
    }

    /**
     * The reading.
     *
     * @throws BadInput if the values do not go together
     */
    ScanReading reading() {
        return new ScanReading(file, sha256, new ScanReading.Tone(toneStops.doubleValue(),
                toneErrorStops.doubleValue(), toneBound), trails.map(TrailKeys::trails));
    }

    /** What the trails showed. */
    @JsonInclude(JsonInclude.Include.ALWAYS)
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record TrailKeys(BigDecimal azimuthDeg, BigDecimal altitudeDeg, BigDecimal rollDeg,
            BigDecimal focalLengthMm, List<EndKeys> openings, int predicted, int seen,
            Optional<BigDecimal> limitMag, Optional<BigDecimal> limitErrorMag, List<CloudKeys> clouds,
            Optional<BumpKeys> bump) {

        /** Refuses an aim outside its range, and a limit without its error, with {@link BadInput}. */
        TrailKeys {
            JournalLine.checkAim(Optional.of(azimuthDeg), Optional.of(altitudeDeg));
            if (limitMag.isPresent() != limitErrorMag.isPresent()) {
                throw new BadInput("limit-mag and limit-error-mag go together; give both or neither");
            }
        }

        private static TrailKeys of(ScanReading.Trails trails) {
            return new TrailKeys(degrees(trails.aim().azimuth()), degrees(trails.aim().altitude()),
                    JournalLine.cut(trails.roll().signed().degrees(), DEGREE_DECIMALS),
                    JournalLine.cut(trails.focalLengthMm(), 2),
                    trails.openings().stream().map(EndKeys::of).toList(), trails.predicted(), trails.seen(),
                    trails.limitMag().map(limit -> JournalLine.cut(limit.mean(), 2)),
                    trails.limitMag().map(limit -> JournalLine.cut(limit.sd(), 2)),
                    trails.clouds().stream().map(cloud ->
                            new CloudKeys(cloud.start(), cloud.endExclusive())).toList(),
                    trails.bump().map(BumpKeys::of));
        }

        private ScanReading.Trails trails() {
            return new ScanReading.Trails(direction(azimuthDeg, altitudeDeg),
                    Angle.ofDegrees(rollDeg.doubleValue()), focalLengthMm.doubleValue(),
                    openings.stream().map(EndKeys::ends).toList(), predicted, seen, limitMag.map(mag ->
                    new Estimate(mag.doubleValue(), limitErrorMag.orElseThrow().doubleValue())),
                    clouds.stream().map(CloudKeys::cloud).toList(), bump.map(BumpKeys::bump));
        }
    }

    /** That the camera was moved. */
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record BumpKeys(Instant at, BigDecimal azimuthDeg, BigDecimal altitudeDeg) {

        /** Refuses an aim outside its range with {@link BadInput}. */
        BumpKeys {
            JournalLine.checkAim(Optional.of(azimuthDeg), Optional.of(altitudeDeg));
        }

        private static BumpKeys of(ScanReading.Bump bump) {
            return new BumpKeys(bump.at(), degrees(bump.aim().azimuth()), degrees(bump.aim().altitude()));
        }

        private ScanReading.Bump bump() {
            return new ScanReading.Bump(at, direction(azimuthDeg, altitudeDeg));
        }
    }

    private static BigDecimal degrees(Angle angle) {
        return JournalLine.cut(angle.degrees(), DEGREE_DECIMALS);
    }

    private static Direction direction(BigDecimal azimuthDeg, BigDecimal altitudeDeg) {
        return Direction.ofDegrees(azimuthDeg.doubleValue(), altitudeDeg.doubleValue());
    }

    /** How an opening differed from what was noted. */
    @JsonInclude(JsonInclude.Include.ALWAYS)
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record EndKeys(Optional<BigDecimal> opensLaterS, Optional<BigDecimal> opensErrorS,
            Optional<BigDecimal> closesLaterS, Optional<BigDecimal> closesErrorS) {

        private static EndKeys of(ScanReading.Ends ends) {
            return new EndKeys(JournalLine.cut(ends.opensLaterS(), 0), JournalLine.cut(ends.opensErrorS(), 0),
                    JournalLine.cut(ends.closesLaterS(), 0), JournalLine.cut(ends.closesErrorS(), 0));
        }

        private ScanReading.Ends ends() {
            return new ScanReading.Ends(JournalLine.number(opensLaterS), JournalLine.number(opensErrorS),
                    JournalLine.number(closesLaterS), JournalLine.number(closesErrorS));
        }
    }

    /** When no trail was drawn. */
    record CloudKeys(Instant from, Instant to) {

        /** Refuses what ends before it begins with {@link BadInput}. */
        CloudKeys {
            if (!from.isBefore(to)) {
                throw new BadInput("a cloud ends at " + to + ", not after it begins; put the two in order");
            }
        }

        private Interval cloud() {
            return new Interval(from, to);
        }
    }
}
