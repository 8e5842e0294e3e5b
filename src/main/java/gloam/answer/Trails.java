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
 * @param sheet     what the sheet is taken to be; empty where no film was given
 * @param tracks    the trails in the frame: planets and Moon, then stars, brightest first
 * @param catalogue the stars that were looked for; empty where stars were asked for by name
 * @param starsHere what a star would draw that stands at the centre or in a corner half-way through
 * @param pole      the celestial pole
 * @param moon      when the Moon comes into the frame
 * @param edges     what is seen at some points of the frame's lower and left edges, inside the image circle
 */
public record Trails(FrameQuestion question, Optional<SheetLimit> sheet, List<Track> tracks,
                     Optional<Catalogue> catalogue, List<PointStar> starsHere,
                     PoleTurn pole, MoonComing moon, List<EdgePoint> edges) {

    /** Copies the lists. */
    public Trails {
        tracks = List.copyOf(tracks);
        starsHere = List.copyOf(starsHere);
        edges = List.copyOf(edges);
    }

    /**
     * The trails of those stars alone, whether they show or not.
     *
     * @param sheet what is exposed; without one nothing is said of what shows
     * @throws gloam.units.BadInput when the shutter would be open by day
     */
    public static Trails of(Ephemeris ephemeris, FrameQuestion question, Optional<Sheet> sheet,
                            List<Star> stars) {
        return new TrailSurvey(ephemeris, question, sheet).of(stars);
    }

    /**
     * The trails of planets, Moon and all stars of a catalogue; with a sheet, of the stars that show.
     *
     * @param sheet what is exposed; without one nothing is said of what shows
     * @throws gloam.units.BadInput when the shutter would be open by day or the Sun shines into the frame
     */
    public static Trails ofAll(Ephemeris ephemeris, FrameQuestion question, Optional<Sheet> sheet,
                               List<Star> catalogue) {
        return new TrailSurvey(ephemeris, question, sheet).ofAll(catalogue);
    }

    /** What marks the sheet; empty where no film was given. */
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
     * What marks a sheet.
     *
     * @param stars         how many stars of the catalogue
     * @param catalogue     those they were looked for among; empty where stars were asked for by name
     * @param bodies        Moon and planets
     * @param brightestStar the brightest of the stars by name
     */
    public record Recorded(int stars, Optional<Catalogue> catalogue, List<String> bodies,
                           Optional<String> brightestStar) {
    }

    /**
     * The stars of the catalogue that run over the sheet above the skyline.
     *
     * @param crossingStars how many
     * @param toMag         V magnitude at which the catalogue ends
     */
    public record Catalogue(int crossingStars, double toMag) {
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
     * @param magnitude  V; not a number where it is not known
     * @param mark       how it shows on the sheet; empty where no film was given or the magnitude is unknown
     * @param trail      as it is drawn
     * @param frameShare its length over the frame's longer side
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
     * @param stopsOverSky how far it stands over the sky around it, in stops
     */
    public record Mark(boolean records, double stopsOverSky) {
    }

    /**
     * The sheet against which trails must show.
     *
     * @param centre        it, at the frame's centre
     * @param trailLimitMag faintest magnitude that leaves a trail there; negative infinity where none does
     * @param elsewhere     declination of the star of which that is told where the centre is so near to a
     *                      pole of the sky that a star there draws little more than a point
     */
    public record SheetLimit(ExposedSheet centre, double trailLimitMag, Optional<Angle> elsewhere) {
    }

    /**
     * What a star would draw that stands at a point half-way through.
     *
     * @param star  its place, motion and trail
     * @param point whether the trail is no longer than its spot is wide
     */
    public record PointStar(StarHere star, boolean point) {
    }

    /**
     * The celestial pole and the sky's turn about it.
     *
     * @param pole         where it is
     * @param turnDeg      how far the sky turns about it in all openings
     * @param longestArcMm the longest trail that fits round it; empty where it is not in the frame
     */
    public record PoleTurn(CelestialPole pole, double turnDeg, OptionalDouble longestArcMm) {
    }

    /**
     * The Moon and the frame, from opening the shutter on.
     *
     * @param inFrameAt   when its centre first stands in the frame and above the skyline; empty where not
     *                    before {@code lookedUntil}
     * @param lookedUntil how far ahead was looked
     */
    public record MoonComing(Optional<Instant> inFrameAt, Instant lookedUntil) {
    }

    /** An edge of the frame that directions stand along. */
    public enum Edge {
        BOTTOM, LEFT
    }

    /** What is seen at a point of the frame's edge. */
    public record EdgePoint(Edge edge, Framing.Point point, Direction seen) {
    }
}
