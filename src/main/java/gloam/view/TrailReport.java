package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.FrameQuestion;
import gloam.answer.Trails;
import gloam.answer.TripodView;
import gloam.exposure.ExposedSheet;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.trail.CelestialPole;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What runs across one framing while the shutter is open.
 *
 * <p>On the sheet x runs to the right and y up as seen in the scene, from the frame's centre; directions are
 * from +x towards +y.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param frame       the framing and the exposure
 * @param sheet       the sheet; absent without a film
 * @param records     what leaves a mark on it; absent without a film
 * @param tracks      the trails in the frame: planets and Moon, then stars, brightest first
 * @param starsHere   trails of imaginary stars at the centre and in the corners
 * @param pole        the celestial pole that is above the horizon
 * @param moon        the Moon, and when it enters the frame
 * @param edges       where round azimuths fall on the frame's lower edge and round altitudes on its left one
 * @param skyline     where the skyline runs over the frame or near it, from left to right; empty if beside it
 * @param view        what is seen from behind the camera
 * @param fromTripod  whether that is its drawing, not the sheet
 */
public record TrailReport(OffsetDateTime generatedAt, Site site, FrameRow frame,
        Optional<TrailSheetRow> sheet,
                          Optional<Trails.Recorded> records, List<TrackRow> tracks,
                          List<StarHereRow> starsHere, PoleRow pole,
                          MoonRow moon, List<Trails.EdgePoint> edges, List<Trails.SkylinePoint> skyline,
                          TripodView view, @JsonIgnore boolean fromTripod) implements Report {

    /** Reports trails. */
    public static TrailReport of(Trails trails, Instant now) {
        Site site = trails.question().site();
        SiteClock clock = new SiteClock(site.zone());
        return new TrailReport(clock.at(now), site, FrameRow.of(trails.question()),
                trails.sheet().map(TrailSheetRow::of), trails.recorded(),
                trails.tracks().stream().map(track -> TrackRow.of(track, clock)).toList(),
                trails.starsHere().stream().map(StarHereRow::of).toList(), PoleRow.of(trails.pole()),
                MoonRow.of(trails.moon(), clock), trails.edges(), trails.skyline(), trails.view(), false);
    }

    /** The same report, drawn as it is seen from behind the camera. */
    public TrailReport seenFromTripod() {
        return new TrailReport(generatedAt, site, frame, sheet, records, tracks, starsHere, pole, moon, edges,
                skyline, view, true);
    }

    @Override
    public ZoneId zone() {
        return site.zone();
    }

    @Override
    public Document document() {
        return TrailText.document(this);
    }

    @Override
    public boolean empty() {
        return tracks.isEmpty();
    }

    /**
     * The framing and the exposure.
     *
     * @param openAt   the first opening
     * @param closeAt  the last closing
     * @param lastsS   total exposure time in seconds
     * @param openings every opening, if there are several
     */
    public record FrameRow(double azimuthDeg, double altitudeDeg, double rollDeg, double focalLengthMm,
                           double widthMm, double heightMm, String projection, OffsetDateTime openAt,
                           OffsetDateTime closeAt, double lastsS, List<Situation.Opening> openings,
                           boolean airless) {

        private static final int HALF_A_DAY = 12;

        /** Whether the last closing is in another night than the first opening: nights part at noon. */
        boolean severalNights() {
            return !openAt.minusHours(HALF_A_DAY).toLocalDate()
                    .equals(closeAt.minusHours(HALF_A_DAY).toLocalDate());
        }

        static FrameRow of(FrameQuestion question) {
            Framing framing = question.framing();
            Camera camera = framing.camera();
            SiteClock clock = new SiteClock(question.site().zone());
            return new FrameRow(framing.aim().azimuth().degrees(),
                    framing.aim().altitude().degrees(), framing.roll().degrees(),
                    camera.lens().focalLengthMm(), camera.frame().widthMm(), camera.frame().heightMm(),
                    Label.of(camera.lens().projection()),
                    clock.at(question.whole().start()), clock.at(question.whole().endExclusive()),
                    question.openS(), question.openings().stream()
                            .filter(opening -> question.openings().size() > 1)
                            .map(opening -> new Situation.Opening(clock.at(opening.start()),
                                    clock.at(opening.endExclusive()))).toList(),
                    question.airless());
        }
    }

    /**
     * The sheet against which trails must show.
     *
     * @param skyToneStops       tone of the sky at the frame's centre, in stops from the mid-tone
     * @param awayFromMoon       whether the Moon is in the frame, and tone and limit are those of the sky 8°
     *                           from it or more
     * @param trailLimitMag      faintest V magnitude that leaves a trail at the frame's centre; absent if
     *                           nothing does
     * @param starDeclinationDeg declination in degrees of the star whose limit that is, if the centre is so
     *                           close to a pole that a star there draws little more than a point; else absent
     */
    public record TrailSheetRow(String film, int fittedToSheets, double fNumber,
                           double skyToneStops, boolean awayFromMoon, OptionalDouble trailLimitMag,
                           OptionalDouble starDeclinationDeg) {

        static TrailSheetRow of(Trails.SheetLimit sheet) {
            ExposedSheet judged = sheet.judged();
            return new TrailSheetRow(judged.film().name(), judged.film().fittedToSheets(),
                    judged.fNumber().marked(), judged.skyToneStops(), sheet.awayFromMoon(),
                    Finite.of(sheet.trailLimitMag()), Finite.of(sheet.elsewhere().map(Angle::degrees)));
        }
    }

    /**
     * The trail of an imaginary star that is at some point half-way through the exposure.
     *
     * @param lengthMm     its length on the sheet, in mm; absent if the star only touches a corner
     * @param point        whether it is no longer than its spot is wide
     * @param speedMmH     speed of the image half-way through, in mm an hour
     * @param directionDeg direction of motion then, in degrees from right through up
     * @param sagittaMm    how far it bends from straight, in mm; absent with the length
     * @param trailLimitMag faintest V magnitude that leaves a trail there, at the centre that of the sheet;
     *                      absent if none does, without a film, and where a star draws a point
     */
    public record StarHereRow(String where, double xMm, double yMm, OptionalDouble lengthMm, boolean point,
                          double speedMmH, double directionDeg, OptionalDouble sagittaMm,
                          OptionalDouble trailLimitMag) {

        private static final double HOUR_S = 3600;

        static StarHereRow of(Trails.PointStar here) {
            StarHere star = here.star();
            return new StarHereRow(Label.of(star.where()),
                    star.point().xMm(), star.point().yMm(), Finite.of(star.drawn().map(Trail::lengthMm)),
                    here.point(),
                    HOUR_S * star.motion().speedMmS(), star.motion().direction().positive().degrees(),
                    Finite.of(star.drawn().map(Trail::sagittaMm)), here.trailLimitMag());
        }
    }

    /**
     * The celestial pole and its image, inside the frame or not; the image is absent if it is behind the
     * camera.
     *
     * @param turnDeg      by how many degrees the sky turns around it in all openings
     * @param longestArcMm longest trail around it inside the frame, in mm; absent if the pole is outside
     */
    public record PoleRow(String name, double azimuthDeg, double altitudeDeg, boolean inFrame,
            OptionalDouble xMm,
                          OptionalDouble yMm, double turnDeg, OptionalDouble longestArcMm) {

        static PoleRow of(Trails.PoleTurn about) {
            CelestialPole pole = about.pole();
            Optional<Framing.Point> place = pole.place();
            return new PoleRow(pole.north() ? "north" : "south", pole.direction().azimuth().degrees(),
                    pole.direction().altitude().degrees(), pole.inFrame(),
                    place.map(point -> OptionalDouble.of(point.xMm())).orElse(OptionalDouble.empty()),
                    place.map(point -> OptionalDouble.of(point.yMm())).orElse(OptionalDouble.empty()),
                    about.turnDeg(), about.longestArcMm());
        }
    }
}
