package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.StarCatalogue;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

class AppTest {

    private static final String[] SKY = {"sky", "--lat", "41.05", "--lon", "-2.15", "--height", "1080",
            "--zone",
        "Europe/Madrid", "--at", "2027-02-08T22:30"};

    @Test
    void aBugShowsItsTraceAndExitsWithOne() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Session broken = new Session(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), () -> {
            throw new IllegalStateException("a slip in the code");
        }, StarCatalogue::builtIn, Map.of());
        assertEquals(1, App.run(broken, new PrintWriter(out), new PrintWriter(err), SKY));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("IllegalStateException: a slip in the code"));
        assertTrue(err.toString().contains("\tat "));
    }

    @Test
    void theEphemerisIsNotReadWhereItIsNotNeeded() {
        StringWriter out = new StringWriter();
        Session blind = new Session(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), () -> {
            throw new IllegalStateException("not needed");
        }, () -> {
            throw new IllegalStateException("not needed");
        }, Map.of());
        assertEquals(0, App.run(blind, new PrintWriter(out), new PrintWriter(new StringWriter()), "expose",
                "--sky-mag-arcsec2", "21.5", "--film", "instant-mono-640"));
    }

    @Test
    void badInputLeavesStandardOutputEmpty() {
        Run run = Run.of("sky", "--lat", "95", "--lon", "0", "--height", "0", "--zone", "UTC", "--at",
                "2027-02-08T22:30");
        assertEquals(2, run.exit());
        assertEquals("", run.out());
    }

    @Test
    void outputDependsOnNoLocaleNorZoneOfTheMachine() {
        String usual = Run.of(SKY).out();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-SA-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertEquals(usual, Run.of(SKY).out());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertTrue(usual.contains("°"), "degrees are written as such whatever " + Charset.defaultCharset());
    }

    @Test
    void aFlagTakesNoValue() {
        Run run = Run.of("nights", "--fail-if-empty=yes", "--place", "41.05,-2.15,1080", "--zone",
                "Europe/Madrid", "--from", "2027-02-08");
        assertEquals(2, run.exit());
        assertTrue(run.err().startsWith("option '--fail-if-empty' should be specified without 'yes' "
                + "parameter"), run.err());
    }
}
