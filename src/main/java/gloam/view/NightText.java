package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Text of one night, hour by hour. */
final class NightText {

    /** The planets an unaided eye sees, which can mark a sheet. */
    private static final int PLANETS_SHOWN = 5;

    private NightText() {
    }

    static Document document(NightReport report) {
        NightRow night = report.nights().get(0);
        Document document = Document.headed("Night of " + Wording.date(night.night()));
        document.text("at " + SiteText.of(report.site()));
        document.text("Dark " + Wording.hours(night.darkHours()) + ", of it without the Moon "
                + Wording.hours(night.moonlessDarkHours()) + " (" + night.reason() + ")");
        document.add(MoonText.document(report.moon()));
        document.gap();
        document.add(events(night));
        if (!report.hours().isEmpty()) {
            document.gap();
            document.add(hours(report));
        }
        document.gap();
        document.text("Magnitudes: " + report.planets().stream()
                .map(planet -> Wording.title(planet.name()) + " " + Wording.signed(planet.magnitude(), 1))
                .collect(Collectors.joining(", ")));
        return document;
    }

    private static Document events(NightRow night) {
        if (night.events().isEmpty()) {
            return Document.part().under("no rise, set or twilight from noon to noon");
        }
        Table table = new Table(Table.words("date"), Table.words("time"), Table.words("event"));
        night.events().forEach(event -> table.row(Wording.date(Wording.secondDate(event.at())),
                Wording.second(event.at()), words(event.what())));
        return Document.part().add(table);
    }

    /** A label in words, the body it names with a capital. */
    private static String words(String what) {
        String words = what.replace('-', ' ');
        boolean named = words.endsWith("skyline") || words.startsWith("moon ");
        return named ? Wording.title(words) : words;
    }

    private static Table hours(NightReport report) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.words("time"), Table.numbers("Sun", "°"),
                Table.numbers("Moon", "°"), Table.numbers("sky", "mag/arcsec²"), Table.numbers("ground", "lx")));
        for (int i = 0; i < Math.min(PLANETS_SHOWN, report.planets().size()); i++) {
            columns.add(Table.numbers(Wording.title(report.planets().get(i).name()), "°").leaving(PLANETS_SHOWN - i));
        }
        Table table = new Table(columns.toArray(Table.Column[]::new));
        for (NightReport.HourRow hour : report.hours()) {
            List<String> cells = new ArrayList<>(List.of(Wording.minute(hour.at()),
                    Wording.number(hour.sunAltitudeDeg(), 0), Wording.number(hour.moonAltitudeDeg(), 0),
                    Wording.number(hour.zenithMagArcsec2(), 1), Wording.light(hour.groundLux())));
            hour.planets().stream().limit(PLANETS_SHOWN)
                    .forEach(planet -> cells.add(Wording.number(planet.apparentAltitudeDeg(), 0)));
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }
}
