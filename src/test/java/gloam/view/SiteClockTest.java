package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class SiteClockTest {

    @Test
    void clocksShowTheZoneOfTheSiteToATenth() {
        SiteClock clock = new SiteClock(ZoneId.of("Asia/Kolkata"));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:29:59.9+05:30"),
                clock.event(Instant.parse("2027-02-08T23:59:59.949Z")));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:30:00+05:30"),
                clock.event(Instant.parse("2027-02-08T23:59:59.950Z")));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:29:59.949+05:30"),
                clock.asked(Instant.parse("2027-02-08T23:59:59.949Z")));
    }
}
