package gloam.view;

import gloam.answer.NightCourse;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One night at one site, hour by hour.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param nights      the night, as a list of one
 * @param hours       the sky at each full hour from before sunset to after sunrise
 * @param moon        the Moon half-way between sunset and sunrise
 * @param planets     the planets half-way through the night
 */
public record NightReport(OffsetDateTime generatedAt, Site site, List<NightRow> nights, List<HourRow> hours,
                          MoonRow moon, List<PlanetRow> planets) implements Report {

    /** The planets an unaided eye sees, which can mark a sheet. */
    static final int PLANETS_SHOWN = 5;

    /** Reports a night. */
    public static NightReport of(NightCourse course, Instant now) {
        Site site = course.rank().night().site();
        SiteClock clock = new SiteClock(site.zone());
        return new NightReport(clock.at(now), site, List.of(NightRow.of(course.rank(), course.passages())),
                course.hours().stream().map(hour -> HourRow.of(hour, clock)).toList(),
                MoonRow.of(course.moon(), clock), course.planets().stream().map(PlanetRow::of).toList());
    }

    @Override
    public Document document() {
        NightRow night = nights().get(0);
        Document document = Document.headed("Night of " + Wording.date(night.night()));
        document.text("at " + SiteText.of(site()));
        document.text(night.darkness() + " (" + night.reason() + ")");
        document.add(moon.document());
        document.gap();
        if (NightCurves.suits(this)) {
            document.figure("the night", made -> NightCurves.of(this, made));
        }
        document.add(eventsTable(night));
        if (!hours().isEmpty()) {
            document.gap();
            document.add(hoursTable());
        }
        if (hours().stream().anyMatch(hour -> hour.towards().isPresent())) {
            document.gap();
            document.add(towardsTable());
        }
        document.gap();
        document.text("Magnitudes: " + planets().stream()
                .map(planet -> Wording.title(planet.name()) + " " + Wording.signed(planet.magnitude(), 1))
                .collect(Collectors.joining(", ")));
        return document;
    }

    private static Document eventsTable(NightRow night) {
        if (night.events().isEmpty()) {
            return Document.part().under("no rise, set or twilight from noon to noon");
        }
        Table table = new Table(Table.words("date"), Table.words("time"), Table.words("event"));
        night.events().forEach(event -> table.row(Wording.date(Wording.secondDate(event.at())),
                Wording.second(event.at()), words(event.what())));
        return Document.part().add(table);
    }

    /** A label in words, the body it names with a capital. */
    static String words(String what) {
        String words = what.replace('-', ' ');
        boolean named = words.endsWith("skyline") || words.startsWith("moon ");
        return named ? Wording.title(words) : words;
    }

    private Table hoursTable() {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.words("time"), Table.numbers("Sun", "°"),
                Table.numbers("Moon", "°"), Table.numbers("sky", "mag/arcsec²"),
                Table.numbers("ground", "lx")));
        for (int i = 0; i < Math.min(PLANETS_SHOWN, planets().size()); i++) {
            columns.add(Table.numbers(Wording.title(planets().get(i).name()), "°")
                    .leaving(PLANETS_SHOWN - i));
        }
        Table table = new Table(columns.toArray(Table.Column[]::new));
        for (HourRow hour : hours()) {
            List<String> cells = new ArrayList<>(List.of(Wording.minute(hour.at()),
                    Wording.number(hour.sunAltitudeDeg(), 0), Wording.number(hour.moonAltitudeDeg(), 0),
                    Wording.number(hour.zenithMagArcsec2(), 1), Wording.light(hour.groundLux())));
            hour.planets().stream().limit(PLANETS_SHOWN)
                    .forEach(planet -> cells.add(Wording.number(planet.apparentAltitudeDeg(), 0)));
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    private Table towardsTable() {
        Table table = new Table(Table.words("time"), Table.numbers("direction", "mag/arcsec²"),
                Table.numbers("±", "stops"), Table.words("light there"));
        for (HourRow hour : hours()) {
            hour.towards().ifPresent(row -> table.row(Wording.minute(hour.at()),
                    Wording.number(row.magArcsec2(), 1), Wording.number(row.spreadStops(), 2), row.shares()));
        }
        return table;
    }

    /**
     * The sky at a full hour.
     *
     * @param at                when
     * @param sunAltitudeDeg    altitude of the Sun in degrees, with refraction
     * @param moonAltitudeDeg   altitude of the Moon in degrees, with refraction
     * @param zenithMagArcsec2  brightness of the zenith
     * @param groundLux         illuminance of level ground in lux
     * @param planets           where the planets stand
     * @param towards           the light of the direction asked for
     */
    public record HourRow(OffsetDateTime at, double sunAltitudeDeg, double moonAltitudeDeg,
            double zenithMagArcsec2,
                          double groundLux, List<PlaceRow> planets, Optional<TowardsRow> towards) {

        static HourRow of(NightCourse.Hour hour, SiteClock clock) {
            return new HourRow(clock.at(hour.at()), hour.sun().apparentAltitude().degrees(),
                    hour.moon().apparentAltitude().degrees(), hour.zenith().magArcsec2(), hour.groundLx(),
                    hour.planets().stream().map(PlaceRow::of).toList(),
                    hour.towards().map(TowardsRow::of));
        }
    }

    /** Where a planet stands, in degrees, with refraction. */
    public record PlaceRow(String name, double azimuthDeg, double apparentAltitudeDeg) {

        static PlaceRow of(NightCourse.PlanetPlace place) {
            Direction seen = place.position().apparentDirection();
            return new PlaceRow(place.planet().label(), seen.azimuth().degrees(), seen.altitude().degrees());
        }
    }

    /** How bright a planet is: V magnitude, and the lit share of its disc, 0 to 1. */
    public record PlanetRow(String name, double magnitude, double illuminatedFraction) {

        static PlanetRow of(Appearance planet) {
            return new PlanetRow(planet.body().label(), planet.magnitude(),
                    planet.illuminatedFraction());
        }
    }
}
