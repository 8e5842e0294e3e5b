package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Ranking;
import gloam.planner.NightRanking;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** The calendar as a drawing: sound XML in which every word keeps to its cell. */
class NightCalendarTest {

    /** A wide serif letter; common practice, no source. */
    private static final double LETTER_EM = 0.55;
    private static final double FONT = 13;

    @Test
    void everyWordKeepsToItsCell() throws Exception {
        // a polar year: nights with no hour and with twenty-four, and all phases of the Moon
        Document svg = drawn(LocalDate.of(2027, 1, 1), LocalDate.of(2027, 12, 31));
        List<double[]> cells = rectangles(svg);
        int words = 0;
        for (int i = 0; i < svg.getElementsByTagName("text").getLength(); i++) {
            Element text = (Element) svg.getElementsByTagName("text").item(i);
            double left = number(text, "x");
            double right = left + LETTER_EM * FONT * text.getTextContent().length();
            double base = number(text, "y");
            if (base > 30) {
                words++;
                assertTrue(cells.stream().anyMatch(cell -> left >= cell[0] && right <= cell[0] + cell[2]
                        && base <= cell[1] + cell[3] && base - FONT >= cell[1]), () -> text.getTextContent()
                        + " at " + left);
            }
        }
        assertEquals(4 * 365, words);
    }

    @Test
    void oneNightIsTheBest() throws Exception {
        Document svg = drawn(LocalDate.of(2027, 2, 27), LocalDate.of(2027, 3, 14));
        Matcher best = Pattern.compile("stroke-width=\"2.5\"")
                .matcher(text(LocalDate.of(2027, 2, 27), LocalDate.of(2027, 3, 14)));
        assertEquals(1, best.results().count());
        assertEquals(16, rectangles(svg).size());
    }

    private static List<double[]> rectangles(Document svg) {
        List<double[]> cells = new ArrayList<>();
        for (int i = 0; i < svg.getElementsByTagName("rect").getLength(); i++) {
            Element rect = (Element) svg.getElementsByTagName("rect").item(i);
            if (rect.getAttribute("class").equals("box")) {
                cells.add(new double[] {number(rect, "x"), number(rect, "y"), number(rect, "width"),
                        number(rect, "height")});
            }
        }
        return cells;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static Document drawn(LocalDate first, LocalDate last) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(text(first, last))));
    }

    private static String text(LocalDate first, LocalDate last) {
        List<LocalDate> dates = first.datesUntil(last.plusDays(1)).toList();
        return NightCalendar.of(NightsReport.of(new Ranking(
                new NightRanking(new AnalyticEphemeris()).nights(List.of(Places.POLAR), dates), List.of(),
                List.of()),
                Instant.EPOCH));
    }
}
