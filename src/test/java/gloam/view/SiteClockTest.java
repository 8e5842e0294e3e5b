package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class SiteClockTest {

    @Test
    void clocksShowTheZoneOfTheSite() {
        SiteClock clock = new SiteClock(ZoneId.of("Asia/Kolkata"));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:29:59.949123456+05:30"),
                clock.at(Instant.parse("2027-02-08T23:59:59.949123456Z")));
    }
}
