package gloam.view;

import java.util.stream.Collectors;

/** Text of what an exposure is asked for. */
final class SituationText {

    private static final int TERMS = 8;

    private SituationText() {
    }

    static Document document(Situation situation) {
        Document document = Document.part();
        add(document, "Sky", situation.source() + ": " + Wording.number(situation.skyMagArcsec2(), 2) + " mag/arcsec²");
        situation.otherSkies().forEach(other -> add(document, "But", other.source() + ": "
                + Wording.number(other.skyMagArcsec2(), 2) + " mag/arcsec², " + stops(other.brighterStops())));
        situation.site().ifPresent(place -> add(document, "Site", SiteText.of(place)));
        situation.openAt().ifPresent(at -> add(document, "Open", opening(situation)));
        situation.earlier().forEach(opening -> add(document, "Before", "open " + Wording.second(opening.openAt()) + " to "
                + Wording.second(opening.closeAt()) + " on the same sheet"));
        if (!situation.events().isEmpty()) {
            add(document, "Then", situation.events().stream()
                    .map(event -> event.what().replace('-', ' ') + " " + Wording.minute(event.at()))
                    .collect(Collectors.joining(", ")));
        }
        situation.ground().ifPresent(ground -> add(document, "Ground", "reflects " + Wording.plain(ground.reflectance())
                + " of " + Wording.light(ground.lux()) + " lx"));
        add(document, "Film", Wording.film(situation.film(), situation.fittedToSheets()) + ", ISO " + Wording.plain(situation.iso()) + "; "
                + situation.reciprocity());
        add(document, "Lens", Wording.plain(situation.focalLengthMm()) + " mm, focused at "
                + (situation.focusM().isPresent() ? Wording.plain(situation.focusM().getAsDouble()) + " m" : "infinity")
                + ", passes " + Wording.plain(situation.transmittance()) + " of the light");
        add(document, "Want", wanted(situation));
        return document;
    }

    private static void add(Document document, String title, String text) {
        document.add(new Block.Term(title, text, TERMS, false));
    }

    private static String stops(double brighter) {
        String amount = Wording.number(Math.abs(brighter), 1);
        return amount.equals("0.0") ? "the same" : amount + " stops " + (brighter > 0 ? "brighter" : "darker");
    }

    private static String opening(Situation situation) {
        return situation.openAt().map(at -> Wording.date(Wording.secondDate(at)) + " " + Wording.second(at) + " ("
                + Wording.offset(at) + "), azimuth " + Wording.plain(situation.azimuthDeg().orElseThrow())
                + "°, altitude " + Wording.plain(situation.altitudeDeg().orElseThrow()) + "°").orElseThrow()
                + situation.latestCloseAt().filter(at -> situation.lastsS().isEmpty())
                        .map(at -> "; close by " + Wording.minuteBefore(at)).orElse("");
    }

    private static String wanted(Situation situation) {
        String what = situation.ground().isPresent() ? "the ground" : "the sky";
        if (situation.lastsS().isPresent()) {
            double seconds = situation.lastsS().getAsDouble();
            return "the tone of " + what + " after " + Wording.lasting(seconds) + situation.openAt()
                    .filter(at -> situation.latestCloseAt().isPresent())
                    .map(at -> ", closing at " + Wording.second(at.plusNanos(Math.round(seconds * 1e9)))).orElse("");
        }
        double stops = situation.toneStops().orElseThrow();
        return stops == 0 ? what + " in the film's mid-tone" : what + " "
                + Wording.number(Math.abs(stops), 1) + " stops " + (stops > 0 ? "lighter" : "darker")
                + " than the film's mid-tone";
    }
}
