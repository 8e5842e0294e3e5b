package gloam.cli;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A Chromium, driven by a Node.js: those on the path, or where {@code -Dgloam.chromium=FILE} and {@code
 * -Dgloam.node=FILE} say; without them tests fail rather than being left out.
 */
record Chromium(Playwright playwright, Browser browser) implements AutoCloseable {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome",
            "chrome");
    private static final List<String> NODE = List.of("node", "nodejs");

    static Chromium started() {
        Playwright.CreateOptions driver = new Playwright.CreateOptions().setEnv(Map.of(
                "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1", "PLAYWRIGHT_NODEJS_PATH", program("gloam.node",
                NODE).toString()));
        Playwright playwright = Playwright.create(driver);
        return new Chromium(playwright, playwright.chromium().launch(new BrowserType.LaunchOptions()
                .setExecutablePath(program("gloam.chromium", NAMES)).setArgs(List.of("--no-sandbox"))));
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

    /** A page without a network, of which it notes what it writes to the console, fails in or asks for. */
    static Page offline(BrowserContext context, List<String> faults) {
        Page page = context.newPage();
        page.onConsoleMessage(message -> faults.add(message.type() + ": " + message.text()));
        page.onPageError(faults::add);
        page.onRequest(request -> {
            if (!request.url().startsWith("file:") && !request.url().startsWith("data:")) {
                faults.add("asks for " + request.url());
            }
        });
        context.setOffline(true);
        return page;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
