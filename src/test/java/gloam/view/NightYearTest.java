package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Ranking;
import gloam.gear.Site;
import gloam.planner.NightRank;
import gloam.planner.NightRanking;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Nights drawn one below the other, the hours across. */
class NightYearTest {

    private static final int NIGHTS = 365;

    @Test
    void eachNightIsARowAndItsSpansStandWhereTheClocksSay() throws Exception {
        Document svg = drawn(Places.POLAR, LocalDate.of(2027, 1, 1), LocalDate.of(2027, 12, 31));
        List<double[]> worths = rectangles(svg, "entry");
        assertEquals(NIGHTS + 1, worths.size());
        double row = worths.get(1)[1] - worths.get(0)[1];
        for (int i = 1; i < NIGHTS; i++) {
            assertEquals(row, worths.get(i)[1] - worths.get(i - 1)[1], 0.011);
        }
        List<double[]> dark = rectangles(svg, "dark");
        double[] sheet = rectangles(svg, "sheet").get(0);
        for (double[] span : dark.subList(0, dark.size() - 1)) {
            assertTrue(span[0] >= sheet[0] - 0.01 && span[0] + span[2] <= sheet[0] + sheet[2] + 0.01
                    && span[1] >= sheet[1] - 0.01 && span[1] + span[3] <= sheet[1] + sheet[3] + 0.01);
        }
    }

    @Test
    void spansAreAsLongAsTheDarkness() throws Exception {
        LocalDate date = LocalDate.of(2027, 3, 10);
        NightRank night = new NightRanking(new AnalyticEphemeris()).nights(List.of(Places.MID_NORTH),
                List.of(date)).get(0);
        Document svg = drawn(Places.MID_NORTH, date, date);
        double[] sheet = rectangles(svg, "sheet").get(0);
        double[] dark = rectangles(svg, "dark").get(0);
        List<String> hours = texts(svg).stream().filter(text -> text.matches("\\d\\d")).toList();
        double shown = (hours.size() - 1) * dark[2] / sheet[2];
        assertEquals(night.darkHours(), shown, 0.01);
    }

    @Test
    void theLegendNamesPlaceZoneAndMaking() throws Exception {
        List<String> texts = texts(drawn(Places.POLAR, LocalDate.of(2027, 2, 27), LocalDate.of(2027, 3, 14)));
        assertTrue(texts.get(0).startsWith("Nights 2027-02-27 to 2027-03-14, " + Places.POLAR.name()),
                texts.get(0));
        assertTrue(texts.contains("hours by the clocks (" + Places.POLAR.zone().getId() + ")"),
                texts::toString);
        assertTrue(texts.contains("dark: Sun below \u221218\u00b0"), texts::toString);
        assertTrue(texts.contains("no. 1"), texts::toString);
        assertEquals("made", texts.get(texts.size() - 1));
    }

    private static List<String> texts(Document svg) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < svg.getElementsByTagName("text").getLength(); i++) {
            texts.add(svg.getElementsByTagName("text").item(i).getTextContent());
        }
        return texts;
    }

    private static List<double[]> rectangles(Document svg, String kind) {
        List<double[]> cells = new ArrayList<>();
        for (int i = 0; i < svg.getElementsByTagName("rect").getLength(); i++) {
            Element rect = (Element) svg.getElementsByTagName("rect").item(i);
            if (rect.getAttribute("class").equals(kind)) {
                cells.add(new double[] {number(rect, "x"), number(rect, "y"), number(rect, "width"),
                        number(rect, "height")});
            }
        }
        return cells;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static Document drawn(Site site, LocalDate first, LocalDate last) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(text(site, first, last))));
    }

    private static String text(Site site, LocalDate first, LocalDate last) {
        List<LocalDate> dates = first.datesUntil(last.plusDays(1)).toList();
        return NightYear.of(NightsReport.of(new Ranking(dates.size(),
                new NightRanking(new AnalyticEphemeris()).nights(List.of(site), dates), List.of(),
                List.of()),
                Instant.EPOCH), "made");
    }
}
