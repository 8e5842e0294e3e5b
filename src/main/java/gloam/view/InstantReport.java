package gloam.view;

import gloam.gear.Site;
import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import gloam.answer.InstantSky;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.SkyPosition;
import gloam.light.LightSource;
import gloam.light.SkyLight;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.util.RawValue;

/**
 * Where everything stands at one instant, and how light it is.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param at          the instant
 * @param bodies      Sun, Moon and planets
 * @param stars       the stars asked for
 * @param moon        the Moon's phase
 * @param light       the brightness of sky and ground
 */
public record InstantReport(OffsetDateTime generatedAt, Site site, OffsetDateTime at, List<BodyRow> bodies,
                            List<StarRow> stars, MoonRow moon, Light light) implements Report {

    /** The sky of a site at an instant. */
    public static InstantReport of(InstantSky sky, Instant now) {
        SiteClock clock = new SiteClock(sky.site().zone());
        return new InstantReport(clock.at(now), sky.site(), clock.at(sky.at()),
                sky.bodies().stream().map(BodyRow::of).toList(),
                sky.stars().stream().map(star -> StarRow.of(star.star().name(), star.position())).toList(),
                MoonRow.of(sky.moon(), clock), Light.of(sky));
    }

    /** One body of the solar system. */
    public record BodyRow(String name, double azimuthDeg, double airlessAltitudeDeg, double apparentAltitudeDeg,
                          double rightAscensionDeg, double declinationDeg, double distanceKm, double magnitude,
                          double illuminatedFraction, double phaseAngleDeg, double angularDiameterDeg) {

        static BodyRow of(Appearance body) {
            SkyPosition position = body.position();
            return new BodyRow(body.body().label(), position.azimuth().positive().degrees(),
                    position.airlessAltitude().degrees(),
                    position.apparentAltitude().degrees(),
                    position.rightAscension().positive().degrees(), position.declination().degrees(),
                    position.distanceKm(), body.magnitude(),
                    body.illuminatedFraction(),
                    body.phaseAngle().degrees(),
                    2 * body.semidiameter().degrees());
        }
    }

    /** One star. */
    public record StarRow(String name, double azimuthDeg, double airlessAltitudeDeg, double apparentAltitudeDeg,
                          double rightAscensionDeg, double declinationDeg) {

        static StarRow of(String name, SkyPosition position) {
            return new StarRow(name, position.azimuth().positive().degrees(),
                    position.airlessAltitude().degrees(),
                    position.apparentAltitude().degrees(),
                    position.rightAscension().positive().degrees(), position.declination().degrees());
        }
    }

    /** Brightness of the zenith, whole and by source, and of level ground. */
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
                String name = source.name().toLowerCase(Locale.ROOT) + "CdM2";
                parts.put(name, new RawValue(Accuracy.of(name).text(zenith.of(source).cdM2())));
            }
            return parts;
        }
    }
}
