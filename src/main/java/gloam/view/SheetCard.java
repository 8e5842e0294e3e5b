package gloam.view;

import gloam.proof.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.Base64;

/** The page of a timetable: for each night its strip, table and notes, then a card for each sheet, then the cautions. */
final class PlanPage {

    /** A shorter trail has no direction to tell. */
    private static final double LEAST_TRAIL_MM = 1;

    private final PlanReport plan;
    private final SvgText page = new SvgText();

    private PlanPage(PlanReport plan) {
        this.plan = plan;
    }

    /** The page's contents. */
    static String of(PlanReport plan) {
        return new PlanPage(plan).written();
    }

    private String written() {
        page.words("p", "", plan.sheetsUsed() + " of " + plan.sheets() + " sheets planned; camera " + plan.camera());
        plan.nights().forEach(this::night);
        page.raw("<section class=\"cards\">");
        plan.nights().forEach(night -> night.windows().forEach(window -> card(night, window)));
        page.raw("</section>").raw("<section>").words("h2", "", "Cautions").raw("<ul>");
        plan.cautions().forEach(caution -> page.words("li", "", caution));
        page.raw("</ul>").raw("</section>");
        return page.toString();
    }

    private void night(PlanReport.NightRow night) {
        page.raw("<section class=\"night\">").words("h2", "", night.times().dates() + ", " + night.site());
        if (night.windows().isEmpty()) {
            page.words("p", "", "no window");
        } else {
            page.raw("<div class=\"strip\">").raw(NightStrip.of(night)).raw("</div>").raw("<div class=\"wide\"><table>")
                    .raw("<thead><tr><th>open</th><th>close</th><th>sheet</th><th>wish</th><th>f/</th><th>az °</th>"
                            + "<th>alt °</th><th>tone</th><th>trail mm</th></tr></thead>").raw("<tbody>");
            night.windows().forEach(window -> row(night, window));
            page.raw("</tbody></table></div>").words("p", "class=\"small\"", "times in " + night.zone());
        }
        night.notes().forEach(note -> page.words("p", "", note));
        page.raw("<details>").words("summary", "", "not on this night").raw("<ul>");
        night.refused().forEach(refusal -> page.words("li", "", refusal.wish() + ": " + refusal.reason()));
        page.raw("</ul></details>").raw("</section>");
    }

    private void row(PlanReport.NightRow night, PlanReport.WindowRow window) {
        page.raw("<tr>");
        time(window.openAt(), night.times().opens(window.openAt().toInstant()));
        time(window.closeAt(), night.times().closes(window.closeAt().toInstant()));
        cell(String.valueOf(window.sheet()));
        cell(window.wish());
        cell(Wording.plain(window.fNumber()));
        cell(Wording.bearing(window.azimuthDeg()) + " " + Wording.number(window.azimuthDeg(), 0));
        cell(Wording.number(window.altitudeDeg(), 0));
        cell(tone(window));
        cell(Wording.number(window.trailLengthMm(), 0));
        page.raw("</tr>");
    }

    private void time(OffsetDateTime at, String words) {
        page.raw("<td>").words("time", "datetime=\"" + at + "\"", words).raw("</td>");
    }

    private void cell(String words) {
        page.words("td", "", words);
    }

    private static String tone(PlanReport.WindowRow window) {
        return Wording.signed(window.skyToneStops(), 1) + " ± " + Wording.number(window.skyToneSpreadStops(), 1);
    }

    private void card(PlanReport.NightRow night, PlanReport.WindowRow window) {
        page.raw("<article class=\"card\" id=\"sheet-" + window.sheet() + "\">")
                .words("h3", "", "Sheet " + window.sheet() + ": " + window.wish())
                .words("p", "class=\"time\"", night.times().exposure(window.openAt().toInstant(),
                        window.closeAt().toInstant()))
                .words("p", "", night.site() + ", night of " + Wording.date(night.night()))
                .words("p", "", "set up from " + night.times().dated(window.prepareAt().toInstant()))
                .raw("<div class=\"proof\">").raw(picture(window)).raw("</div>").raw("<dl>");
        figure("film", window.film());
        figure("f-number", Wording.fNumber(window.fNumber()));
        figure("aim", Wording.bearing(window.azimuthDeg()) + ", azimuth " + Wording.number(window.azimuthDeg(), 1)
                + "°, altitude " + Wording.number(window.altitudeDeg(), 1) + "°, roll "
                + Wording.number(window.rollDeg(), 1) + "°");
        figure("tone", tone(window) + " stops");
        figure("trail", Wording.number(window.trailLengthMm(), 0) + " mm at the centre"
                + (window.trailLengthMm() < LEAST_TRAIL_MM ? "" : ", towards "
                + Math.round(window.trailDirectionDeg()) % 360 + "° from the right, up"));
        figure("stars", window.recordedStars() + (window.trailLimitMag().isPresent()
                ? ", to magnitude " + Wording.number(window.trailLimitMag().getAsDouble(), 1) : ""));
        window.clearChance().ifPresent(chance -> figure("clear", Wording.number(100 * chance, 0) + " %"));
        page.raw("</dl>").words("p", "", window.reason()).raw("<ul class=\"ticks\">");
        for (String step : new String[] {"set up and levelled", "f-number set", "dark slide out", "opened", "closed",
            "dark slide in"}) {
            page.raw("<li><label><input type=\"checkbox\"> " + SvgText.escaped(step) + "</label></li>");
        }
        page.raw("</ul>");
        for (String blank : new String[] {"opened at", "closed at", "notes"}) {
            page.raw("<label class=\"blank\">" + SvgText.escaped(blank) + " <input type=\"text\"></label>");
        }
        page.raw("</article>");
    }

    /** The sheet's picture inside the page, or nothing where none was computed. */
    private String picture(PlanReport.WindowRow window) {
        return plan.pictures().map(SheetPictures::bySheet).map(pictures -> "<img alt=\""
                + SvgText.escaped(ProofReport.STATEMENT + ": " + window.wish() + ", sky " + tone(window) + " stops, "
                + window.recordedStars() + " star trails") + "\" src=\"data:image/png;base64,"
                + png(pictures.get(window.sheet())) + "\">").orElse("");
    }

    private static String png(Picture picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            PngRenderer.write(picture, bytes);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    private void figure(String name, String value) {
        page.words("dt", "", name).words("dd", "", value);
    }
}
