package gloam.view;

import java.util.stream.Collectors;

/** Text of the Moon. */
final class MoonText {

    private MoonText() {
    }

    /** Its looks and its next quarters, two sentences. */
    static Document document(MoonRow moon) {
        Document document = Document.part();
        document.text("Moon at " + Wording.minute(moon.at().orElseThrow()) + ": " + moon.phase().orElseThrow() + ", "
                + Wording.number(100 * moon.illuminatedFraction().orElseThrow(), 0) + " % lit"
                + (moon.ageDays().isEmpty() ? "" : ", " + Wording.number(moon.ageDays().getAsDouble(), 1) + " d old")
                + ", " + Wording.number(60 * moon.angularDiameterDeg().orElseThrow(), 1) + "\u2032 across, "
                + Wording.kilometres(moon.distanceKm().orElseThrow()) + " km away, " + Wording.signed(moon.magnitude().orElseThrow(), 1) + " mag");
        if (!moon.quarters().isEmpty()) {
            document.text("Next quarters: " + moon.quarters().stream()
                    .map(quarter -> quarter.what() + " " + quarter.at().toLocalDate() + " "
                            + Wording.second(quarter.at())).collect(Collectors.joining(", ")));
        }
        return document;
    }
}
