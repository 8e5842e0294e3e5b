package gloam.view;

import java.util.stream.Collectors;

/** Text beside a computed picture. */
final class ProofText {

    private ProofText() {
    }

    static Document document(ProofReport report) {
        ProofReport.Figures proof = report.figures();
        Document document = Document.headed(proof.statement() + ": " + proof.widthPx() + " × " + proof.heightPx() + " pixels, "
                + (proof.colour() ? "colour" : "grey"));
        document.figure("the sheet", () -> TrailDrawing.over(report));
        document.gap();
        Table table = new Table(Table.words("tone at"), Table.numbers("x", "mm"), Table.numbers("y", "mm"),
                Table.numbers(proof.colour() ? "stops red, green, blue" : "stops"));
        for (ProofReport.ToneRow tone : proof.tones()) {
            table.row(tone.where().replace('-', ' '), Wording.number(tone.xMm(), 1), Wording.number(tone.yMm(), 1),
                    tone.toneStops().stream().map(ProofText::stops).collect(Collectors.joining(", ")));
        }
        document.add(table);
        document.gap();
        document.add(TrailText.part(proof.trail()));
        return document;
    }

    private static String stops(double stops) {
        return stops < -90 ? "black" : Wording.signed(stops, 1);
    }
}
