package gloam.view;

import gloam.view.JournalGuideReport.WordRow;
import java.util.List;

/** The words for the tone of the sky with a grey patch each, to be printed on plain paper or held beside a sheet. */
final class ToneGuideDrawing {

    private static final double WIDTH = 160;
    private static final double ROW = 20;
    private static final double TOP = 16;
    private static final double PATCH = 34;

    private ToneGuideDrawing() {
    }

    /** The drawing of the guide. */
    static String of(JournalGuideReport report) {
        List<WordRow> words = report.words();
        SvgText svg = new SvgText();
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" aria-labelledby=\"title desc\" "
                + "viewBox=\"0 0 " + SvgText.number(WIDTH) + " " + SvgText.number(TOP + ROW * words.size() + 8)
                + "\" font-family=\"serif\" font-size=\"3.1\" fill=\"#1d1b18\">");
        svg.words("title", "id=\"title\"", "Words for the tone of the sky");
        svg.words("desc", "id=\"desc\"", "A grey patch for each word, from black to white.");
        svg.empty("rect", "width=\"100%\" height=\"100%\" fill=\"#ffffff\"");
        svg.label(6, 9, "font-size=\"5\"", "The tone of the sky on the finished picture");
        for (int i = 0; i < words.size(); i++) {
            row(svg, words.get(i), TOP + ROW * i);
        }
        svg.label(6, TOP + ROW * words.size() + 3, "", "Judge in daylight, dry, away from trails and edges; a negative by "
                + "its print. Patches are true only on a calibrated screen or print.");
        svg.raw("</svg>");
        return svg.toString();
    }

    private static void row(SvgText svg, WordRow word, double y) {
        svg.empty("rect", "x=\"6\" y=\"" + SvgText.number(y) + "\" width=\"" + SvgText.number(PATCH) + "\" height=\""
                + SvgText.number(ROW - 2) + "\" fill=\"" + word.patch() + "\" stroke=\"#1d1b18\" stroke-width=\"0.15\"");
        svg.label(10 + PATCH, y + 6, "font-size=\"4.6\"", word.word());
        svg.label(10 + PATCH, y + 11, "", JournalText.stops(word) + " stops from the mid-tone; reflects "
                + Wording.number(100 * word.reflectance(), 0) + " %");
        svg.label(10 + PATCH, y + 15.5, "", word.guide());
    }
}
