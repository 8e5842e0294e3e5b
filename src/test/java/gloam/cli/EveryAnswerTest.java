package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.cli.Answers.Answer;
import gloam.view.JournalExportReport;
import gloam.view.OutputFormat;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;

/** Every kind of answer, on paper of every width. */
class EveryAnswerTest {

    private static final int[] WIDTHS = {40, 60, 80, 100, 200};
    /** Words and figures; what stands round them may change with the layout. */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    private static List<Answer> answers;

    @BeforeAll
    static void ask() throws IOException {
        answers = Answers.all();
        assertTrue(answers.size() > 30, "answers");
        assertEquals(20, answers.stream().map(answer -> answer.report().getClass()).distinct().count(),
                "every kind but what is added to a journal");
    }

    @Test
    void noLineIsWiderThanThePaper() {
        for (Answer answer : answers) {
            if (answer.report() instanceof JournalExportReport) {
                continue;
            }
            for (int width : WIDTHS) {
                answer.text(width).lines()
                        .forEach(line -> assertTrue(line.length() <= width || line.strip().indexOf(' ') < 0,
                        () -> answer + " at " + width + ": " + line));
            }
        }
    }

    /** Columns may leave their table, and an empty one its title; what they say does not. */
    @Test
    void nothingIsLostOnNarrowPaper() throws Exception {
        for (Answer answer : answers) {
            Map<String, Integer> wide = words(answer.text(200));
            titles(answer).forEach((word, times) -> wide.computeIfPresent(word, (same, all) -> all - times));
            for (int width : WIDTHS) {
                Map<String, Integer> narrow = words(answer.text(width));
                wide.forEach((word, times) -> assertTrue(narrow.getOrDefault(word, 0) >= times,
                        () -> answer + " at " + width + " says " + word + " " + narrow.get(word) + " of "
                        + times + " times"));
            }
        }
    }

    /** Every answer is a page: sound XML as well as HTML, whole in itself, with every word of the text. */
    @Test
    void everyAnswerIsAPageWithAllThatTheTextSays() throws Exception {
        for (Answer answer : answers) {
            String page = answer.printed(OutputFormat.HTML, 100);
            StrictFormat.check("html", page.getBytes(StandardCharsets.UTF_8));
            Element html = page(page);
            assertEquals("html", html.getTagName());
            Map<String, Integer> said = words(said(html));
            words(withoutHints(answer.text(200))).forEach((word, times) -> assertTrue(
                    said.getOrDefault(word, 0) >= times, () -> answer + " says " + word + " "
                    + said.get(word) + " of " + times + " times"));
            look(answer, html, new HashSet<>());
        }
    }

    /** What text says of pictures that it leaves out, a page does not say beside them. */
    private static String withoutHints(String text) {
        return text.replaceAll("(?m)^.* in svg and html\\.$", "");
    }

    /** The titles of columns. */
    private static Map<String, Integer> titles(Answer answer) throws Exception {
        NodeList heads = page(answer.printed(OutputFormat.HTML, 100)).getElementsByTagName("thead");
        StringBuilder titles = new StringBuilder();
        for (int i = 0; i < heads.getLength(); i++) {
            titles.append(said(heads.item(i)));
        }
        return words(titles.toString());
    }

    private static Element page(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(page))).getDocumentElement();
    }

    private static void look(Answer answer, Element element, Set<String> ids) {
        assertTrue(!element.getTagName().equals("script") || ids.contains("live"), answer::toString);
        assertTrue(element.getAttribute("id").isEmpty() || ids.add(element.getAttribute("id")),
                answer::toString);
        for (String link : List.of("href", "src", "xlink:href")) {
            assertTrue(element.getAttribute(link).matches("|data:.*|#(sheet|part)-\\d+"),
                    answer::toString);
        }
        assertTrue(!element.getTagName().equals("th") || !element.getAttribute("scope").isEmpty(),
                answer::toString);
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                look(answer, child, ids);
            }
        }
    }

    /** What stands on the page, drawings left out. */
    private static String said(Node node) {
        if (node instanceof Element element && List.of("head", "svg").contains(element.getTagName())) {
            return "";
        }
        StringBuilder said = new StringBuilder(node instanceof Text ? node.getNodeValue() : " ");
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            said.append(said(child));
        }
        return said.toString();
    }

    private static Map<String, Integer> words(String text) {
        Map<String, Integer> words = new TreeMap<>();
        WORD.matcher(text).results().forEach(word -> words.merge(word.group(), 1, Integer::sum));
        return words;
    }
}
