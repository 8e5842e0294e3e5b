package gloam.report;

import gloam.exposure.ExposedSheet;
import gloam.gear.Camera;
import gloam.gear.FNumbers;
import gloam.trail.CelestialPole;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import gloam.trail.Trail;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What runs across one framing while the shutter is open.
 *
 * <p>On the sheet x runs to the right and y up as seen in the scene, from the frame's centre; directions are from +x
 * towards +y.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param frame       the framing and the exposure
 * @param sheet       what the sheet is taken to be; left out when no film was given
 * @param tracks      the trails in the frame: planets and Moon, then stars, brightest first
 * @param starsHere   what a star would draw that stands at the centre or in a corner half-way through
 * @param pole        the celestial pole above the horizon
 */
public record TrailReport(OffsetDateTime generatedAt, Place site, FrameRow frame, Optional<SheetRow> sheet,
                          List<TrackRow> tracks, List<HereRow> starsHere, PoleRow pole) implements Report {

    @Override
    public boolean empty() {
        return tracks.isEmpty();
    }

    /** The framing and the exposure. */
    public record FrameRow(double azimuthDeg, double altitudeDeg, double rollDeg, double focalLengthMm,
                           double widthMm, double heightMm, OffsetDateTime openAt, OffsetDateTime closeAt,
                           double lastsS, boolean airless) {

        static FrameRow of(FrameQuestion question) {
            Framing framing = question.framing();
            Camera camera = framing.camera();
            SiteClock clock = new SiteClock(question.site().zone());
            return new FrameRow(Rounding.azimuthDeg(framing.aim().azimuth()),
                    Rounding.positionDeg(framing.aim().altitude()), Rounding.positionDeg(framing.roll()),
                    camera.lens().focalLengthMm(), camera.frame().widthMm(), camera.frame().heightMm(),
                    clock.asked(question.open().start()), clock.asked(question.open().endExclusive()),
                    Rounding.decimals(question.open().seconds(), 3), question.airless());
        }
    }

    /**
     * The sheet against which trails must show.
     *
     * @param trailLimitMag faintest magnitude that shows at the frame's centre; left out where nothing does
     */
    public record SheetRow(String film, double fNumber, double skyToneStops, OptionalDouble trailLimitMag) {

        static SheetRow of(ExposedSheet sheet, double trailLimitMag) {
            return new SheetRow(sheet.film().name(), FNumbers.marking(sheet.fNumber()),
                    Rounding.stops(sheet.skyToneStops()), Rounding.magIfKnown(trailLimitMag));
        }
    }

    /**
     * One trail.
     *
     * @param kind         star, planet, moon or sun
     * @param magnitude    V; left out where it is not known
     * @param records      whether it shows on the sheet; left out when no film was given or the magnitude is unknown
     * @param points       along it, both ends included
     * @param directionDeg of the motion at mid exposure
     * @param leavesFrame  whether it goes out over an edge while the shutter is open
     */
    public record TrackRow(String name, String kind, OptionalDouble magnitude, Optional<Boolean> records,
                           List<PointRow> points, double lengthMm, double directionDeg, double sagittaMm,
                           boolean leavesFrame) {

        static TrackRow of(String name, String kind, double magnitude, Optional<Boolean> records, Trail trail,
                           SiteClock clock) {
            return new TrackRow(name, kind, Rounding.magIfKnown(magnitude), records,
                    trail.points().stream().map(point -> new PointRow(clock.asked(point.at()),
                            Rounding.mm(point.xMm()), Rounding.mm(point.yMm()))).toList(),
                    Rounding.mm(trail.lengthMm()), Rounding.angleDeg(trail.direction()),
                    Rounding.mm(trail.sagittaMm()), trail.leavesFrame());
        }
    }

    /** Where an image stands at a moment. */
    public record PointRow(OffsetDateTime at, double xMm, double yMm) {
    }

    /** What a star would draw that stands at a point half-way through. */
    public record HereRow(String where, double xMm, double yMm, double lengthMm, double directionDeg,
                          double sagittaMm) {

        static HereRow of(StarHere star) {
            return new HereRow(star.where().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    Rounding.mm(star.point().xMm()), Rounding.mm(star.point().yMm()), Rounding.mm(star.lengthMm()),
                    Rounding.angleDeg(star.motion().direction()), Rounding.mm(star.sagittaMm()));
        }
    }

    /** The celestial pole and where it falls, be it beside the frame; left out where the lens does not see. */
    public record PoleRow(String name, double azimuthDeg, double altitudeDeg, boolean inFrame, OptionalDouble xMm,
                          OptionalDouble yMm) {

        static PoleRow of(CelestialPole pole) {
            Optional<Framing.Point> place = pole.place();
            return new PoleRow(pole.north() ? "north" : "south", Rounding.azimuthDeg(pole.direction().azimuth()),
                    Rounding.positionDeg(pole.direction().altitude()), pole.inFrame(),
                    place.map(point -> OptionalDouble.of(Rounding.mm(point.xMm()))).orElse(OptionalDouble.empty()),
                    place.map(point -> OptionalDouble.of(Rounding.mm(point.yMm()))).orElse(OptionalDouble.empty()));
        }
    }
}
