package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.exposure.ExposedSheet;
import gloam.sheet.Sheet;
import gloam.trail.CelestialPole;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.units.Angle;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What runs across one framing while the shutter is open.
 *
 * @param question  the framing and the exposure
 * @param sheet     the sheet; empty without a film
 * @param tracks    the trails in the frame: planets and Moon, then stars, brightest first
 * @param catalogue the stars searched; empty if stars were asked for by name
 * @param starsHere trails of imaginary stars at the centre and in the corners
 * @param pole      the celestial pole
 * @param moon      when the Moon enters the frame
 * @param edges     where round azimuths fall on the frame's lower edge and round altitudes on its left one
 * @param skyline   where the skyline runs over the frame or near it, from left to right; empty if beside it
 * @param view      what is seen from behind the camera
 */
public record Trails(FrameQuestion question, Optional<SheetLimit> sheet, List<Track> tracks,
                     Optional<Catalogue> catalogue, List<PointStar> starsHere,
                     PoleTurn pole, MoonComing moon, List<EdgePoint> edges,
                     List<SkylinePoint> skyline, TripodView view) {

    /** Copies the lists. */
    public Trails {
        tracks = List.copyOf(tracks);
        starsHere = List.copyOf(starsHere);
        edges = List.copyOf(edges);
        skyline = List.copyOf(skyline);
    }

    /**
     * The trails of some stars, whether they show or not.
     *
     * @param sheet the sheet; without one it stays open what shows
     * @throws gloam.units.BadInput if the shutter would be open by day
     */
    public static Trails of(Ephemeris ephemeris, FrameQuestion question, Optional<Sheet> sheet,
                            List<Star> stars) {
        return new TrailSurvey(ephemeris, question, sheet).of(stars);
    }

    /**
     * The trails of planets, Moon and all stars of a catalogue; with a sheet, of the stars that show.
     *
     * @param sheet the sheet; without one it stays open what shows
     * @throws gloam.units.BadInput if the shutter would be open by day or the Sun shines into the frame
     */
    public static Trails ofAll(Ephemeris ephemeris, FrameQuestion question, Optional<Sheet> sheet,
                               List<Star> catalogue) {
        return new TrailSurvey(ephemeris, question, sheet).ofAll(catalogue);
    }

    /** What leaves a mark on the sheet; empty without a film. */
    public Optional<Recorded> recorded() {
        List<Track> shown = tracks.stream().filter(track -> track.mark.filter(Mark::records).isPresent())
                .toList();
        List<String> stars = shown.stream().filter(track -> track.kind == Kind.STAR).map(Track::name)
                .toList();
        return sheet.map(on -> new Recorded(stars.size(), catalogue, shown.stream()
                .filter(track -> track.kind != Kind.STAR)
                .map(Track::name).toList(), stars.stream().findFirst()));
    }

    /**
     * What leaves a mark on a sheet.
     *
     * @param stars         number of stars
     * @param catalogue     the stars searched; empty if stars were asked for by name
     * @param bodies        Moon and planets
     * @param brightestStar name of the brightest of the stars
     */
    public record Recorded(int stars, Optional<Catalogue> catalogue, List<String> bodies,
                           Optional<String> brightestStar) {
    }

    /**
     * The stars of the catalogue that run over the sheet above the skyline.
     *
     * @param crossingStars their number
     * @param toMag         V magnitude at which the catalogue ends
     * @param starsSpread   by how many the number of those that leave a mark may be wrong
     * @param fainterStars  about how many fainter than the catalogue's leave one too; an estimate
     */
    public record Catalogue(int crossingStars, double toMag, int starsSpread, int fainterStars) {
    }

    /** What draws a trail. */
    public enum Kind {
        STAR, PLANET, MOON
    }

    /**
     * One trail.
     *
     * @param name       of what draws it
     * @param kind       what that is
     * @param magnitude  V magnitude; NaN if not known
     * @param mark       how it shows on the sheet; empty without a film or a magnitude
     * @param trail      as it is drawn
     * @param frameShare its length as a share of the frame's longer side
     */
    public record Track(String name, Kind kind, double magnitude, Optional<Mark> mark, Trail trail,
                        double frameShare) {

        /** Whether it is known not to show. */
        public boolean hidden() {
            return mark.filter(on -> !on.records).isPresent();
        }
    }

    /**
     * How a trail marks the sheet.
     *
     * @param records      whether it shows
     * @param stopsOverSky how far it rises above the sky around it, in stops
     * @param limitMag     faintest V magnitude of a star that shows there; negative infinity if none does
     */
    public record Mark(boolean records, double stopsOverSky, double limitMag) {
    }

    /**
     * The sheet against which trails must show.
     *
     * @param judged        the sheet at the frame's centre; away from the Moon, if that is in the frame
     * @param trailLimitMag faintest V magnitude that leaves a trail there; negative infinity if none does
     * @param elsewhere     declination of the star whose limit that is, if the centre is so close to a pole
     *                      that a star there draws little more than a point
     * @param awayFromMoon  whether the Moon is in the frame, and the sky's light is that away from its halo
     */
    public record SheetLimit(ExposedSheet judged, double trailLimitMag, Optional<Angle> elsewhere,
                             boolean awayFromMoon) {
    }

    /**
     * An imaginary star that is at some point half-way through the exposure.
     *
     * @param star  its place, motion and trail
     * @param point whether its trail is no longer than its spot is wide
     * @param trailLimitMag faintest V magnitude that leaves a trail there, at the centre that of the sheet;
     *                      empty if none does, without a film, and where it is a point
     */
    public record PointStar(StarHere star, boolean point, OptionalDouble trailLimitMag) {
    }

    /**
     * The celestial pole and the sky's turn about it.
     *
     * @param pole         where it is
     * @param turnDeg      by how many degrees the sky turns around it in all openings
     * @param longestArcMm longest trail around it inside the frame, in mm; empty if the pole is outside
     */
    public record PoleTurn(CelestialPole pole, double turnDeg, OptionalDouble longestArcMm) {
    }

    /**
     * The Moon and the frame, from opening the shutter on.
     *
     * @param inFrameAt   when its centre is first in the frame and above the skyline; empty if not before
     *                    {@code lookedUntil}
     * @param lookedUntil end of the time searched
     */
    public record MoonComing(Optional<Instant> inFrameAt, Instant lookedUntil) {
    }

    /** A point of the skyline, and where it falls on the sheet. */
    public record SkylinePoint(Framing.Point point, Direction seen) {
    }

    /** An edge of the frame that directions stand along. */
    public enum Edge {
        BOTTOM, LEFT
    }

    /** The direction seen at a point of the frame's edge. */
    public record EdgePoint(Edge edge, Framing.Point point, Direction seen) {
    }
}
