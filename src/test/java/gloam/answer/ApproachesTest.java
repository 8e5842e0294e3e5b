package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Approaches.Meeting;
import gloam.ephemeris.Body;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.support.Places;
import gloam.units.Angle;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ApproachesTest {

    private static final LocalDate EVENING = LocalDate.of(2020, 12, 21);

    /**
     * The conjunction of Jupiter and Saturn of 2020, 6.1′ at 18:20 UT, as widely printed; geocentric, from
     * memory. It stood 30° east of the Sun, which had set at the equator in longitude 37° east.
     */
    @Test
    void theGreatConjunctionIsFound() {
        List<Meeting> meetings = Approaches.of(OrekitEphemeris.builtIn(), Places.EQUATOR, Angle.ofDegrees(1),
                EVENING,
                EVENING).meetings();
        assertEquals(1, meetings.size());
        Meeting meeting = meetings.get(0);
        assertEquals(Body.JUPITER, meeting.approach().one());
        assertEquals(Body.SATURN, meeting.approach().other());
        assertEquals(366, meeting.approach().separation().arcsec(), 3); // printed to 0.1′
        assertEquals(0, Duration.between(Instant.parse("2020-12-21T18:20:00Z"), meeting.approach().at())
        .toMinutes(), 20);
        assertTrue(meeting.sun().apparentAltitude().degrees() < 0);
        assertEquals(30, meeting.one().airlessAltitude().degrees() - meeting.sun().airlessAltitude()
                .degrees(), 2);
    }

    @Test
    void whatIsFartherApartThanAskedForIsNone() {
        assertTrue(Approaches.of(OrekitEphemeris.builtIn(), Places.EQUATOR, Angle.ofDegrees(0.1), EVENING,
                EVENING)
                .meetings().isEmpty());
    }
}
