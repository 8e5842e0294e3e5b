package gloam.answer;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.SkylinePassage;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.planner.NightRank;
import gloam.planner.NightRanking;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One night at one site, hour by hour.
 *
 * @param rank     the night and its worth by its sky alone
 * @param passages when Sun, Moon and planets cross the skyline, in order of body and time; empty for a level
 *                 horizon
 * @param hours    the sky at each full hour from before sunset to after sunrise
 * @param moon     the Moon half-way between sunset and sunrise
 * @param planets  the planets half-way through the night
 */
public record NightCourse(NightRank rank, List<SkylinePassage> passages, List<Hour> hours, MoonAt moon,
                          List<Appearance> planets) {

    private static final List<Body> PLANETS =
            List.of(Body.MERCURY, Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN, Body.URANUS,
            Body.NEPTUNE);

    /** Copies the lists. */
    public NightCourse {
        passages = List.copyOf(passages);
        hours = List.copyOf(hours);
        planets = List.copyOf(planets);
    }

    /**
     * The sky at a full hour.
     *
     * @param at       when
     * @param sun      where the Sun stands
     * @param moon     where the Moon stands
     * @param zenith   brightness of the zenith
     * @param groundLx illuminance of level ground, in lx
     * @param planets  where the planets stand
     * @param towards  light of the direction asked for
     */
    public record Hour(Instant at, SkyPosition sun, SkyPosition moon, SkyBrightness zenith, double groundLx,
                       List<PlanetPlace> planets, Optional<InstantSky.Towards> towards) {

        private static Hour of(Ephemeris ephemeris, Site site, Instant at, Optional<Direction> towards) {
            SkyLight sky = new SkyLight(ephemeris, site);
            return new Hour(at, ephemeris.position(Body.SUN, site, at),
                    ephemeris.position(Body.MOON, site, at),
                    sky.at(Direction.ZENITH, at).total(),
                    new GroundLight(ephemeris, site).lux(at), PLANETS.stream().map(planet ->
                            new PlanetPlace(planet, ephemeris.position(planet, site, at))).toList(),
                    towards.map(direction -> InstantSky.Towards.of(sky, direction, at)));
        }
    }

    /** A planet and where it stands. */
    public record PlanetPlace(Body planet, SkyPosition position) {
    }

    /**
     * The night of an evening.
     *
     * @throws gloam.units.BadInput if the site's clocks skip that date
     */
    public static NightCourse of(Ephemeris ephemeris, Site site, LocalDate evening,
                                 Optional<Direction> towards) {
        NightRank rank = new NightRanking(ephemeris).nights(List.of(site), List.of(evening)).get(0);
        Night night = rank.night();
        return new NightCourse(rank, passages(ephemeris, night),
                hours(night).map(at -> Hour.of(ephemeris, site, at, towards)).toList(),
                MoonAt.of(ephemeris, site, night.middle()), PLANETS.stream()
                        .map(planet -> ephemeris.appearance(planet, site, night.span().middle())).toList());
    }

    private static List<SkylinePassage> passages(Ephemeris ephemeris, Night night) {
        return night.site().skyline().isLevel() ? List.of() : Arrays.stream(Body.values())
                .flatMap(body -> SkylinePassage.of(ephemeris, night.site(), body, night.span()).stream())
                .toList();
    }

    /** The full hours of the site's clock from the last one before sunset to the first one after sunrise. */
    private static Stream<Instant> hours(Night night) {
        if (night.sunDown().isEmpty()) {
            return Stream.empty();
        }
        List<Interval> down = night.sunDown();
        ZonedDateTime first = down.get(0).start().atZone(night.site().zone()).truncatedTo(ChronoUnit.HOURS);
        Instant last = down.get(down.size() - 1).endExclusive().plus(Duration.ofHours(1));
        return Stream.iterate(first, hour -> hour.plusHours(1)).map(ZonedDateTime::toInstant)
                .takeWhile(at -> at.isBefore(last) && !at.isAfter(night.span().endExclusive()));
    }
}
