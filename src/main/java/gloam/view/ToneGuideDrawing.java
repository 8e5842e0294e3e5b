package gloam.view;

import gloam.view.JournalGuideReport.WordRow;
import java.util.List;

/**
 * The words for the tone of the sky with a grey patch each, to be printed on plain paper or held beside a
 * sheet.
 */
final class ToneGuideDrawing {

    private static final double WIDTH = 160;
    private static final double ROW = 20;
    private static final double TOP = 16;
    private static final double PATCH = 34;

    private ToneGuideDrawing() {
    }

    /** The drawing of the guide. */
    static String of(JournalGuideReport report, String made) {
        List<WordRow> words = report.words();
        Drawing svg = new Drawing(Drawing.Unit.MM, WIDTH, TOP + ROW * words.size() + 17, 3.1,
                "Words for the tone of the sky", "A grey patch for each word, from black to white.");
        svg.label(6, 9, "The tone of the sky on the finished picture", "font-size", 5);
        for (int i = 0; i < words.size(); i++) {
            row(svg, words.get(i), TOP + ROW * i);
        }
        double foot = TOP + ROW * words.size();
        svg.label(6, foot + 3, "Judge in daylight, dry, away from trails and edges; a negative by its "
                + "print.");
        svg.label(6, foot + 7.5, "Patches are true only on a calibrated screen or print.");
        return svg.finished(6, made);
    }

    private static void row(Drawing svg, WordRow word, double y) {
        svg.empty("rect", "x", 6, "y", y, "width", PATCH, "height", ROW - 2, "fill", word.patch(), "class",
                "edge shade", "stroke-width", 0.15, "style", "--light:" + Markup.number(word.reflectance()));
        svg.label(10 + PATCH, y + 6, word.word(), "font-size", 4.6);
        svg.label(10 + PATCH, y + 11, JournalGuideReport.stops(word) + " stops from the mid-tone; reflects "
                + Wording.percent(word.reflectance()));
        svg.label(10 + PATCH, y + 15.5, word.guide());
    }
}
