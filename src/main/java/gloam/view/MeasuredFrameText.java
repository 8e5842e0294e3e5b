package gloam.view;

import java.util.Optional;

/** The text of a measured frame. */
final class MeasuredFrameText {

    /** Differences below this are none: mag. */
    private static final double LEAST_MAG = 0.05;

    private MeasuredFrameText() {
    }

    static Document of(MeasuredFrameRow frame) {
        Document document = Document.part();
        document.heading(2, frame.name());
        document.under("mid-exposure " + Wording.date(Wording.secondDate(frame.at())) + " "
                + Wording.second(frame.at()) + " (" + Wording.offset(frame.at()) + "), "
                + Wording.exposure(frame.exposureS()) + " at " + Wording.fNumber(frame.fNumber()) + ", ISO "
                + Wording.plain(frame.iso()));
        document.under("points to azimuth " + Wording.direction(frame.azimuthDeg()) + "° ("
                + Wording.bearing(frame.azimuthDeg()) + "), altitude "
                + Wording.number(frame.altitudeDeg(), 1)
                + "°, roll " + Wording.number(frame.rollDeg(), 1) + "°, "
                + Wording.number(frame.widthDeg(), 0) + "° wide; " + aim(frame));
        frame.clockAheadS().ifPresent(seconds ->
                document.under("If it pointed where you say, the camera's clock "
                + "is " + Wording.lasting(Math.round(Math.abs(seconds) / 60) * 60.0)
                + (seconds > 0 ? " fast" : " slow") + ", ± 2 min for each half degree of the aim."));
        frame.magArcsec2().ifPresent(mag -> document.under("sky in the middle: " + Wording.number(mag, 2)
                + " mag/arcsec² (" + Wording.light(frame.luminanceCdM2().orElseThrow()) + " cd/m²), ± "
                + Wording.number(frame.errorMag(), 2) + " mag " + (frame.calibrated() ? "as calibrated"
                : "by ISO 12232") + (frame.strongCurve() && !frame.calibrated()
                ? ", more than usual since the camera put a tone curve of its own on the frame" : "")));
        document.under(difference(frame));
        frame.slope().filter(MeasuredFrameRow.SkySlopeRow::cornersClear).ifPresent(slope ->
                document.under("The corners are " + mag(slope.cornersMag())
                + " than the lens's fall-off has them: "
                + "the lens vignettes; --corner-stops corrects it."));
        document.gap();
        document.add(pieces(frame));
        return document;
    }

    private static String aim(MeasuredFrameRow frame) {
        return frame.aimErrorDeg().isPresent()
                ? "from " + frame.starsMatched() + " stars among "
                + Wording.count(frame.pointsFound(), "point")
                + " of light, ± " + Wording.number(Math.max(0.01, frame.aimErrorDeg().getAsDouble()), 2) + "°"
                : "as given, since its stars do not show it";
    }

    /** How the sky compares with the computed one. */
    private static String difference(MeasuredFrameRow frame) {
        Optional<MeasuredFrameRow.SkySlopeRow> slope = frame.slope()
                .filter(MeasuredFrameRow.SkySlopeRow::clear);
        String mean = Math.abs(frame.brighterMag()) < LEAST_MAG ? "The sky is as the model has it"
                : "The sky is " + mag(frame.brighterMag()) + " than the model has it";
        String doubt = " (± " + Wording.number(Math.hypot(frame.errorMag(), frame.modelErrorMag()), 1)
                + " mag, both together)";
        return mean + doubt + slope.map(row -> "; towards " + Wording.bearing(row.azimuthDeg()) + " (azimuth "
                + Wording.number(row.azimuthDeg(), 0) + "°, altitude " + Wording.number(row.altitudeDeg(), 0)
                + "°) " + mag(row.brighterMag()) + ", at the opposite edge " + mag(row.oppositeMag()))
                .orElse("") + ".";
    }

    private static String mag(double brighter) {
        return Wording.number(Math.abs(brighter), 1) + " mag " + (brighter < 0 ? "darker" : "brighter");
    }

    private static Table pieces(MeasuredFrameRow frame) {
        Table table = new Table(Table.numbers("azimuth", "°"), Table.numbers("altitude", "°"),
                Table.numbers("sky", "mag/arcsec²"), Table.numbers("±", "mag").leaving(1),
                Table.numbers("model", "mag/arcsec²").leaving(2), Table.numbers("brighter by", "mag"));
        frame.pieces().forEach(piece -> table.row(Wording.number(piece.azimuthDeg(), 0),
                Wording.number(piece.altitudeDeg(), 0), Wording.number(piece.magArcsec2(), 2),
                Wording.number(piece.scatterMag(), 2), Wording.number(piece.modelMagArcsec2(), 2),
                Wording.signed(piece.brighterMag(), 2)));
        return table;
    }
}
