package gloam.view;

import gloam.units.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * The script of a page that follows the clock, and the timetable that it reads; none on other pages.
 *
 * @param data the timetable as JSON
 */
record PageScript(Optional<String> data) {

    /** What a document asks for. */
    static PageScript of(List<Block> blocks) {
        return new PageScript(blocks.stream().filter(Block.Live.class::isInstance)
                .map(block -> ((Block.Live) block).data().get()).findFirst());
    }

    /** The part of the page's policy that lets this script run, and no other. */
    String allowed() {
        return data.isEmpty() ? "" : "; script-src 'sha256-" + digest(script()) + "'";
    }

    /** Adds it at the page's end. */
    void addTo(Markup page) {
        data.ifPresent(json -> page.add(Markup.start("script", "type", "application/json", "id", "plan") + ">"
                + json.strip().replace("&", "\\u0026").replace("<", "\\u003c").replace(">", "\\u003e")
                + "</script>").add("<script>" + script() + "</script>"));
    }

    /** Marked as what it is for who reads the page as XML. */
    private static String script() {
        return "//<![CDATA[\n" + PagePart.LIVE_SCRIPT.text() + "//]]>";
    }

    private static String digest(String script) {
        return Base64.getEncoder().encodeToString(Sha256.of(script.getBytes(StandardCharsets.UTF_8)));
    }
}
