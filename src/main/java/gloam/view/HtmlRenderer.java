package gloam.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * One self-contained page: a timetable with its strips, a card for each sheet and the cautions, or the calendar of a
 * ranking. It asks for nothing from elsewhere and runs no script.
 */
final class HtmlRenderer implements Renderer {

    private static final String STYLE = "/gloam/view/page.css";

    @Override
    public boolean suits(Report report) {
        return report instanceof PlanReport || report instanceof NightsReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        String title = report instanceof PlanReport plan ? plan.title() : "Nights";
        SvgText page = new SvgText();
        page.raw("<!DOCTYPE html>").raw("<html lang=\"en\">").raw("<head>").raw("<meta charset=\"utf-8\">")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")
                .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; "
                        + "style-src 'unsafe-inline'\">")
                .raw("<link rel=\"icon\" href=\"data:,\">")
                .words("title", "", title).raw("<style>").raw(style()).raw("</style>").raw("</head>").raw("<body>")
                .raw("<input type=\"checkbox\" id=\"red\"><label for=\"red\" class=\"switch\">dim red view</label>")
                .raw("<main>").words("h1", "", title);
        if (report instanceof PlanReport plan) {
            page.raw(PlanPage.of(plan));
        } else {
            page.raw("<div class=\"strip\">").raw(NightCalendar.of((NightsReport) report)).raw("</div>");
        }
        out.append(page.raw("</main>").raw("</body>").raw("</html>").toString());
    }

    private static String style() {
        try (InputStream style = HtmlRenderer.class.getResourceAsStream(STYLE)) {
            return new String(style.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
    }
}
