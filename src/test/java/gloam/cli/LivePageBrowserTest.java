package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A night with the page of a timetable, in a real browser with its clock moved; pictures in target/page. */
@Tag("installed")
@Tag("browser")
class LivePageBrowserTest {

    private static final Path PICTURES = Path.of("target/page");
    private static final String TRIP = "demo-data/trip.yaml";
    private static final ZoneId ZONE = ZoneId.of("Europe/Madrid");
    private static final double LEAST_CONTRAST = 4.5;

    @TempDir
    private static Path folder;
    private static Path file;
    private static List<JsonNode> windows;
    private static Chromium chromium;

    private final List<String> faults = new ArrayList<>();

    @BeforeAll
    static void plan() throws IOException {
        file = folder.resolve("timetable.html");
        Path json = folder.resolve("timetable.json");
        Run run = Run.of("plan", "--trip", TRIP, "--out", file.toString(), "--out", json.toString());
        assertEquals(0, run.exit(), run.err());
        windows = Timetables.windows(Files.readString(json));
        Files.createDirectories(PICTURES);
        chromium = Chromium.started();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static BrowserContext phone(int width) {
        return chromium.browser().newContext(new Browser.NewContextOptions().setViewportSize(width, 800)
                .setTimezoneId(ZONE.getId()));
    }

    private static void clock(Page page, Instant at) {
        page.clock().setFixedTime(Date.from(at));
    }

    private static void says(Page page, String place, String words) {
        PlaywrightAssertions.assertThat(page.locator(place)).containsText(words);
    }

    private static String minute(Instant at) {
        return at.atZone(ZONE).toLocalTime().toString().substring(0, 5);
    }

    private static void picture(Page page, String name, boolean whole) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(whole).setPath(PICTURES.resolve(name
                + ".png")));
    }

    @Test
    void aNightOpenedLateReloadedCloudedOutAndHandedOver() throws Exception {
        JsonNode first = windows.get(0);
        Instant openAt = Timetables.at(first, "openAt");
        try (BrowserContext context = phone(390)) {
            Page page = Chromium.offline(context, faults);
            clock(page, openAt.minusSeconds(7 * 60 + 40));
            page.navigate(file.toUri().toString());
            says(page, "#act", minute(openAt) + " open sheet 1");
            says(page, "#countdown", "in 0:07:40");
            picture(page, "live-before", false);
            clock(page, openAt.plus(Duration.ofMinutes(10)));
            says(page, "#countdown", "late by 0:10:00");
            page.locator("#opened").click();
            String close = minute(Timetables.at(first.get("slack").get("openedLate").get(1), "closeAt"));
            says(page, "#act", close + " close sheet 1");
            says(page, "#about", "Opened 10 min late: close");
            page.locator("#sheet-1 input[name=notes]").fill("wind, cable \u201cheld\u201d");
            page.reload();
            says(page, "#act", close + " close sheet 1");
            assertEquals("wind, cable \u201cheld\u201d",
                    page.locator("#sheet-1 input[name=notes]").inputValue());
            assertEquals("Mon " + minute(openAt.plus(Duration.ofMinutes(10))),
                    page.locator("#sheet-1 input[name='opened at']").inputValue());
            page.evaluate("scrollTo(0, 0)");
            picture(page, "live-open", false);
            clock(page, Timetables.at(first.get("slack").get("openedLate").get(1), "closeAt"));
            page.locator("#closed").click();
            says(page, "#act", "sheet 2");
            page.locator("#clouded").click();
            says(page, "#act", "sheet 3");
            page.locator("#undo").click();
            says(page, "#act", "sheet 2");
            page.locator("#clouded").click();
            page.reload();
            says(page, "#act", "sheet 3");
            says(page, "#undo", "undo: sheet 2 clouded out");
            page.locator("#undo").click();
            says(page, "#act", "sheet 2");
            page.locator("#clouded").click();
            page.locator("#over summary").click();
            picture(page, "live-handover", true);
            Path handed = handedOver(page);
            assertEquals(page.locator("#handed").inputValue(), Files.readString(handed));
            journal(handed, openAt.plus(Duration.ofMinutes(10)));
            page.locator("#sheet-1 input[name=notes]").fill("wind; dew at the end");
            String before = Files.readString(folder.resolve("journal.jsonl"));
            Run again = add(handedOver(page));
            assertTrue(again.out().contains("Added 0 sheets "), again.out());
            assertTrue(again.out().contains("wind; dew at the end"), again.out());
            assertEquals(before, Files.readString(folder.resolve("journal.jsonl")));
        }
        assertEquals(List.of(), faults);
    }

    private static Path handedOver(Page page) {
        Download download = page.waitForDownload(() -> page.locator("#file").click());
        Path handed = folder.resolve("handed.json");
        download.saveAs(handed);
        return handed;
    }

    private static Run add(Path handed) {
        Run run = Run.of("journal", "add", "--journal", folder.resolve("journal.jsonl").toString(), "--trip",
                TRIP, "--from-page", handed.toString());
        assertEquals(0, run.exit(), run.err());
        return run;
    }

    /** Whoever forgot the button types the time, of the site's clocks; what is no time changes nothing. */
    @Test
    void timesTypedIntoACardAreHandedOver() throws Exception {
        JsonNode first = windows.get(0);
        Instant openAt = Timetables.at(first, "openAt");
        Instant closeAt = Timetables.at(first, "closeAt");
        try (BrowserContext context = phone(390)) {
            Page page = Chromium.offline(context, faults);
            clock(page, closeAt.plus(Duration.ofMinutes(20)));
            page.navigate(file.toUri().toString());
            type(page, "opened at", minute(openAt.plus(Duration.ofMinutes(3))));
            says(page, "#act", "close sheet 1");
            says(page, "#unfinished", "not opened and then closed: sheet 1");
            type(page, "closed at", "25:61");
            says(page, "#sheet-1", "no time of day");
            type(page, "closed at", minute(closeAt.plus(Duration.ofMinutes(4))));
            says(page, "#act", "sheet 2");
            page.reload();
            JsonNode handed = new ObjectMapper().readTree(page.locator("#handed").inputValue());
            JsonNode sheet = handed.get("nights").get(0).get("windows").get(0);
            assertEquals(openAt.plus(Duration.ofMinutes(3)), Timetables.at(sheet, "openAt"));
            assertEquals(closeAt.plus(Duration.ofMinutes(4)), Timetables.at(sheet, "closeAt"));
        }
        assertEquals(List.of(), faults);
    }

    private static void type(Page page, String field, String words) {
        page.locator("#sheet-1 input[name='" + field + "']").fill(words);
        page.locator("#sheet-1 input[name=notes]").focus();
    }

    /** In the night of 2027-03-28 the clocks of Madrid go from 02:00 to 03:00 (IANA time zone database). */
    @Test
    void aClosingAfterTheClocksChangedHasTheirTime() throws Exception {
        Path trip = Files.writeString(folder.resolve("spring.yaml"), """
                title: Spring
                sites:
                  - {name: Field, latitude-deg: 41, longitude-deg: -2, height-m: 900, zone: Europe/Madrid}
                nights: {from: 2027-03-27, to: 2027-03-27}
                camera: {name: Box, focal-length-mm: 114, frame-mm: 4x5in, f-numbers: [16, 22, 32], spot-um: 40}
                film: instant-mono-640
                sheets: 1
                wishes:
                  - {name: Over the change, point: {azimuth-deg: 0, altitude-deg: 41}, sky: any,
                     tone-at-most-stops: 0, time-of-night: {from: "01:20", to: "04:40"},
                     exposure-min: {shortest: 100, longest: 130}}
                """);
        Path spring = folder.resolve("spring.html");
        Path json = folder.resolve("spring.json");
        Run run = Run.of("plan", "--trip", trip.toString(), "--out", spring.toString(), "--out",
                json.toString());
        assertEquals(0, run.exit(), run.err());
        JsonNode window = Timetables.windows(Files.readString(json)).get(0);
        Instant openAt = Timetables.at(window, "openAt");
        Instant closeAt = Timetables.at(window, "closeAt");
        assertEquals("+01:00", OffsetDateTime.parse(window.get("openAt").stringValue()).getOffset().getId());
        assertEquals("+02:00", OffsetDateTime.parse(window.get("closeAt").stringValue()).getOffset().getId());
        try (BrowserContext context = phone(390)) {
            Page page = Chromium.offline(context, faults);
            clock(page, openAt);
            page.navigate(spring.toUri().toString());
            page.locator("#opened").click();
            says(page, "#act", "Sun " + minute(closeAt) + " close sheet 1");
            clock(page, closeAt);
            page.locator("#closed").click();
            JsonNode sheet = new ObjectMapper().readTree(page.locator("#handed").inputValue()).get("nights")
                    .get(0).get("windows").get(0);
            assertEquals(OffsetDateTime.parse(window.get("closeAt").stringValue()),
                    OffsetDateTime.parse(sheet.get("closeAt").stringValue()));
        }
        assertEquals(List.of(), faults);
    }

    /** The page promises no tone and no lit screen where the browser has none or has not allowed it yet. */
    @Test
    void saysWhereItCannotRingOrKeepTheScreenOn() {
        try (BrowserContext context = phone(390)) {
            Page page = Chromium.offline(context, faults);
            clock(page, Timetables.at(windows.get(0), "openAt").minusSeconds(600));
            page.navigate(file.toUri().toString());
            says(page, "#told", "Silent until a button is pressed.");
            page.locator("#ring").click();
            PlaywrightAssertions.assertThat(page.locator("#told")).not().containsText("Silent");
            PlaywrightAssertions.assertThat(page.locator("#ring")).isHidden();
        }
        try (BrowserContext context = phone(390)) {
            context.addInitScript("delete window.AudioContext; delete window.webkitAudioContext;"
                    + "Object.defineProperty(Navigator.prototype, 'vibrate', {value: undefined});"
                    + "Object.defineProperty(Navigator.prototype, 'wakeLock', {value: undefined});");
            Page page = Chromium.offline(context, faults);
            clock(page, Timetables.at(windows.get(0), "openAt").minusSeconds(600));
            page.navigate(file.toUri().toString());
            says(page, "#told", "makes no sound: watch the countdown");
            says(page, "#told", "does not keep the screen awake");
        }
        assertEquals(List.of(), faults);
    }

    /** After the last sheet it offers no sound and promises none. */
    @Test
    void isSilentAfterTheTrip() {
        try (BrowserContext context = phone(390)) {
            Page page = Chromium.offline(context, faults);
            clock(page, Timetables.at(windows.get(windows.size() - 1), "closeAt").plus(Duration.ofDays(2)));
            page.navigate(file.toUri().toString());
            says(page, "#act", "No more sheets on this trip");
            PlaywrightAssertions.assertThat(page.locator("#ring")).isHidden();
            PlaywrightAssertions.assertThat(page.locator("#told")).isEmpty();
            assertTrue(page.locator("#live button").all().stream().noneMatch(Locator::isVisible));
        }
        assertEquals(List.of(), faults);
    }

    /** What the page hands over goes into the journal, and a second time without harm. */
    private static void journal(Path handed, Instant openedAt) throws IOException {
        Path journal = folder.resolve("journal.jsonl");
        Run once = add(handed);
        assertTrue(once.out().contains("Added 1 sheet "), once.out());
        assertTrue(once.out().replaceAll("\\s+", " ").contains("sheet 2, "
                + windows.get(1).get("wish").asString() + ": clouded out, not in the journal"), once.out());
        byte[] lines = Files.readAllBytes(journal);
        JsonNode entry = new ObjectMapper().readTree(lines);
        assertEquals(openedAt, Instant.parse(entry.get("openings").get(0).get("open").asString()),
                entry::toString);
        assertEquals("wind, cable \u201cheld\u201d", entry.get("note").asString());
        Run twice = add(handed);
        assertTrue(twice.out().contains("Added 0 sheets "), twice.out());
        assertEquals(new String(lines), Files.readString(journal));
    }

    @Test
    void theRedViewIsOnlyRedInThreeBrightnessesAndKept() throws Exception {
        try (BrowserContext context = phone(360)) {
            Page page = Chromium.offline(context, faults);
            clock(page, Timetables.at(windows.get(0), "openAt").minusSeconds(60));
            page.navigate(file.toUri().toString());
            page.locator("[for=red]").click();
            page.locator("#sheet-1 .ticks input").first().check();
            page.locator("#opened").focus();
            page.evaluate("getSelection().selectAllChildren(document.querySelector('h1'))");
            List<Double> light = new ArrayList<>();
            for (String level : List.of("low", "middle", "bright")) {
                page.locator("[for=" + level + "]").click();
                onlyRed(page, level);
                light.add(contrast(page));
            }
            assertTrue(light.get(0) < light.get(1) && light.get(1) < light.get(2), light::toString);
            assertTrue(light.get(0) >= LEAST_CONTRAST, light::toString);
            page.locator("[for=low]").click();
            page.reload();
            assertTrue(page.locator("#red").isChecked() && page.locator("#low").isChecked());
            assertTrue(page.locator("#sheet-1 .ticks input").first().isChecked());
            picture(page, "live-red-360", true);
        }
        assertEquals(List.of(), faults);
    }

    private static void onlyRed(Page page, String level) throws IOException {
        byte[] png = page.screenshot(new Page.ScreenshotOptions().setFullPage(true));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int at = y;
                assertTrue((rgb & 0xffff) == 0,
                        () -> level + ": " + Integer.toHexString(rgb) + " in row " + at);
            }
        }
    }

    /** Contrast of the text with black, as WCAG 2.2 has it. */
    private static double contrast(Page page) {
        String colour = (String) page.evaluate("getComputedStyle(document.querySelector('h1')).color");
        double red = Integer.parseInt(colour.replaceAll("rgb\\((\\d+),.*", "$1")) / 255.0;
        double linear = red <= 0.04045 ? red / 12.92 : Math.pow((red + 0.055) / 1.055, 2.4);
        return (0.2126 * linear + 0.05) / 0.05;
    }

    @Test
    void nothingIsCutOffOnASmallPhone() {
        try (BrowserContext context = phone(360)) {
            Page page = Chromium.offline(context, faults);
            page.navigate(file.toUri().toString());
            page.locator("#over summary").click();
            assertEquals(List.of(), page.evaluate("""
                    [...document.querySelectorAll('body *')].filter(part => {
                      const box = part.getBoundingClientRect();
                      return box.width > 1 && !part.matches('thead, thead *')
                        && (box.right > 360.5 || box.left < -0.5);
                    }).map(part => part.tagName + '.' + part.className + ' ' + part.textContent.slice(0, 40))
                    """));
            for (String id : List.of("opened", "skip", "clouded")) {
                assertTrue(page.locator("#" + id).isHidden()
                        || page.locator("#" + id).boundingBox().height >= 48);
            }
            picture(page, "live-360", true);
        }
        assertEquals(List.of(), faults);
    }

    /** Days before the trip the countdown has its longest words; 240 px are less than a card likes. */
    @Test
    void theCountdownKeepsToOneLineAndCardsToTheWindow() {
        try (BrowserContext context = phone(360)) {
            Page page = Chromium.offline(context, faults);
            clock(page, Timetables.at(windows.get(0), "prepareAt").minus(Duration.ofDays(187))
                    .minusSeconds(23 * 3600 + 59 * 60 + 8));
            page.navigate(file.toUri().toString());
            says(page, "#countdown", "in 187 d 23:59:08");
            assertEquals(1, page.evaluate("""
                    (() => {
                      const words = document.createRange();
                      words.selectNodeContents(document.querySelector('#countdown'));
                      return new Set([...words.getClientRects()].map(line => line.top)).size;
                    })()"""));
            page.setViewportSize(240, 800);
            assertEquals(List.of(), page.evaluate("[...document.querySelectorAll('.card')].map(card => "
                    + "card.getBoundingClientRect().right).filter(right => right > 240.5)"));
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void withoutJavaScriptEverySheetIsReached() {
        try (BrowserContext context = chromium.browser().newContext(new Browser.NewContextOptions()
                .setJavaScriptEnabled(false).setColorScheme(ColorScheme.DARK).setViewportSize(390, 800))) {
            Page page = Chromium.offline(context, faults);
            page.navigate(file.toUri().toString());
            assertEquals(windows.size(), page.locator("#live .evenings a").count());
            page.locator("#live .evenings a").last().click();
            assertTrue(page.url().endsWith("#sheet-" + windows.size()), page.url());
            PlaywrightAssertions.assertThat(page.locator("body")).hasCSS("background-color",
                    Pattern.compile("rgb\\(21, 19, 15\\)"));
            picture(page, "live-no-script", false);
        }
        assertEquals(List.of(), faults);
    }
}
