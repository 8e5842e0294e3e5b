package gloam.answer;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import gloam.light.SkyLight;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How bright the whole sky of a site is at an instant.
 *
 * @param site  where
 * @param at    the instant
 * @param cells the sky in cells of 10° of azimuth and 5° of altitude, from north through east, lowest first
 * @param sun   where the Sun stands
 * @param moon  where the Moon stands
 */
public record SkyMap(Site site, Instant at, List<Cell> cells, SkyPosition sun, SkyPosition moon) {

    /** Width of a cell in azimuth, in degrees. */
    public static final int ACROSS_DEG = 10;
    /** Height of a cell, in degrees. */
    public static final int UP_DEG = 5;

    /** Copies the list. */
    public SkyMap {
        cells = List.copyOf(cells);
    }

    /**
     * A cell.
     *
     * @param direction its middle
     * @param light     the light there by its sources
     * @param land      whether land stands before it
     */
    public record Cell(Direction direction, SkyLight.Sample light, boolean land) {
    }

    /** The sky over a site. */
    public static SkyMap of(Ephemeris ephemeris, Site site, Instant at) {
        SkyLight.Moment sky = new SkyLight(ephemeris, site).moment(at);
        List<Cell> cells = new ArrayList<>();
        for (double azimuthDeg = ACROSS_DEG / 2.0; azimuthDeg < 360; azimuthDeg += ACROSS_DEG) {
            for (double altitudeDeg = UP_DEG / 2.0; altitudeDeg < 90; altitudeDeg += UP_DEG) {
                Direction middle = Direction.ofDegrees(azimuthDeg, altitudeDeg);
                cells.add(new Cell(middle, sky.at(middle),
                        altitudeDeg < site.skyline().altitudeAt(middle.azimuth()).degrees()));
            }
        }
        return new SkyMap(site, at, cells, ephemeris.position(Body.SUN, site, at),
                ephemeris.position(Body.MOON, site, at));
    }
}
