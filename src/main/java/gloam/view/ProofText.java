package gloam.view;

import java.util.stream.Collectors;

/** Text beside a computed picture. */
final class ProofText {

    private ProofText() {
    }

    static Lines lines(ProofReport.Figures proof) {
        Lines lines = new Lines();
        lines.add(proof.statement() + ": " + proof.widthPx() + " × " + proof.heightPx() + " pixels, "
                + (proof.colour() ? "colour" : "grey"));
        lines.add("");
        Table table = new Table(2, Table.words("tone at"), Table.numbers("x mm"), Table.numbers("y mm"),
                Table.numbers(proof.colour() ? "stops red, green, blue" : "stops"));
        for (ProofReport.ToneRow tone : proof.tones()) {
            table.row(tone.where().replace('-', ' '), Wording.number(tone.xMm(), 1), Wording.number(tone.yMm(), 1),
                    tone.toneStops().stream().map(ProofText::stops).collect(Collectors.joining(", ")));
        }
        lines.add(table);
        lines.add("");
        lines.add(TrailText.lines(proof.trail()));
        return lines;
    }

    private static String stops(double stops) {
        return stops < -90 ? "black" : Wording.signed(stops, 1);
    }
}
