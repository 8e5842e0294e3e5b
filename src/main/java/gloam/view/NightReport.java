package gloam.view;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkylinePassage;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.light.SkyLight;
import gloam.planner.NightRank;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * One night at one site, hour by hour.
 *
 * @param generatedAt when the report was made
 * @param place       where
 * @param nights      the night, one row
 * @param hours       the sky at each full hour from before sunset to after sunrise
 * @param moon        the Moon half-way through the Sun's absence
 * @param planets     the planets half-way through the night
 */
public record NightReport(OffsetDateTime generatedAt, Place place, List<NightRow> nights, List<HourRow> hours,
                          MoonRow moon, List<PlanetRow> planets) implements Report {

    private static final List<Body> PLANETS =
            List.of(Body.MERCURY, Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN, Body.URANUS, Body.NEPTUNE);

    /** The report of a night. */
    public static NightReport of(Ephemeris ephemeris, NightRank rank, Instant now) {
        Night night = rank.night();
        Site site = night.site();
        return new NightReport(new SiteClock(site.zone()).asked(now), Place.of(site), List.of(NightRow.of(rank, passages(ephemeris, night))),
                hours(night).map(at -> HourRow.of(ephemeris, site, at)).toList(),
                MoonRow.of(ephemeris, site, night.middle()), PLANETS.stream()
                        .map(body -> PlanetRow.of(ephemeris.appearance(body, site, night.span().middle()))).toList());
    }

    /** When Sun, Moon and planets pass the terrain, in order of body and time; none where it is level. */
    private static List<SkylinePassage> passages(Ephemeris ephemeris, Night night) {
        return night.site().skyline().isLevel() ? List.of() : Arrays.stream(Body.values())
                .flatMap(body -> SkylinePassage.of(ephemeris, night.site(), body, night.span()).stream()).toList();
    }

    /** The full hours of the site's clock from the last one before sunset to the first one after sunrise. */
    private static Stream<Instant> hours(Night night) {
        if (night.sunDown().isEmpty()) {
            return Stream.empty();
        }
        Interval down = Interval.span(night.sunDown());
        ZonedDateTime first = down.start().atZone(night.site().zone()).truncatedTo(ChronoUnit.HOURS);
        Instant last = down.endExclusive().plus(Duration.ofHours(1));
        return Stream.iterate(first, hour -> hour.plusHours(1)).map(ZonedDateTime::toInstant)
                .takeWhile(at -> at.isBefore(last) && !at.isAfter(night.span().endExclusive()));
    }

    /**
     * The sky at a full hour.
     *
     * @param at                when
     * @param sunAltitudeDeg    apparent altitude of the Sun
     * @param moonAltitudeDeg   apparent altitude of the Moon
     * @param zenithMagArcsec2  brightness of the zenith
     * @param groundLux         illuminance of level ground
     * @param planets           apparent places of the planets
     */
    public record HourRow(OffsetDateTime at, double sunAltitudeDeg, double moonAltitudeDeg, double zenithMagArcsec2,
                          double groundLux, List<PlaceRow> planets) {

        static HourRow of(Ephemeris ephemeris, Site site, Instant at) {
            return new HourRow(new SiteClock(site.zone()).asked(at),
                    ephemeris.position(Body.SUN, site, at).apparentAltitude().degrees(),
                    ephemeris.position(Body.MOON, site, at).apparentAltitude().degrees(),
                    new SkyLight(ephemeris, site).at(Direction.ZENITH, at).total().magArcsec2(),
                    new GroundLight(ephemeris, site).lux(at),
                    PLANETS.stream().map(body -> PlaceRow.of(body, ephemeris, site, at)).toList());
        }
    }

    /** Where a planet stands. */
    public record PlaceRow(String name, double azimuthDeg, double apparentAltitudeDeg) {

        static PlaceRow of(Body body, Ephemeris ephemeris, Site site, Instant at) {
            Direction seen = ephemeris.position(body, site, at).apparentDirection();
            return new PlaceRow(body.label(), seen.azimuth().degrees(),
                    seen.altitude().degrees());
        }
    }

    /** How bright a planet is. */
    public record PlanetRow(String name, double magnitude, double illuminatedFraction) {

        static PlanetRow of(Appearance planet) {
            return new PlanetRow(planet.body().label(), planet.magnitude(),
                    planet.illuminatedFraction());
        }
    }
}
