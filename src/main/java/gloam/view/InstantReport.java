package gloam.view;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.light.LightSource;
import gloam.light.SkyLight;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
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
public record InstantReport(OffsetDateTime generatedAt, Place site, OffsetDateTime at, List<BodyRow> bodies,
                            List<StarRow> stars, MoonRow moon, Light light) implements Report {

    /** The sky of a site at an instant. */
    public static InstantReport of(Ephemeris ephemeris, Site site, Instant at, List<Star> stars, Instant now) {
        SiteClock clock = new SiteClock(site.zone());
        return new InstantReport(clock.asked(now), Place.of(site), clock.asked(at),
                Arrays.stream(Body.values()).map(body -> BodyRow.of(ephemeris.appearance(body, site, at))).toList(),
                stars.stream().map(star -> StarRow.of(star.name(), ephemeris.position(star, site, at))).toList(),
                MoonRow.of(ephemeris, site, at), Light.of(ephemeris, site, at));
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

        static Light of(Ephemeris ephemeris, Site site, Instant at) {
            SkyLight.Sample zenith = new SkyLight(ephemeris, site).at(Direction.ZENITH, at);
            return new Light(zenith.total().magArcsec2(), zenith, new GroundLight(ephemeris, site).lux(at));
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
