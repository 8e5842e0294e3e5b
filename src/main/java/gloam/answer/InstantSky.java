package gloam.answer;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.light.SkyLight;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where everything stands at one instant, and how light it is.
 *
 * @param site     where
 * @param at       the instant
 * @param bodies   Sun, Moon and planets
 * @param stars    the stars asked for
 * @param moon     the Moon in detail
 * @param zenith   light of the zenith by source
 * @param groundLx illuminance of level ground, in lx
 * @param towards  light of the direction asked for
 */
public record InstantSky(Site site, Instant at, List<Appearance> bodies, List<StarPlace> stars, MoonAt moon,
                         SkyLight.Sample zenith, double groundLx, Optional<Towards> towards) {

    /** Copies the lists. */
    public InstantSky {
        bodies = List.copyOf(bodies);
        stars = List.copyOf(stars);
    }

    /** A star and where it stands. */
    public record StarPlace(Star star, SkyPosition position) {
    }

    /** A direction and its light by source. */
    public record Towards(Direction direction, SkyLight.Sample light) {

        static Towards of(SkyLight sky, Direction direction, Instant at) {
            return new Towards(direction, sky.at(direction, at));
        }
    }

    /** Computes the sky of a site at an instant. */
    public static InstantSky of(Ephemeris ephemeris, Site site, Instant at, List<Star> stars) {
        return of(ephemeris, site, at, stars, Optional.empty());
    }

    /** The same with the light of a direction. */
    public static InstantSky of(Ephemeris ephemeris, Site site, Instant at, List<Star> stars,
                                Optional<Direction> towards) {
        SkyLight sky = new SkyLight(ephemeris, site);
        return new InstantSky(site, at,
                Arrays.stream(Body.values()).map(body -> ephemeris.appearance(body, site, at)).toList(),
                stars.stream().map(star -> new StarPlace(star, ephemeris.position(star, site, at))).toList(),
                MoonAt.of(ephemeris, site, at), sky.at(Direction.ZENITH, at),
                new GroundLight(ephemeris, site).lux(at),
                towards.map(direction -> Towards.of(sky, direction, at)));
    }
}
