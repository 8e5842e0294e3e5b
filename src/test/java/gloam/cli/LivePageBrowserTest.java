package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
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
            page.locator("#over summary").click();
            picture(page, "live-handover", true);
            Download download = page.waitForDownload(() -> page.locator("#file").click());
            Path handed = folder.resolve("handed.json");
            download.saveAs(handed);
            assertEquals(page.locator("#handed").inputValue(), Files.readString(handed));
            journal(handed, openAt.plus(Duration.ofMinutes(10)));
        }
        assertEquals(List.of(), faults);
    }

    /** What the page hands over goes into the journal, and a second time without harm. */
    private static void journal(Path handed, Instant openedAt) throws IOException {
        Path journal = folder.resolve("journal.jsonl");
        String[] add = {"journal", "add", "--journal", journal.toString(), "--trip", TRIP, "--from-page",
            handed.toString()};
        Run once = Run.of(add);
        assertEquals(0, once.exit(), once.err());
        assertTrue(once.out().contains("Added 1 sheet "), once.out());
        assertTrue(once.out().replaceAll("\\s+", " ").contains("sheet 2, "
                + windows.get(1).get("wish").asString() + ": clouded out, not in the journal"), once.out());
        byte[] lines = Files.readAllBytes(journal);
        JsonNode entry = new ObjectMapper().readTree(lines);
        assertEquals(openedAt, Instant.parse(entry.get("openings").get(0).get("open").asString()),
                entry::toString);
        assertEquals("wind, cable \u201cheld\u201d", entry.get("note").asString());
        Run twice = Run.of(add);
        assertEquals(0, twice.exit(), twice.err());
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
            assertTrue(light.get(1) >= LEAST_CONTRAST, light::toString);
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
