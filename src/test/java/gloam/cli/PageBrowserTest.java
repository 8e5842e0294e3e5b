package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page of a timetable in a real browser, offline; its pictures go to {@code target/page}.
 */
@Tag("installed")
@Tag("browser")
class PageBrowserTest {

    private static final Path PICTURES = Path.of("target/page");

    @TempDir
    private Path folder;

    private final List<String> faults = new ArrayList<>();

    @Test
    void worksOfflineOnPaperAndOnAPhone() throws Exception {
        Path file = folder.resolve("timetable.html");
        Run run = Run.of("plan", "--trip", "demo-data/trip.yaml", "--out", file.toString());
        assertEquals(0, run.exit(), run.err());
        Files.createDirectories(PICTURES);
        try (Chromium chromium = Chromium.started()) {
            for (int width : new int[] {390, 1200}) {
                look(chromium.browser(), file, width);
            }
        }
        assertEquals(List.of(), faults);
    }

    private void look(Browser browser, Path file, int width) {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, 900))) {
            Page page = Chromium.offline(context, faults);
            page.navigate(file.toUri().toString());
            int cards = page.locator(".card").count();
            assertTrue(cards > 0);
            assertEquals(page.locator("section tbody tr:not(.note)").count(), cards);
            assertEquals(cards, page.locator(".card .proof img").count());
            assertEquals(6 * cards, page.locator(".ticks input").count());
            assertTrue(page.locator(".strip svg").first().isVisible());
            assertTrue(page.locator("main").innerText().contains("Cautions"));
            // nothing but the strips and tables, which scroll on their own, may be wider than the page
            assertTrue((int) page.evaluate("document.documentElement.scrollWidth") <= width);
            picture(page, "day-" + width);
            page.locator(".ticks input").first().check();
            page.locator("[for=red]").click();
            assertEquals("rgb(0, 0, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('.page')).backgroundColor"));
            assertEquals("rgb(245, 0, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('.card h3')).color"));
            assertEquals("rgb(0, 0, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('.strip .paper')).fill"));
            picture(page, "red-" + width);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertTrue(page.locator("#red").isHidden());
            assertEquals("rgb(255, 255, 255)",
                    page.evaluate("getComputedStyle(document.querySelector('.page')).backgroundColor"));
            picture(page, "print-" + width);
        }
    }

    private static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(PICTURES.resolve(name
                + ".png")));
    }
}
