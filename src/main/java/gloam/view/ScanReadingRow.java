package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.journal.Estimate;
import gloam.journal.ScanReading;
import gloam.units.Finite;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a scan of a sheet showed, with the meanings of {@link ScanReading}.
 *
 * @param file   name of the scan's file
 * @param sha256 its SHA-256
 * @param tone   the sky's tone in the middle
 * @param trails what its trails showed; absent of a blank sheet
 */
public record ScanReadingRow(String file, String sha256, ScanToneRow tone, Optional<ScanTrailsRow> trails) {

    static ScanReadingRow of(ScanReading scan, SiteClock clock) {
        return new ScanReadingRow(scan.file(), scan.sha256(), ScanToneRow.of(scan.tone()),
                scan.trails().map(trails -> ScanTrailsRow.of(trails, clock)));
    }

    /**
     * What the trails showed.
     *
     * @param azimuthDeg      where the camera pointed, until it was moved, from north through east
     * @param altitudeDeg     how high
     * @param rollDeg         its turn about its axis
     * @param focalLengthMm   its focal length
     * @param openings        how each opening differed from what was noted
     * @param trailsPredicted how many trails should have marked the sheet
     * @param trailsSeen      how many did
     * @param trailLimitMag   faintest V magnitude that leaves a trail; absent where too few are near it
     * @param limitErrorMag   one standard deviation of that
     * @param clouds          when no trail was drawn though the shutter was open
     * @param bump            that the camera was moved meanwhile; absent where it was not
     */
    public record ScanTrailsRow(double azimuthDeg, double altitudeDeg, double rollDeg, double focalLengthMm,
            List<ScanReading.Ends> openings, int trailsPredicted, int trailsSeen,
            OptionalDouble trailLimitMag, OptionalDouble limitErrorMag, List<Situation.Opening> clouds,
            Optional<BumpRow> bump) {

        static ScanTrailsRow of(ScanReading.Trails trails, SiteClock clock) {
            return new ScanTrailsRow(trails.aim().azimuth().degrees(), trails.aim().altitude().degrees(),
                    trails.roll().signed().degrees(), trails.focalLengthMm(), trails.openings(),
                    trails.predicted(), trails.seen(), Finite.of(trails.limitMag().map(Estimate::mean)),
                    Finite.of(trails.limitMag().map(Estimate::sd)), trails.clouds().stream().map(cloud ->
                    new Situation.Opening(clock.at(cloud.start()), clock.at(cloud.endExclusive()))).toList(),
                    trails.bump().map(bump -> BumpRow.of(bump.at(), trails.aim(), bump.aim(), clock)));
        }
    }

    /** The reading in one line. */
    @JsonIgnore
    String text() {
        return file + ": " + tone.text()
                + trails.map(seen -> ", " + seen.trailsSeen + " of " + seen.trailsPredicted + " trails"
                + (seen.trailLimitMag.isEmpty() ? "" : " to " + Wording.number(
                seen.trailLimitMag.getAsDouble(), 1) + " ± "
                + Wording.number(seen.limitErrorMag.getAsDouble(), 1) + " mag")
                + ", aim " + Wording.direction(seen.azimuthDeg) + "° at "
                + Wording.number(seen.altitudeDeg, 1) + "°"
                + (seen.clouds.isEmpty() ? "" : ", " + Wording.count(seen.clouds.size(), "cloud"))
                + seen.bump.map(bump -> ", bumped at " + Wording.minute(bump.at())).orElse(""))
                .orElse(", blank");
    }
}
