package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What cards and strips of a timetable's page say: everything once, and no number over a curve. */
class TimetablePageTest {

    private static final double LETTER = 12;
    /** Of the height of letters: digits of DejaVu Serif 2.37, the widest of the fonts that were measured. */
    private static final double DIGIT_WIDE = 0.64;
    private static final double DIGIT_HIGH = 0.73;

    private static Document page;

    @BeforeAll
    static void plan() {
        page = Jsoup.parse(Run.printed("plan --trip demo-data/trip.yaml --format html"));
    }

    @Test
    void aCardSaysItsToneItsTrailAndItsStarsOnce() {
        List<Element> cards = page.select(".card");
        assertEquals(8, cards.size());
        for (Element card : cards) {
            for (Element term : card.select("dt")) {
                if (List.of("tone", "trail", "stars").contains(term.text())) {
                    String figure = term.nextElementSibling().text().split(" of | at |, | stops")[0];
                    assertEquals(2, card.text().split(Pattern.quote(figure), -1).length,
                            figure + " in " + card.text());
                }
            }
            assertTrue(card.text().contains(" mag/arcsec²"), card.text());
        }
        assertTrue(cards.get(1).text().contains("stars Mars and 4"), cards.get(1).text());
        assertTrue(cards.get(6).text().replace('\u00a0', ' ').contains("misses tone 0.5 stops darker"),
                cards.get(6).text());
    }

    @Test
    void numbersOfAimsCoverNoCurve() {
        int numbers = 0;
        for (Element strip : page.select("svg:has(.sky)")) {
            for (Element number : strip.select("text.aim")) {
                double wide = DIGIT_WIDE * LETTER * number.text().length();
                Rectangle2D box = new Rectangle2D.Double(at(number, "x") - wide / 2,
                        at(number, "y") - DIGIT_HIGH * LETTER, wide, DIGIT_HIGH * LETTER);
                for (Element curve : strip.select("polyline.moon, polyline.curve")) {
                    double[] points = Arrays.stream(curve.attr("points").split("[ ,]"))
                            .mapToDouble(Double::parseDouble).toArray();
                    for (int i = 0; i + 3 < points.length; i += 2) {
                        assertEquals(false, new Line2D.Double(points[i], points[i + 1], points[i + 2],
                                points[i + 3]).intersects(box), "sheet " + number.text());
                    }
                }
                numbers++;
            }
        }
        assertEquals(8, numbers);
    }

    private static double at(Element text, String name) {
        return Double.parseDouble(text.attr(name));
    }
}
