package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Media;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page of a timetable in a real browser, offline; its pictures go to {@code target/page}.
 *
 * <p>Needs a Chromium and a Node.js on the path, or where {@code -Dgloam.chromium=FILE} and {@code
 * -Dgloam.node=FILE} say;
 * without them it fails rather than being left out.
 */
@Tag("installed")
@Tag("browser")
class PageBrowserTest {

    private static final List<String> CHROMIUM = List.of("chromium", "chromium-browser", "google-chrome",
            "chrome");
    private static final List<String> NODE = List.of("node", "nodejs");
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
        Playwright.CreateOptions driver = new Playwright.CreateOptions().setEnv(Map.of(
                "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1", "PLAYWRIGHT_NODEJS_PATH", program("gloam.node",
                NODE).toString()));
        BrowserType.LaunchOptions chromium = new BrowserType.LaunchOptions()
                .setExecutablePath(program("gloam.chromium", CHROMIUM)).setArgs(List.of("--no-sandbox"));
        try (Playwright playwright = Playwright.create(driver); Browser browser = playwright.chromium()
                .launch(chromium)) {
            for (int width : new int[] {390, 1200}) {
                look(browser, file, width);
            }
        }
        assertEquals(List.of(), faults);
    }

    /** What the property says, else the first of these names on the path. */
    private static Path program(String property, List<String> names) {
        return Optional.ofNullable(System.getProperty(property)).map(Path::of).orElseGet(() -> names.stream()
                .flatMap(name -> Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable).findFirst().orElseThrow(() ->
                new IllegalStateException("none of "
                        + String.join(", ", names) + " is on the path; install one or say where it is: -D"
                        + property + "=FILE")));
    }

    private void look(Browser browser, Path file, int width) {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, 900))) {
            Page page = context.newPage();
            page.onConsoleMessage(message -> faults.add(message.type() + ": " + message.text()));
            page.onPageError(faults::add);
            page.onRequest(request -> {
                if (!request.url().startsWith("file:") && !request.url().startsWith("data:")) {
                    faults.add("asks for " + request.url());
                }
            });
            context.setOffline(true);
            page.navigate(file.toUri().toString());
            int cards = page.locator(".card").count();
            assertTrue(cards > 0);
            assertEquals(page.locator("tbody tr:not(.note)").count(), cards);
            assertEquals(cards, page.locator(".card .proof img").count());
            assertEquals(6 * cards, page.locator(".ticks input").count());
            assertTrue(page.locator(".strip svg").first().isVisible());
            assertTrue(page.locator("main").innerText().contains("Cautions"));
            // nothing but the strips and tables, which scroll on their own, may be wider than the page
            assertTrue((int) page.evaluate("document.documentElement.scrollWidth") <= width);
            picture(page, "day-" + width);
            page.locator(".ticks input").first().check();
            page.locator("#red").check();
            assertEquals("rgb(0, 0, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('main')).backgroundColor"));
            assertEquals("rgb(163, 18, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('.card h3')).color"));
            assertEquals("rgb(0, 0, 0)",
                    page.evaluate("getComputedStyle(document.querySelector('.strip .paper')).fill"));
            picture(page, "red-" + width);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertTrue(page.locator("#red").isHidden());
            assertEquals("rgb(255, 255, 255)",
                    page.evaluate("getComputedStyle(document.querySelector('main')).backgroundColor"));
            picture(page, "print-" + width);
        }
    }

    private static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(PICTURES.resolve(name
                + ".png")));
    }
}
