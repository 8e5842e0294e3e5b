package gloam.view;

import gloam.gear.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Text of how a trip was understood. */
final class CheckText {

    private static final int TERMS = 10;

    private CheckText() {
    }

    static Document document(CheckReport report) {
        Document document = Document.headed(report.title());
        add(document, "nights", Wording.date(report.firstNight()) + " … " + Wording.date(report.lastNight()));
        report.sites().forEach(site -> add(document, "site", site(site)));
        add(document, "camera", camera(report.camera()));
        add(document, "film", film(report.film()));
        add(document, "sheets", String.valueOf(report.sheets()));
        report.preview().forEach(frame -> add(document, "preview", Wording.fNumber(frame.fNumber()) + ", ISO "
                + Wording.plain(frame.iso()) + ", " + Wording.plain(frame.exposureS()) + " s"));
        document.gap();
        document.heading(2, "Wishes");
        report.wishes().forEach(wish -> add(document, wish.name(), wish(wish)));
        document.gap();
        if (report.defaultsUsed().isEmpty()) {
            return document.text("No default was needed.");
        }
        document.heading(2, "Defaults used");
        report.defaultsUsed().forEach(document::under);
        return document;
    }

    private static void add(Document document, String name, String text) {
        document.add(new Block.Term(name, text, TERMS, true));
    }

    private static String site(CheckReport.TripSiteRow site) {
        Site place = site.site();
        return SiteText.of(place) + "; moonless zenith " + Wording.plain(place.darkSkyMagArcsec2())
                + " mag/arcsec², extinction " + Wording.plain(place.extinctionMag()) + " mag, "
                + (site.skylinePoints() > 1 ? "skyline of " + site.skylinePoints() + " points" : "level horizon");
    }

    private static String camera(CheckReport.CameraRow camera) {
        return camera.name() + ", " + Wording.plain(camera.focalLengthMm()) + " mm on "
                + Wording.plain(camera.frameWidthMm()) + " × " + Wording.plain(camera.frameHeightMm()) + " mm; f/ "
                + camera.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", "))
                + "; focus " + (camera.focusM().isPresent()
                        ? Wording.plain(camera.focusM().getAsDouble()) + " m" : "infinity")
                + "; transmittance " + Wording.plain(camera.transmittance()) + "; spot "
                + Wording.plain(camera.spotUm()) + " µm; filter " + Wording.plain(camera.filterStops())
                + " stops; mount takes " + Wording.plain(camera.mountCornerStops())
                + " stops in the corner; changeover " + Wording.plain(camera.changeoverMin()) + " min";
    }

    private static String film(CheckReport.FilmRow film) {
        return film.name() + ", ISO " + Wording.plain(film.iso()) + ", " + film.kind() + ", "
                + (film.layers() == 1 ? "one layer" : film.layers() + " layers")
                + "; reciprocity failure costs " + film.failureStops().stream()
                        .map(stops -> Wording.number(stops, 1)).collect(Collectors.joining(", "))
                + " stops at metered 1 min, 10 min, 1 h; " + film.source();
    }

    private static String wish(WishRow wish) {
        List<String> parts = new ArrayList<>(List.of(wish.aim(), "sky " + wish.sky(), "tone " + wish.tone(),
                "records " + wish.records()));
        wish.trailLeastMm().ifPresent(mm -> parts.add("trail from " + Wording.plain(mm) + " mm"));
        wish.trailMostMm().ifPresent(mm -> parts.add("trail up to " + Wording.plain(mm) + " mm"));
        wish.limits().ifPresent(parts::add);
        parts.add("exposure " + Wording.plain(wish.shortestMin()) + " … " + Wording.plain(wish.longestMin())
                + " min");
        parts.add(wish.fNumbers().isEmpty() ? "any f-number"
                : "f/ " + wish.fNumbers().stream().map(Wording::plain).collect(Collectors.joining(", ")));
        wish.film().ifPresent(film -> parts.add("film " + film));
        parts.add("worth " + Wording.plain(wish.worth()) + ", " + (wish.repeat() == 1 ? "once"
                : "up to " + wish.repeat() + " sheets"));
        return String.join("; ", parts);
    }
}
