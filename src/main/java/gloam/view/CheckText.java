package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Text of how a trip was understood. */
final class CheckText {

    private CheckText() {
    }

    static Lines lines(CheckReport report) {
        Lines lines = new Lines();
        lines.add(report.title());
        add(lines, "nights", Wording.date(report.firstNight()) + " … " + Wording.date(report.lastNight()));
        report.sites().forEach(site -> add(lines, "site", site(site)));
        add(lines, "camera", camera(report.camera()));
        add(lines, "film", film(report.film()));
        add(lines, "sheets", String.valueOf(report.sheets()));
        report.preview().forEach(frame -> add(lines, "preview", Wording.fNumber(frame.fNumber()) + ", ISO "
                + Wording.plain(frame.iso()) + ", " + Wording.plain(frame.exposureS()) + " s"));
        lines.add("");
        lines.add("Wishes");
        report.wishes().forEach(wish -> add(lines, wish.name(), wish(wish)));
        lines.add("");
        lines.add(report.defaultsUsed().isEmpty() ? "No default was needed." : "Defaults used");
        report.defaultsUsed().forEach(used -> lines.add("  " + used));
        return lines;
    }

    private static void add(Lines lines, String name, String text) {
        boolean beside = TextWidth.of(name) <= 8;
        if (!beside) {
            lines.add("  " + name);
        }
        lines.add("  " + TextWidth.left(beside ? name : "", 10), text);
    }

    private static String site(CheckReport.SiteRow site) {
        Place place = site.place();
        return PlaceText.of(place) + "; moonless zenith " + Wording.plain(place.darkSkyMagArcsec2())
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
