package gloam.view;

import gloam.light.LightSource;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Text of the sky at one instant. */
final class InstantText {

    private InstantText() {
    }

    static Lines lines(InstantReport report) {
        Lines lines = new Lines();
        lines.add("Sky of " + Wording.date(report.at().toLocalDate()) + " " + Wording.second(report.at()) + " ("
                + Wording.offset(report.at()) + ")");
        lines.add("at " + PlaceText.of(report.site()));
        lines.add("");
        lines.add(bodies(report));
        if (!report.stars().isEmpty()) {
            lines.add("");
            lines.add(stars(report));
        }
        lines.add("");
        lines.add(MoonText.lines(report.moon()));
        InstantReport.Light light = report.light();
        lines.add("");
        lines.add("  zenith " + Wording.number(light.zenithMagArcsec2(), 2) + " mag/arcsec²: "
                + Arrays.stream(LightSource.values())
                        .map(source -> words(source) + " " + Wording.light(light.zenith().of(source).cdM2()))
                        .collect(Collectors.joining(", ")) + " cd/m²");
        lines.add("  level ground " + Wording.light(light.groundLux()) + " lx");
        return lines;
    }

    private static String words(LightSource source) {
        return switch (source) {
            case DARK -> "dark sky";
            case MOON -> "moonlight";
            case TWILIGHT -> "twilight";
        };
    }

    private static Table bodies(InstantReport report) {
        Table table = new Table(2, Table.words("body"), Table.numbers("azimuth °"), Table.numbers("altitude °"),
                Table.numbers("airless °"), Table.numbers("RA °"), Table.numbers("dec °"),
                Table.numbers("distance km"), Table.numbers("mag"), Table.numbers("lit %"), Table.numbers("phase °"));
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
        Table table = new Table(2, Table.words("star"), Table.numbers("azimuth °"), Table.numbers("altitude °"),
                Table.numbers("airless °"), Table.numbers("RA °"), Table.numbers("dec °"));
        for (InstantReport.StarRow star : report.stars()) {
            table.row(star.name(), Wording.number(star.azimuthDeg(), 3),
                    Wording.number(star.apparentAltitudeDeg(), 3), Wording.number(star.airlessAltitudeDeg(), 3),
                    Wording.number(star.rightAscensionDeg(), 3), Wording.number(star.declinationDeg(), 3));
        }
        return table;
    }
}
