package gloam.view;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import gloam.answer.InstantSky;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import gloam.light.LightSource;
import gloam.light.SkyLight;
import gloam.units.Angle;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.databind.util.RawValue;

/**
 * Where everything stands at one instant, and how light it is.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param at          the instant
 * @param bodies      Sun, Moon and planets
 * @param stars       the stars asked for
 * @param moon        the Moon in detail
 * @param light       the brightness of sky and ground
 * @param towards     the light of the direction asked for
 */
public record InstantReport(OffsetDateTime generatedAt, Site site, OffsetDateTime at, List<Appearance> bodies,
                            List<StarRow> stars, MoonRow moon, Light light,
                            Optional<TowardsRow> towards) implements Report {

    /** Reports the sky of a site at an instant. */
    public static InstantReport of(InstantSky sky, Instant now) {
        SiteClock clock = new SiteClock(sky.site().zone());
        return new InstantReport(clock.at(now), sky.site(), clock.at(sky.at()),
                sky.bodies(),
                sky.stars().stream().map(star -> StarRow.of(star.star().name(), star.position())).toList(),
                MoonRow.of(sky.moon(), clock), Light.of(sky), sky.towards().map(TowardsRow::of));
    }

    @Override
    public Document document() {
        Document document = Document.headed("Sky of " + Wording.date(at().toLocalDate()) + " "
                + Wording.second(at()) + " (" + Wording.offset(at()) + ")");
        document.text("at " + SiteText.of(site()));
        document.gap();
        document.add(bodiesTable());
        if (!stars().isEmpty()) {
            document.gap();
            document.add(starsTable());
        }
        document.gap();
        document.add(moon.document());
        Light light = light();
        document.gap();
        document.under("zenith " + Wording.number(light.zenithMagArcsec2(), 2) + " mag/arcsec²: "
                + Arrays.stream(LightSource.values())
                        .map(source -> words(source) + " " + Wording.light(light.zenith().of(source).cdM2()))
                        .collect(Collectors.joining(", ")) + " cd/m²");
        towards().ifPresent(row -> document.under(row.words()));
        document.under("level ground " + Wording.light(light.groundLux()) + " lx");
        return document;
    }

    static String words(LightSource source) {
        return switch (source) {
            case ZODIACAL -> "zodiacal light";
            case STARS -> "faint stars";
            case TOWNS -> "towns";
            case AIRGLOW -> "airglow and the rest";
            case MOON -> "moonlight";
            case TWILIGHT -> "twilight";
        };
    }

    private Table bodiesTable() {
        Table table = new Table(Table.words("body"), Table.numbers("azimuth", "°"),
                Table.numbers("altitude", "°"),
                Table.numbers("airless", "°").leaving(5), Table.numbers("RA", "°").leaving(4),
                Table.numbers("dec", "°").leaving(4),
                Table.numbers("distance", "km").leaving(2), Table.numbers("", "mag").leaving(6),
                Table.numbers("lit", "%").leaving(3), Table.numbers("phase", "°").leaving(1));
        for (Appearance body : bodies()) {
            SkyPosition position = body.position();
            table.row(Wording.title(body.body().label()), degrees(position.azimuth()),
                    degrees(position.apparentAltitude()),
                    degrees(position.airlessAltitude()), degrees(position.rightAscension()),
                    degrees(position.declination()), Wording.kilometres(position.distanceKm()),
                    Wording.number(body.magnitude(), 1), Wording.number(100 * body.illuminatedFraction(), 0),
                    Wording.number(body.phaseAngle().degrees(), 1));
        }
        return table;
    }

    private Table starsTable() {
        Table table = new Table(Table.words("star"), Table.numbers("azimuth", "°"),
                Table.numbers("altitude", "°"),
                Table.numbers("airless", "°").leaving(2), Table.numbers("RA", "°").leaving(1),
                Table.numbers("dec", "°").leaving(1));
        for (StarRow star : stars()) {
            table.row(star.name(), Wording.number(star.azimuthDeg(), 3),
                    Wording.number(star.apparentAltitudeDeg(), 3),
                    Wording.number(star.airlessAltitudeDeg(), 3),
                    Wording.number(star.rightAscensionDeg(), 3), Wording.number(star.declinationDeg(), 3));
        }
        return table;
    }

    private static String degrees(Angle angle) {
        return Wording.number(angle.degrees(), 3);
    }

    /** One star, with the meanings of {@link SkyPosition}. */
    public record StarRow(String name, double azimuthDeg, double airlessAltitudeDeg,
            double apparentAltitudeDeg,
                          double rightAscensionDeg, double declinationDeg) {

        static StarRow of(String name, SkyPosition position) {
            return new StarRow(name, position.azimuth().positive().degrees(),
                    position.airlessAltitude().degrees(),
                    position.apparentAltitude().degrees(),
                    position.rightAscension().positive().degrees(), position.declination().degrees());
        }
    }

    /** Brightness of the zenith, in total and by source, and illuminance of level ground in lux. */
    @JsonPropertyOrder({"zenithMagArcsec2", "sourcesCdM2", "groundLux"})
    public record Light(double zenithMagArcsec2, @JsonIgnore SkyLight.Sample zenith, double groundLux) {

        static Light of(InstantSky sky) {
            return new Light(sky.zenith().total().magArcsec2(), sky.zenith(), sky.groundLx());
        }

        /** The zenith's luminance by source, each under a name such as {@code moonCdM2}. */
        @JsonAnyGetter
        @JsonProperty("sourcesCdM2")
        public Map<String, RawValue> sourcesCdM2() {
            Map<String, RawValue> parts = new LinkedHashMap<>();
            for (LightSource source : LightSource.values()) {
                String name = Label.of(source) + "CdM2";
                parts.put(name, new RawValue(Accuracy.of(name).text(zenith.of(source).cdM2())));
            }
            return parts;
        }
    }
}
