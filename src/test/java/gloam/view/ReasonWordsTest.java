package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.gear.FNumber;
import gloam.planner.Aim;
import gloam.planner.DurationLimit;
import gloam.planner.Plan;
import gloam.planner.Reason;
import gloam.planner.Remedy;
import gloam.planner.SkyKind;
import gloam.planner.TrailLength;
import gloam.planner.Wish;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Angle;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The sentences that stand beside a wish refused. */
class ReasonWordsTest {

    private static final Night NIGHT = Night.of(new AnalyticEphemeris(), Places.MID_NORTH,
            LocalDate.of(2027, 2, 8));
    private static final Instant NINE = LocalDate.of(2027, 2, 8).atTime(21, 0).atZone(Places.MID_NORTH.zone())
            .toInstant();
    private static final Wish WISH = wish(SkyKind.DUSK);

    private static final String COMMAND = " (gloam trail --trip FILE --site \"mid north\" --azimuth 180.00"
            + " --altitude 40.00 --f-number 16 --from 2027-02-08T21:00 --lasts 20m)";

    private static String words(Reason reason) {
        return words(reason, Optional.empty());
    }

    private static String words(Reason reason, Optional<Remedy> remedy) {
        return new ReasonWords(NIGHT).of(new Plan.Refusal(WISH, reason, remedy));
    }

    private static Wish wish(SkyKind sky) {
        return new Wish("wish", new Aim.Point(Direction.ofDegrees(180, 40), Angle.ZERO), sky,
                new Wish.Tone.Near(2), new Wish.Records.Nothing(),
                new TrailLength(OptionalDouble.of(30), OptionalDouble.of(50)), Duration.ofMinutes(30),
                Duration.ofMinutes(60), List.of(), 1, 1, Optional.empty());
    }

    private static Reason.NoDuration between(DurationLimit least, DurationLimit most) {
        return between(SkyKind.DUSK, least, most);
    }

    private static Reason.NoDuration between(SkyKind sky, DurationLimit least, DurationLimit most) {
        return new Reason.NoDuration(wish(sky), least, 30, most, 29, FNumber.exact(Math.pow(2, 3.5)));
    }

    @Test
    void limitsThatExcludeEachOtherAreNamedWithTheirTimes() {
        assertEquals("needs at least 30 min, but too light for tone +2.0 at f/11 after 29 min",
                words(between(DurationLimit.EXPOSURE, DurationLimit.TONE)));
        assertEquals("a trail of 30 mm needs 30 min, but the longest exposure wanted is 29 min",
                words(between(DurationLimit.TRAIL, DurationLimit.EXPOSURE)));
        assertEquals("too dark for tone +2.0 at f/11 before 30 min, but its trail reaches 50 mm after 29 min",
                words(between(DurationLimit.TONE, DurationLimit.TRAIL)));
    }

    /** A kind of sky that asks for one end of an exposure is named there, and only there. */
    @Test
    void theTwilightThatAnExposureOpensOrClosesInIsNamed() {
        assertEquals("opening in dusk needs 30 min, but the time to close leaves 29 min",
                words(between(SkyKind.DUSK, DurationLimit.OPENING, DurationLimit.CLOSING)));
        assertEquals("the time to open needs 30 min, but closing in dawn leaves 29 min",
                words(between(SkyKind.DAWN, DurationLimit.OPENING, DurationLimit.CLOSING)));
        assertEquals("the time to open needs 30 min, but the middle of the exposure leaves 29 min",
                words(between(SkyKind.DARK, DurationLimit.OPENING, DurationLimit.MIDDLE)));
    }

    @Test
    void whoTookTheTimeIsTheSubject() {
        assertEquals("Lion uses that time", words(new Reason.TimeTaken(List.of("Lion"))));
        assertEquals("Lion and Wheel use that time", words(new Reason.TimeTaken(List.of("Lion", "Wheel"))));
        assertEquals("wishes worth more were chosen", words(Reason.Plain.BETTER_CHOSEN));
    }

    @Test
    void aRemedySaysWhenAndWhatIsGivenUp() {
        Reason faint = new Reason.TooFaint(Body.MARS, 0.84,
                new Reason.Exposure(FNumber.marked(16), 20, -2, NINE, Direction.ofDegrees(180, 40)));
        assertEquals("Mars would not record: 0.8 mag too faint at f/16 in 20 min" + COMMAND
                + "; possible from 21:00, one minute long",
                words(faint, Optional.of(new Remedy.Changed(Remedy.Change.SHORTEST, 1, NINE))));
        assertEquals("Mars would not record: 0.8 mag too faint at f/16 in 20 min" + COMMAND
                + "; possible with 4 mm less trail from 21:00",
                words(faint, Optional.of(new Remedy.Changed(Remedy.Change.TRAIL_LENGTH, -3.2, NINE))));
        assertEquals("Mars would not record: 0.8 mag too faint at f/16 in 20 min" + COMMAND + "; possible at "
                + Places.MID_NORTH.name()
                + " from 21:00", words(faint,
                Optional.of(new Remedy.Elsewhere(NIGHT, Optional.of(Places.MID_NORTH), NINE))));
    }
}
