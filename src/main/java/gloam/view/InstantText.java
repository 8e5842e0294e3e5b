package gloam.view;

import gloam.light.LightSource;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Text of the sky at one instant. */
final class InstantText {

    private InstantText() {
    }

    static Document document(InstantReport report) {
        Document document = Document.headed("Sky of " + Wording.date(report.at().toLocalDate()) + " " + Wording.second(report.at()) + " ("
                + Wording.offset(report.at()) + ")");
        document.text("at " + SiteText.of(report.site()));
        document.gap();
        document.add(bodies(report));
        if (!report.stars().isEmpty()) {
            document.gap();
            document.add(stars(report));
        }
        document.gap();
        document.add(MoonText.document(report.moon()));
        InstantReport.Light light = report.light();
        document.gap();
        document.under("zenith " + Wording.number(light.zenithMagArcsec2(), 2) + " mag/arcsec²: "
                + Arrays.stream(LightSource.values())
                        .map(source -> words(source) + " " + Wording.light(light.zenith().of(source).cdM2()))
                        .collect(Collectors.joining(", ")) + " cd/m²");
        document.under("level ground " + Wording.light(light.groundLux()) + " lx");
        return document;
    }

    private static String words(LightSource source) {
        return switch (source) {
            case ZODIACAL -> "zodiacal light";
            case STARS -> "faint stars";
            case AIRGLOW -> "airglow and the rest";
            case MOON -> "moonlight";
            case TWILIGHT -> "twilight";
        };
    }

    private static Table bodies(InstantReport report) {
        Table table = new Table(Table.words("body"), Table.numbers("azimuth", "°"), Table.numbers("altitude", "°"),
                Table.numbers("airless", "°").leaving(5), Table.numbers("RA", "°").leaving(4),
                Table.numbers("dec", "°").leaving(4),
                Table.numbers("distance", "km").leaving(2), Table.numbers("", "mag").leaving(6),
                Table.numbers("lit", "%").leaving(3), Table.numbers("phase", "°").leaving(1));
        for (InstantReport.BodyRow body : report.bodies()) {
            table.row(Wording.title(body.name()), Wording.number(body.azimuthDeg(), 3),
                    Wording.number(body.apparentAltitudeDeg(), 3),
                    Wording.number(body.airlessAltitudeDeg(), 3), Wording.number(body.rightAscensionDeg(), 3),
                    Wording.number(body.declinationDeg(), 3), Wording.kilometres(body.distanceKm()),
                    Wording.number(body.magnitude(), 1), Wording.number(100 * body.illuminatedFraction(), 0),
                    Wording.number(body.phaseAngleDeg(), 1));
        }
        return table;
    }

    private static Table stars(InstantReport report) {
        Table table = new Table(Table.words("star"), Table.numbers("azimuth", "°"), Table.numbers("altitude", "°"),
                Table.numbers("airless", "°").leaving(2), Table.numbers("RA", "°").leaving(1),
                Table.numbers("dec", "°").leaving(1));
        for (InstantReport.StarRow star : report.stars()) {
            table.row(star.name(), Wording.number(star.azimuthDeg(), 3),
                    Wording.number(star.apparentAltitudeDeg(), 3), Wording.number(star.airlessAltitudeDeg(), 3),
                    Wording.number(star.rightAscensionDeg(), 3), Wording.number(star.declinationDeg(), 3));
        }
        return table;
    }
}
