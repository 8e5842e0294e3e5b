package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.cli.Answers.Answer;
import gloam.units.BadInput;
import gloam.view.OutputFormat;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What every drawing has, of every kind of answer: alone and in pages. */
class EveryDrawingTest {

    private static final List<String> MORE = List.of(
            "expose --from 2027-02-14T22:00 --tone -1 --film instant-mono-640 --focal-length 120 --f-number 8"
            + " --azimuth 200 --altitude 40 --place 41.05,-2.15,1080 --zone Europe/Madrid",
            "proof --contact --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T21:00"
            + " --lasts 1h --f-number 8,11 --size 64",
            "sky --place 41.05,-2.15,1080 --zone Europe/Madrid --at 2027-02-14T21:00 --map",
            "journal guide", "journal stats --journal demo-data/journal.jsonl --pack-sheets 8",
            "measure demo-data/frame.jpg --trip demo-data/trip.yaml");

    /** Width of a letter by its height. */
    private static final double NARROW = 0.42;

    @TempDir
    static Path folder;

    private static List<Answer> drawn;

    @BeforeAll
    static void ask() throws IOException {
        drawn = new ArrayList<>(Answers.all());
        MORE.forEach(line -> Answers.add(drawn, List.of(line.split(" "))));
        Answers.add(drawn, List.of(JournalReadTest.question(folder).split(" ")));
        drawn.removeIf(answer -> {
            try {
                OutputFormat.SVG.check(answer.report());
                return false;
            } catch (BadInput none) {
                return true;
            }
        });
        assertTrue(drawn.stream().map(answer -> answer.report().getClass()).distinct().count() >= 14);
    }

    /** A size, a name, and the line that says by what it was made, from what and when. */
    @Test
    void saysWhatItIsAndWhatItComesFrom() throws Exception {
        for (Answer answer : drawn) {
            Element svg = svg(answer.printed(OutputFormat.SVG, 100)).getDocumentElement();
            assertTrue(svg.getAttribute("width").matches("[\\d.]+(mm|px)"), answer::toString);
            assertTrue(svg.getAttribute("height").matches("[\\d.]+(mm|px)"), answer::toString);
            Element title = (Element) svg.getElementsByTagName("title").item(0);
            assertEquals(svg, title.getParentNode(), answer::toString);
            assertTrue(title.getTextContent().length() > 5, answer::toString);
            List<String> texts = texts(svg).stream().map(Element::getTextContent).toList();
            assertEquals(1, texts.stream().filter(text -> text.matches(
                    "Gloam 1, trip.yaml, made \\w{3} \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d \\(UTC.*\\)"))
                    .count(), () -> answer + ": " + texts);
        }
    }

    /** Drawings of a page say so too, and its foot. */
    @Test
    void pagesSayWhatTheyComeFrom() throws Exception {
        for (Answer answer : drawn) {
            Element page = svg(answer.printed(OutputFormat.HTML, 100)).getDocumentElement();
            NodeList drawings = page.getElementsByTagName("svg");
            for (int i = 0; i < drawings.getLength(); i++) {
                Element drawing = (Element) drawings.item(i);
                if (drawing.getAttribute("class").contains("drawing")) {
                    assertEquals(1, texts(drawing).stream().filter(text -> text.getTextContent()
                            .startsWith("Gloam 1, trip.yaml, made ")).count(), answer::toString);
                }
            }
            assertTrue(page.getElementsByTagName("footer").item(0).getTextContent()
                    .startsWith("Gloam 1, trip.yaml, made "), answer::toString);
        }
    }

    /** The version is that of the program, the files those of the options, without their folders. */
    @Test
    void theFilesAreThoseOfTheOptions() {
        String svg = Run.printed("nights --trip demo-data/trip.yaml --format svg");
        assertTrue(svg.contains(">Gloam (unpackaged build), trip.yaml, made "), svg);
        String without = Run.printed("journal guide --format svg");
        assertTrue(without.contains(">Gloam (unpackaged build), made "), without);
        String page = Run.printed("expose --trip demo-data/trip.yaml --film instant-mono-640"
                + " --journal demo-data/journal.jsonl "
                + "--azimuth 0 --altitude 41 --from 2027-02-08T21:00 --format html");
        assertTrue(page.contains(">Gloam (unpackaged build), trip.yaml, journal.jsonl, made "), page);
    }

    /** No text runs into another one or out of the drawing; letters are taken for narrow. */
    @Test
    void everyTextHasAPlaceOfItsOwn() throws Exception {
        for (Answer answer : drawn) {
            Element svg = svg(answer.printed(OutputFormat.SVG, 100)).getDocumentElement();
            String[] size = svg.getAttribute("viewBox").split(" ");
            Rectangle2D paper = new Rectangle2D.Double(0, 0, Double.parseDouble(size[2]),
                    Double.parseDouble(size[3]));
            List<Rectangle2D> places = new ArrayList<>();
            for (Element text : texts(svg)) {
                if (!text.getTextContent().isEmpty() && around(text) == svg) {
                    Rectangle2D box = box(text, Double.parseDouble(svg.getAttribute("font-size")));
                    assertTrue(paper.contains(box), () -> answer + ": " + text.getTextContent());
                    assertTrue(places.stream().noneMatch(box::intersects), () -> answer + ": "
                            + text.getTextContent());
                    places.add(box);
                }
            }
        }
    }

    /** Programs for drawing let an inner drawing run over its edge, whatever it says, unless it is cut. */
    @Test
    void whatRunsOverAnInnerEdgeIsCutByAPath() throws Exception {
        int cut = 0;
        for (Answer answer : drawn) {
            Element svg = svg(answer.printed(OutputFormat.SVG, 100)).getDocumentElement();
            NodeList inner = svg.getElementsByTagName("svg");
            for (int i = 0; i < inner.getLength(); i++) {
                String path = ((Element) inner.item(i).getParentNode()).getAttribute("clip-path");
                assertTrue(path.startsWith("url(#"), answer::toString);
                String id = path.substring(5, path.length() - 1);
                NodeList paths = svg.getElementsByTagName("clipPath");
                assertEquals(1, IntStream.range(0, paths.getLength()).filter(n -> ((Element) paths.item(n))
                        .getAttribute("id").equals(id)).count(), answer::toString);
                cut++;
            }
        }
        assertTrue(cut >= 4);
    }

    /** Numbers of sheets stand beside the curves of a fit. */
    @Test
    void noCurveRunsThroughTheNumberOfASheet() throws Exception {
        Element fit = svg(Run.printed("journal fit --journal demo-data/journal.jsonl --film instant-mono-640"
                + " --format svg")).getDocumentElement();
        List<Line2D> curves = new ArrayList<>();
        for (Element curve : elements(fit, "polyline")) {
            String[] points = curve.getAttribute("points").split("[ ,]");
            for (int i = 0; i + 3 < points.length; i += 2) {
                curves.add(line(points[i], points[i + 1], points[i + 2], points[i + 3]));
            }
        }
        List<Element> numbers = texts(fit).stream().filter(text -> text.getAttribute("class")
                .startsWith("entry")).toList();
        assertTrue(numbers.size() >= 9 && curves.size() > 20, numbers.size() + " " + curves.size());
        numbers.forEach(number -> assertTrue(curves.stream().noneMatch(box(number, 3)::intersectsLine),
                number::getTextContent));
    }

    /** Every hour has its point on the curves of a night; no line to an event runs through another one. */
    @Test
    void aNightHasPointsAtItsHoursAndEventsThatAreClear() throws Exception {
        Element night = svg(Run.printed("sky --place 41.05,-2.15,1080 --zone Europe/Madrid --night 2027-02-14"
                + " --format svg")).getDocumentElement();
        List<Line2D> lines = new ArrayList<>();
        Set<String> hours = new HashSet<>();
        for (Element path : elements(night, "path")) {
            String[] steps = path.getAttribute("d").substring(1).split("[ vV]");
            if (path.getAttribute("d").matches("M[\\d.]+ [\\d.]+V[\\d.]+")) {
                lines.add(line(steps[0], steps[1], steps[0], steps[2]));
            } else if (path.getAttribute("d").matches("M[\\d.]+ [\\d.]+v[\\d.]+")) {
                hours.add(steps[0]);
            }
        }
        List<Element> events = texts(night).stream().filter(text -> text.getTextContent()
                .matches("[A-Za-z ]+ \\d\\d:\\d\\d")).toList();
        assertEquals(events.size(), lines.size());
        assertTrue(events.size() >= 9 && hours.size() == 16, events.size() + " " + hours);
        for (int i = 0; i < events.size(); i++) {
            Rectangle2D box = box(events.get(i), 3);
            Line2D own = lines.get(i);
            assertTrue(lines.stream().noneMatch(line -> line != own && box.intersectsLine(line)),
                    events.get(i).getTextContent());
        }
        List<Element> points = elements(night, "circle");
        assertTrue(points.size() > 5 * hours.size(), points::toString);
        points.forEach(point -> assertTrue(hours.contains(point.getAttribute("cx")), hours::toString));
    }

    private static Line2D line(String x1, String y1, String x2, String y2) {
        return new Line2D.Double(Double.parseDouble(x1), Double.parseDouble(y1), Double.parseDouble(x2),
                Double.parseDouble(y2));
    }

    private static Node around(Element text) {
        Node around = text.getParentNode();
        while (!around.getNodeName().equals("svg")) {
            around = around.getParentNode();
        }
        return around;
    }

    private static Rectangle2D box(Element text, double letter) {
        String own = text.getAttribute("font-size");
        double high = own.isEmpty() ? letter : Double.parseDouble(own);
        double wide = NARROW * high * text.getTextContent().length();
        double x = Double.parseDouble(text.getAttribute("x"));
        List<String> styles = List.of(text.getAttribute("class").split(" "));
        double left = styles.contains("middle") ? x - wide / 2 : styles.contains("end") ? x - wide : x;
        return new Rectangle2D.Double(left, Double.parseDouble(text.getAttribute("y")) - 0.8 * high, wide,
                0.8 * high);
    }

    private static List<Element> texts(Element svg) {
        return elements(svg, "text");
    }

    private static List<Element> elements(Element svg, String name) {
        NodeList all = svg.getElementsByTagName(name);
        return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).toList();
    }

    private static Document svg(String text) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)));
    }
}
