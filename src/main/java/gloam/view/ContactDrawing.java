package gloam.view;

import gloam.answer.ContactSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;

/** Proofs in rows: one for each f-number with its times, and one for the ±; tone and stars under each. */
final class ContactDrawing {

    private static final double LEFT = 18;
    private static final double CELL = 56;
    private static final double GAP = 4;
    private static final double TOP = 26;
    private static final double WORDS = 11;
    private static final double FOOT = 20;
    private static final double LETTER = 3.4;
    private static final double FINE = 2.9;

    private final ContactReport report;
    private final double wide;
    private final double high;
    private final int across = ContactSheet.TIMES.size();
    private final Drawing svg;

    private ContactDrawing(ContactReport report) {
        this.report = report;
        double ratio = (double) report.spread().get(0).picture().heightPx()
                / report.spread().get(0).picture().widthPx();
        this.wide = ratio > 1 ? CELL / ratio : CELL;
        this.high = ratio > 1 ? CELL : CELL * ratio;
        int rows = report.settings().size() / across + 1;
        this.svg = new Drawing(Drawing.Unit.MM, LEFT + across * (CELL + GAP) + 4,
                TOP + rows * (high + WORDS) + 6 + FOOT, LETTER, "Contact sheet: " + report.heading(),
                report.statement() + ".");
    }

    /** The drawing of a contact sheet. */
    static String of(ContactReport report, String made) {
        return new ContactDrawing(report).drawn(made);
    }

    private String drawn(String made) {
        svg.label(LEFT, 8, "Contact sheet", "font-size", 4.6);
        svg.label(LEFT, 13.5, report.heading());
        svg.label(LEFT, 18.5, report.film() + ". " + report.statement() + (report.spread().get(0).printed()
                ? ", printed from the negative" : ""), "font-size", FINE);
        double y = TOP;
        for (int row = 0; row < report.settings().size(); row += across) {
            y = row(report.settings().subList(row, row + across), y,
                    Wording.fNumber(report.settings().get(row).fNumber()), false);
        }
        y = row(report.spread(), y + 6, "±" + Wording.number(report.spreadStops(), 1), true);
        svg.label(LEFT, y + 4, "Under each: time, tone of the sky at the frame's centre, stars to magnitude "
                + "6 that mark it. Last row: " + Wording.fNumber(report.spread().get(0).fNumber()) + ", "
                + Wording.exposure(report.spread().get(0).lastsS()) + ",", "font-size", FINE);
        svg.label(LEFT, y + 8.5,
                "as it comes out with sky and film one standard deviation darker, as taken, and "
                + "lighter.", "font-size", FINE);
        return svg.finished(LEFT, made);
    }

    private double row(List<ContactReport.ProofRow> proofs, double y, String name, boolean deviating) {
        svg.label(LEFT - 3, y + high / 2, name, "class", "end");
        for (int i = 0; i < proofs.size(); i++) {
            ContactReport.ProofRow proof = proofs.get(i);
            double x = LEFT + i * (CELL + GAP);
            svg.empty("rect", "x", x, "y", y, "width", wide, "height", high, "class", "under");
            svg.empty("image", "x", x, "y", y, "width", wide, "height", high, "preserveAspectRatio", "none",
                    "xlink:href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png(proof)));
            svg.label(x, y + high + 4, (deviating ? proof.deviation() : Wording.exposure(proof.lastsS()))
                    + ": " + proof.result(), "font-size", FINE);
        }
        return y + high + WORDS;
    }

    private static byte[] png(ContactReport.ProofRow proof) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            PngRenderer.write(proof.picture(), png);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return png.toByteArray();
    }
}
