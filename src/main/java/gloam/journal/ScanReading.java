package gloam.journal;

import gloam.ephemeris.Direction;
import gloam.gear.Lens;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a scan of the sheet showed.
 *
 * @param file   name of the scan's file, without its folders
 * @param sha256 SHA-256 of the file (FIPS 180-4), 64 hexadecimal digits in small letters
 * @param tone   the sky's tone in the middle
 * @param trails what the trails on it showed; empty of a blank sheet
 */
public record ScanReading(String file, String sha256, Tone tone, Optional<Trails> trails) {

    private static final String DIGEST = "[0-9a-f]{64}";

    /** Refuses what is no digest with {@link BadInput}. */
    public ScanReading {
        if (!sha256.matches(DIGEST)) {
            throw new BadInput("\"" + sha256 + "\" is no SHA-256; give 64 hexadecimal digits in "
                    + "small letters");
        }
    }

    /** What a tone is where the film tells it no more from black or white. */
    public enum Bound {
        NONE, AT_MOST, AT_LEAST
    }

    /**
     * A tone read off a scan.
     *
     * @param stops      from the film's mid-tone, plus is lighter
     * @param errorStops one standard deviation, without that of the computed light; 0 of a bound
     * @param bound      whether it is one
     */
    public record Tone(double stops, double errorStops, Bound bound) {

        private static final Range ERROR = new Range("error of the sky tone", 0, 8, "stops");

        /** Refuses numbers outside their ranges with {@link BadInput}. */
        public Tone {
            Verdict.TONE.check(stops);
            ERROR.check(errorStops);
        }
    }

    /**
     * What the trails showed.
     *
     * @param aim           where the camera pointed, until it was moved
     * @param roll          its turn about its axis
     * @param focalLengthMm its focal length, in mm
     * @param openings      how each opening differed from what was noted
     * @param predicted     how many trails should have marked the sheet
     * @param seen          how many did
     * @param limitMag      V magnitude of the faintest star that leaves a visible trail in the middle, and
     *                      its error; empty where too few trails are near it
     * @param clouds        when no trail was drawn though the shutter was open
     * @param bump          that the camera was moved meanwhile
     */
    public record Trails(Direction aim, Angle roll, double focalLengthMm, List<Ends> openings, int predicted,
            int seen, Optional<Estimate> limitMag, List<Interval> clouds, Optional<Bump> bump) {

        private static final Range LIMIT_ERROR = new Range("error of the faintest trail", 0.01, 5, "mag");
        private static final Range CLOUDS = new Range("number of clouds", 0, 400, "");

        /** Copies the lists; refuses numbers outside their ranges with {@link BadInput}. */
        public Trails {
            openings = List.copyOf(openings);
            clouds = List.copyOf(clouds);
            Exposed.OPENINGS.check(openings.size());
            CLOUDS.check(clouds.size());
            Lens.FOCAL_LENGTH.check(focalLengthMm);
            new Range("number of trails seen", 0, predicted, "").check(seen);
            limitMag.ifPresent(limit -> {
                Outcome.MAGNITUDE.check(limit.mean());
                LIMIT_ERROR.check(limit.sd());
            });
        }
    }

    /**
     * That the camera was moved while the sheet was exposed.
     *
     * @param at  when
     * @param aim where it pointed from then on
     */
    public record Bump(Instant at, Direction aim) {
    }

    /**
     * How an opening differed from what was noted; empty where too few trails showed it.
     *
     * @param opensLaterS  by how much it opened later, in s
     * @param opensErrorS  one standard deviation of that
     * @param closesLaterS by how much it closed later, in s
     * @param closesErrorS one standard deviation of that
     */
    public record Ends(OptionalDouble opensLaterS, OptionalDouble opensErrorS, OptionalDouble closesLaterS,
            OptionalDouble closesErrorS) {
    }
}
