package gloam.view;

import gloam.answer.NightCourse;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * One night at one site, hour by hour.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param nights      the night, one row
 * @param hours       the sky at each full hour from before sunset to after sunrise
 * @param moon        the Moon half-way through the Sun's absence
 * @param planets     the planets half-way through the night
 */
public record NightReport(OffsetDateTime generatedAt, Site site, List<NightRow> nights, List<HourRow> hours,
                          MoonRow moon, List<PlanetRow> planets) implements Report {

    /** The report of a night. */
    public static NightReport of(NightCourse course, Instant now) {
        Site site = course.rank().night().site();
        SiteClock clock = new SiteClock(site.zone());
        return new NightReport(clock.at(now), site, List.of(NightRow.of(course.rank(), course.passages())),
                course.hours().stream().map(hour -> HourRow.of(hour, clock)).toList(),
                MoonRow.of(course.moon(), clock), course.planets().stream().map(PlanetRow::of).toList());
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

        static HourRow of(NightCourse.Hour hour, SiteClock clock) {
            return new HourRow(clock.at(hour.at()), hour.sun().apparentAltitude().degrees(),
                    hour.moon().apparentAltitude().degrees(), hour.zenith().magArcsec2(), hour.groundLx(),
                    hour.planets().stream().map(PlaceRow::of).toList());
        }
    }

    /** Where a planet stands. */
    public record PlaceRow(String name, double azimuthDeg, double apparentAltitudeDeg) {

        static PlaceRow of(NightCourse.PlanetPlace place) {
            Direction seen = place.position().apparentDirection();
            return new PlaceRow(place.planet().label(), seen.azimuth().degrees(), seen.altitude().degrees());
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
