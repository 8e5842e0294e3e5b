package gloam.view;

import gloam.proof.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** The card of a planned sheet, to take along. */
final class SheetCard {

    private static final int TERMS = 10;
    private static final List<String> STEPS =
            List.of("set up and levelled", "f-number set", "dark slide out", "opened", "closed",
            "dark slide in");
    private static final List<String> BLANKS = List.of("opened at", "closed at", "notes");

    private SheetCard() {
    }

    /** The card of a window, with its picture where that was computed. */
    static Block.Card of(PlanReport plan, PlanReport.PlannedNightRow night, PlanReport.WindowRow window) {
        Document part = Document.part().text(night.site() + ", night of " + Wording.date(night.night()))
                .text("set up from " + night.times().dated(window.prepareAt().toInstant()));
        plan.pictures().map(pictures -> pictures.bySheet().get(window.sheet())).ifPresent(picture -> part.add(
                new Block.Picture(ProofReport.STATEMENT + ": " + window.wish() + ", sky " + tone(window)
                + " stops, "
                        + window.recordedStars() + " star trails", () -> png(picture))));
        if (plan.pictures().map(pictures -> pictures.bySheet().get(window.sheet())).filter(Picture::printed)
                .isPresent()) {
            part.text("The picture is the print made from the negative.");
        }
        plan.camera(window.camera()).ifPresent(name -> figure(part, "camera", name));
        figure(part, "film", FilmWords.name(window.film(), window.fittedToSheets()));
        figure(part, "f-number", Wording.fNumber(window.fNumber()));
        figure(part, "aim", Wording.bearing(window.azimuthDeg()) + ", azimuth "
                + Wording.number(window.azimuthDeg(), 1)
                + "°, altitude " + Wording.number(window.altitudeDeg(), 1) + "°, roll "
                + Wording.number(window.rollDeg(), 1) + "°");
        figure(part, "tone", tone(window) + " stops");
        figure(part, "trail", TrailWords.of(window).figure());
        figure(part, "stars", RequirementWords.beforeStars(window.mustRecord().stream()
                .map(RequirementWords::name))
                + StarWords.of(window.recordedStars(), window.recordedStarsSpread(), window.framedStars(),
                "", window.catalogueToMag(), window.fainterStars())
                + (window.trailLimitMag().isPresent()
                ? ", trails to mag " + Wording.number(window.trailLimitMag().getAsDouble(), 1) : ""));
        window.cloud().ifPresent(cloud -> figure(part, "sky", WindowWords.cloud(cloud)));
        if (!window.misses().isEmpty()) {
            figure(part, "misses", String.join(", ", window.misses()));
        }
        part.text(window.sky());
        if (window.openings().size() == 1) {
            part.text(window.slack().words(night.times())).add(window.slack().lateTable(night.times()));
        } else {
            SheetOpeningRow.times(window, night.times()).forEach(part::item);
        }
        plan.secondChoice(window.wish()).ifPresent(second -> part.text(second.words(plan, window)));
        return new Block.Card(id(window), "Sheet " + window.sheet() + ": " + window.wish(),
                night.times().exposure(window.openAt().toInstant(), window.closeAt().toInstant()),
                part, STEPS, BLANKS);
    }

    /** The name of a window's card within the document. */
    static String id(PlanReport.WindowRow window) {
        return "sheet-" + window.sheet();
    }

    private static String tone(PlanReport.WindowRow window) {
        return Wording.tone(window.skyToneStops(), window.skyToneSpreadStops());
    }

    private static void figure(Document part, String name, String value) {
        part.add(new Block.Term(name, value, TERMS, false));
    }

    private static byte[] png(Picture picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            PngRenderer.write(picture, bytes);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return bytes.toByteArray();
    }
}
