package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pages of every kind of answer in a real browser, on telephones and a desk, by day, dark and red, and on
 * paper: nothing is wider than the screen, and the red view is red alone. The pictures go to {@code
 * target/page}.
 */
@Tag("installed")
@Tag("browser")
class PagesBrowserTest {

    private static final Path PICTURES = Path.of("target/page");
    /** Of 255: what edges of letters and pictures come to by rounding. */
    private static final int MOST_GREEN_OR_BLUE = 12;

    private static final int WIDE = 400;
    /** Texts of drawings that can be seen and are less than nine pixels high. */
    private static final String SMALL_LETTERS = """
            [...document.querySelectorAll('svg text')].filter(text => text.getClientRects().length).map(text => {
                const scale = text.getScreenCTM();
                return [parseFloat(getComputedStyle(text).fontSize) * Math.hypot(scale.a, scale.b), text];
            }).filter(text => text[0] < 8.95).map(text => text[0] + ' ' + text[1].textContent)""";

    /** Drawings wider than their place that do not say so, and others that do. */
    private static final String UNSAID_WIDTHS = """
            [...document.querySelectorAll('.strip:has(svg):not(:has(.sky))')]
            .filter(part => part.scrollWidth > part.clientWidth + 1
                !== part.querySelector('.more').offsetHeight > 9)
            .map(part => part.scrollWidth + ' ' + part.getAttribute('aria-label'))""";

    /** Parts of a card that can be seen whole only by moving them sideways. */
    private static final String SIDEWAYS = """
            [...document.querySelectorAll('.card .wide')].filter(part => part.scrollWidth > part.clientWidth + 1)
            .map(part => part.textContent)""";
    /** Tables of which a part is seen on a desk only by moving them sideways. */
    private static final String WIDE_TABLES = """
            [...document.querySelectorAll('.page .wide')]
            .filter(part => part.scrollWidth > part.clientWidth + 1)
            .map(part => part.scrollWidth + ' ' + part.getAttribute('aria-label'))""";
    /** Texts on paper of less than eight points, which is 10.67 pixels of style sheets. */
    private static final String FINE_PRINT = """
            [...document.querySelectorAll('body *')].filter(part => part.getClientRects().length
                && [...part.childNodes].some(child => child.nodeType === 3 && child.data.trim())).map(part => {
                const scale = part.getScreenCTM ? part.getScreenCTM() : {a: 1, b: 0};
                return [parseFloat(getComputedStyle(part).fontSize) * Math.hypot(scale.a, scale.b), part];
            }).filter(part => part[0] < 10.6).map(part => part[0] + ' ' + part[1].textContent)""";
    /** What is of use on a screen alone, dates in two pieces, notes of a table that its cards have too. */
    private static final String NOT_FOR_PAPER = """
            [...document.querySelectorAll('button, a, summary + nav, .switch, section:has(+ .cards) .note'),
              ...[...document.querySelectorAll('time')].filter(date => date.getClientRects().length > 1)]
            .filter(part => part.getClientRects().length).map(part => part.outerHTML)""";
    /** Times of day that a line's end cuts in two. */
    private static final String CUT_TIMES = """
            [...document.querySelectorAll('th, td, .time')].flatMap(part => {
                const walk = document.createTreeWalker(part, NodeFilter.SHOW_TEXT), cut = [];
                for (let text = walk.nextNode(); text; text = walk.nextNode())
                    for (const time of text.data.matchAll(/\\d\\d:\\d\\d/g)) {
                        const range = document.createRange();
                        range.setStart(text, time.index);
                        range.setEnd(text, time.index + time[0].length);
                        if (new Set([...range.getClientRects()].map(line => line.top)).size > 1) {
                            cut.push(text.data);
                        }
                    }
                return cut;
            })""";
    /** Cards higher than half of an A5 sheet within its margins of 8 mm. */
    private static final String HIGH_CARDS = """
            [...document.querySelectorAll('.card')].map(card => card.offsetHeight * 25.4 / 96)
            .filter(high => high > (210 - 2 * 8 - 2) / 2)""";

    @TempDir
    private Path folder;

    private final List<String> faults = new ArrayList<>();

    private Map<String, String> questions() throws IOException {
        String camera = " --place 41.05,-2.15,1080 --zone Europe/Madrid --film instant-mono-640"
                + " --focal-length 120 --frame 80x80";
        Map<String, String> all = new LinkedHashMap<>();
        all.put("arctic", "plan --trip demo-data/trip-arctic.yaml");
        all.put("polar-day", "sky --place 70,25,10 --zone Europe/Oslo --night 2027-06-21");
        all.put("south", "plan --trip demo-data/trip-south.yaml");
        all.put("many", "plan --trip " + Files.writeString(folder.resolve("many.yaml"), many()));
        all.put("check", "check --trip " + folder.resolve("many.yaml"));
        all.put("nights", "nights --trip demo-data/trip-arctic.yaml --stay 2");
        all.put("trail", "trail" + camera + " --azimuth 250 --altitude 14 --roll 10"
                + " --from 2027-02-08T20:00 --lasts 40m --f-number 8");
        all.put("proof", "proof --size 200" + camera + " --azimuth 150 --altitude 40"
                + " --from 2027-02-08T22:00 --lasts 40m --f-number 8");
        all.put("contact", "proof --contact" + camera + " --azimuth 150 --altitude 40"
                + " --from 2027-02-08T22:00 --lasts 40m --f-number 8,11");
        all.put("expose", "expose" + camera + " --azimuth 150 --altitude 40 --from 2027-02-14T20:00 --tone -1"
                + " --f-number 8");
        all.put("sky", "sky --place 41.05,-2.15,1080 --zone Europe/Madrid --night 2027-02-14");
        all.put("map", "sky --place 41.05,-2.15,1080 --zone Europe/Madrid --at 2027-02-14T21:00 --map");
        all.put("fit", "journal fit --journal demo-data/journal.jsonl --film instant-mono-640");
        all.put("guide", "journal guide");
        all.put("year", "nights --place 41.05,-2.15,1080 --zone Europe/Madrid --from 2027-01-01"
                + " --to 2027-12-31");
        all.put("measure", "measure demo-data/frame.jpg --trip demo-data/trip.yaml");
        all.put("read", JournalReadTest.question(folder));
        all.put("stats", "journal stats --journal demo-data/journal.jsonl --pack-sheets 8");
        all.put("list", "journal list --journal demo-data/journal.jsonl");
        return all;
    }

    /** Fourteen nights and twelve wishes, named in seven writings, some without a place to break a line. */
    private static String many() {
        List<String> names = List.of("星の軌跡を撮る長い名前の願い", "نجوم الجنوب فوق الجبل", "Закат над прудом",
                "כוכב הצפון", "Ορίων πάνω από τη λίμνη", "ดาวเหนือเหนือทุ่งนาที่เงียบสงบ", "별이 흐르는 밤",
                "A long name that never seems to come to its end at all", "Onewordthathasnoplacetobreakaline"
                + "andisfarlongerthanatelephoneiswide");
        StringBuilder trip = new StringBuilder("""
                title: Fourteen nights
                sites: [{name: "Loma Callada", place: "41.05,-2.15,1080", zone: Europe/Madrid}]
                nights: {from: 2027-02-01, to: 2027-02-14}
                camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 14
                wishes:
                  - {name: Moon, follow: {body: moon}, exposure-min: {shortest: 20, longest: 40}}
                  - {name: Pole, pole: {}, exposure-min: {shortest: 60, longest: 120}, tone-at-most-stops: -1}
                  - {name: Dawn, point: {azimuth-deg: 110, altitude-deg: 15}, sky: dawn,
                     exposure-min: {shortest: 10, longest: 20}}
                """);
        for (int i = 0; i < names.size(); i++) {
            trip.append("  - {name: \"").append(names.get(i)).append("\", point: {azimuth-deg: ")
                    .append(80 + 20 * i).append(", altitude-deg: 40}, exposure-min: {shortest: 20, longest: "
                    + "40}}\n");
        }
        return trip.toString();
    }

    @Test
    void fitEveryScreenAndPaperAndAreRedInTheRedView() throws Exception {
        Files.createDirectories(PICTURES);
        try (Chromium chromium = Chromium.started()) {
            for (Map.Entry<String, String> question : questions().entrySet()) {
                Path file = folder.resolve(question.getKey() + ".html");
                Run run = Run.of((question.getValue() + " --out " + file).split(" "));
                assertEquals(0, run.exit(), question + run.err());
                boolean timetable = question.getValue().startsWith("plan");
                for (int width : timetable ? new int[] {360, 390, 1280} : new int[] {360, 390, 1280}) {
                    for (String view : timetable ? List.of("day", "dark", "red") : List.of("day", "red")) {
                        look(chromium.browser(), question.getKey(), file, width, view);
                    }
                }
            }
        }
        assertEquals(List.of(), faults);
    }

    /** Eight points: common practice for small print, no source. */
    @Test
    void paperHasLegibleLettersNothingForScreensAndTwoCardsOnAnA5() throws Exception {
        try (Chromium chromium = Chromium.started()) {
            for (String name : List.of("trip", "trip-arctic", "trip-south")) {
                Path file = folder.resolve(name + ".html");
                Run.printed("plan --trip demo-data/" + name + ".yaml --out " + file);
                for (int wideMm : List.of(210 - 2 * 12, 148 - 2 * 8)) {
                    int wide = (int) (wideMm / 25.4 * 96);
                    try (BrowserContext context = chromium.browser().newContext(
                            new Browser.NewContextOptions().setViewportSize(wide, 800))) {
                        Page page = Chromium.offline(context, faults);
                        page.navigate(file.toUri().toString());
                        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
                        String where = name + ", " + wideMm + " mm";
                        assertEquals(List.of(), page.evaluate(FINE_PRINT), where);
                        assertEquals(List.of(), page.evaluate(NOT_FOR_PAPER), where);
                        assertEquals(List.of(), page.evaluate(CUT_TIMES), where);
                        int scrolled = (int) page.evaluate("document.documentElement.scrollWidth");
                        assertTrue(scrolled <= wide, where);
                        assertEquals(List.of(), wideMm > 140 ? List.of() : page.evaluate(HIGH_CARDS), where);
                    }
                }
            }
        }
        assertEquals(List.of(), faults);
    }

    /**
     * An evening of one sheet has a page of its own and no more, as on A5 all but one of the demo have. A
     * larger font than that with which pages were counted may need one more.
     */
    @Test
    void paperIsFull() throws Exception {
        Map<String, Integer> most = Map.of("trip A5", 7, "trip A4", 6, "trip Letter", 6, "trip-arctic A5", 3,
                "trip-arctic A4", 2, "trip-arctic Letter", 2, "trip-south A5", 3, "trip-south Letter", 2);
        try (Chromium chromium = Chromium.started();
                BrowserContext context = chromium.browser().newContext()) {
            Page page = Chromium.offline(context, faults);
            for (String print : most.keySet()) {
                String[] part = print.split(" ");
                Path file = folder.resolve(part[0] + ".html");
                Run.printed("plan --trip demo-data/" + part[0] + ".yaml --out " + file);
                page.navigate(file.toUri().toString());
                String pdf = new String(page.pdf(new Page.PdfOptions().setFormat(part[1])),
                        StandardCharsets.ISO_8859_1);
                long pages = Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
                assertTrue(pages > 0 && pages <= most.get(print) + 1, print + ": " + pages + " pages");
            }
        }
        assertEquals(List.of(), faults);
    }

    /** Contrast by WCAG 2.2: 4.5 is the least of text (1.4.3), also at the lowest level. */
    @Test
    void theRedViewHasThreeBrightnesses() throws Exception {
        Path file = folder.resolve("guide.html");
        Run.printed("journal guide --out " + file);
        try (Chromium chromium = Chromium.started();
                BrowserContext context = chromium.browser().newContext()) {
            Page page = Chromium.offline(context, faults);
            page.navigate(file.toUri().toString());
            page.locator("[for=red]").click();
            double low = contrast(page, "low");
            double middle = contrast(page, "middle");
            assertTrue(low >= 4.5 && middle > low && contrast(page, "bright") > middle, low + " " + middle);
        }
        assertEquals(List.of(), faults);
    }

    /** Of red letters on black. */
    private static double contrast(Page page, String level) {
        page.locator("[for=" + level + "]").click();
        String ink = (String) page.evaluate("getComputedStyle(document.querySelector('h1')).color");
        assertTrue(ink.matches("rgb\\(\\d+, 0, 0\\)"), ink);
        double red = Integer.parseInt(ink.substring(4, ink.indexOf(','))) / 255.0;
        return (0.2126 * Math.pow((red + 0.055) / 1.055, 2.4) + 0.05) / 0.05;
    }

    private void look(Browser browser, String name, Path file, int width, String view) throws IOException {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, 800)
                .setColorScheme(view.equals("dark") ? ColorScheme.DARK : ColorScheme.LIGHT))) {
            Page page = Chromium.offline(context, faults);
            page.navigate(file.toUri().toString());
            if (view.equals("red")) {
                page.locator("[for=red]").click();
            }
            int wide = (int) page.evaluate("document.documentElement.scrollWidth");
            assertTrue(wide <= width, name + " " + width + " " + view + ": " + wide);
            byte[] picture = page.screenshot(new Page.ScreenshotOptions().setFullPage(true)
                    .setPath(PICTURES.resolve(name + "-" + width + "-" + view + ".png")));
            assertEquals(List.of(), page.evaluate(SIDEWAYS), name + " " + width);
            if (width > WIDE) {
                assertEquals(List.of(), page.evaluate(WIDE_TABLES), name + " " + width);
            }
            assertEquals(List.of(), page.evaluate(UNSAID_WIDTHS), name + " " + width);
            assertAccessible(page, name + " " + width + " " + view);
            if (width < WIDE) {
                assertEquals(List.of(), page.evaluate(SMALL_LETTERS), name + " " + width);
            }
            if (view.equals("red")) {
                assertRed(name + " " + width, picture);
            }
            if (view.equals("day") && width == 1280) {
                for (String paper : List.of("A4", "A5")) {
                    page.pdf(new Page.PdfOptions().setFormat(paper)
                            .setPath(PICTURES.resolve(name + "-" + paper + ".pdf")));
                }
            }
        }
    }

    /** The rules of axe-core: who sees little or nothing, or has no mouse, can use the page. */
    private static void assertAccessible(Page page, String what) throws IOException {
        try (InputStream axe = PagesBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            page.evaluate(new String(axe.readAllBytes(), StandardCharsets.UTF_8));
        }
        assertEquals(List.of(), page.evaluate("axe.run({resultTypes: ['violations']}).then(found => found"
                + ".violations.map(rule => rule.id + ': ' + rule.nodes[0].html))"), what);
    }

    private static void assertRed(String what, byte[] png) throws IOException {
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
        int most = 0;
        String where = "";
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int colour = picture.getRGB(x, y);
                int other = Math.max(colour >> 8 & 255, colour & 255);
                if (other > most) {
                    most = other;
                    where = what + " at " + x + ", " + y + ": " + Integer.toHexString(colour);
                }
            }
        }
        assertTrue(most <= MOST_GREEN_OR_BLUE, where);
    }
}
