package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.SheetProof;
import gloam.proof.Picture;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The computed picture of a sheet and what it shows.
 *
 * @param figures its words and numbers
 * @param picture the sheet as it looks when developed
 */
public record ProofReport(@JsonUnwrapped Figures figures, @JsonIgnore Picture picture) implements Report {

    /** The statement that accompanies every computed picture. */
    public static final String STATEMENT = "Computed picture, not a photograph";

    @Override
    public OffsetDateTime generatedAt() {
        return figures.generatedAt;
    }

    /** Reports a proof. */
    public static ProofReport of(SheetProof proof, Instant now) {
        TrailReport trail = TrailReport.of(proof.trails(), now);
        Picture picture = proof.picture();
        return new ProofReport(new Figures(trail.generatedAt(), STATEMENT, picture.widthPx(),
                picture.heightPx(), picture.channels() == 3, picture.printed(), proof.tones(),
                proof.awayFromMoonToneStops(), trail),
                picture);
    }

    @Override
    public ZoneId zone() {
        return figures.trail.zone();
    }

    @Override
    public Document document() {
        Figures proof = figures();
        Document document = Document.headed(proof.statement() + ": " + proof.widthPx() + " × "
                + proof.heightPx() + " pixels, " + (proof.colour() ? "colour" : "grey")
                + (proof.printed() ? ", printed from the negative" : ""));
        document.figure("the sheet", made -> TrailDrawing.over(this, made));
        document.gap();
        Table table = new Table(Table.words("tone at"), Table.numbers("x", "mm"), Table.numbers("y", "mm"),
                Table.numbers(proof.colour() ? "red, green, blue" : "", "stops"));
        for (SheetProof.PointTone tone : proof.tones()) {
            table.row(Label.words(tone.where()), Wording.number(tone.point().xMm(), 1),
                    Wording.number(tone.point().yMm(), 1),
                    tone.toneStops().stream().map(ProofReport::stops).collect(Collectors.joining(", ")));
        }
        proof.awayFromMoonToneStops().ifPresent(layers -> table.row("8° from Moon", "", "",
                layers.stream().map(ProofReport::stops).collect(Collectors.joining(", "))));
        document.add(table);
        document.gap();
        document.add(TrailText.part(proof.trail()));
        return document;
    }

    private static String stops(double stops) {
        return stops < -90 ? "black" : Wording.signed(stops, 1);
    }

    /**
     * Words and numbers of a proof.
     *
     * @param generatedAt when it was made
     * @param statement   what the picture is, and is not
     * @param widthPx     width in pixels
     * @param heightPx    height in pixels
     * @param colour      whether it is in colour
     * @param printed     whether it is the print made from a negative, not the sheet itself
     * @param tones       tones at the frame's centre and in its corners
     * @param awayFromMoonToneStops where the Moon is in the frame, the tone of each layer 8° from it or more:
     *                    that of the picture
     * @param trail       the framing and its trails
     */
    public record Figures(OffsetDateTime generatedAt, String statement, int widthPx, int heightPx,
            boolean colour, boolean printed,
                          List<SheetProof.PointTone> tones,
                          Optional<List<Double>> awayFromMoonToneStops, TrailReport trail) {
    }
}
