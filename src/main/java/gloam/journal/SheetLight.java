package gloam.journal;

import gloam.ephemeris.Direction;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.FilmPlane;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The light of sky and stars on a sheet, as the journal keeps it. */
public final class SheetLight {

    /** A light is kept every two minutes or so, and every twenty-fourth of a long exposure. */
    private static final double STEP_S = 120;
    private static final int MOST_STEPS = 24;
    /** A light that changes by less, a fortieth of a stop, is kept as steady. */
    private static final double STEADY_SHARE = 0.018;

    private SheetLight() {
    }

    /**
     * A lens as the journal keeps it, with its focus rounded to the millimetre.
     *
     * @throws BadInput if that is no farther than the focal length
     */
    public static Lens kept(Lens lens) {
        double focusM = Double.isInfinite(lens.focusM()) ? lens.focusM() : Math.rint(lens.focusM() * 1000)
                / 1000;
        if (focusM * 1000 <= lens.focalLengthMm()) {
            throw new BadInput("focus distance " + lens.focusM()
                    + " m is out of range; give one that is, to the "
                    + "millimetre as the journal keeps it, beyond the focal length of " + lens.focalLengthMm()
                    + " mm");
        }
        return new Lens(lens.focalLengthMm(), lens.fNumbers(), lens.transmittance(), focusM, lens.spotUm(),
                lens.filterStops(), lens.projection(), lens.vignetting());
    }

    /** An opening under the computed sky. */
    public static Opening computed(SkyLight sky, Direction aim, Lens lens, Interval open) {
        int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.round(open.seconds() / STEP_S)));
        List<Double> illuminancesLx = IntStream.rangeClosed(0, steps).mapToObj(step -> illuminanceLx(lens,
                sky.at(aim, open.start().plus(open.lasts().multipliedBy(step).dividedBy(steps))).total()))
                .toList();
        double steadyLx = illuminancesLx.get(illuminancesLx.size() / 2);
        boolean steady = illuminancesLx.stream().allMatch(lx -> Math.abs(lx / steadyLx - 1) < STEADY_SHARE);
        return new Opening(open, steady ? List.of(steadyLx) : illuminancesLx);
    }

    /** An opening under a measured, steady sky. */
    public static Opening measured(SkyBrightness sky, Lens lens, Interval open) {
        return new Opening(open, List.of(illuminanceLx(lens, sky)));
    }

    /** The same light through another lens. */
    public static Opening through(Opening opening, Lens before, Lens now) {
        SkyBrightness any = new SkyBrightness(1);
        double share = illuminanceLx(now, any) / illuminanceLx(before, any);
        return new Opening(opening.open(), opening.illuminancesLx().stream().map(lx -> lx * share).toList(),
                opening.aim(), opening.fNumber());
    }

    /** Luminances of the sky, in cd/m², that give an opening's light through a lens. */
    public static List<Double> skyCdM2(Opening opening, Lens lens) {
        double share = illuminanceLx(lens, new SkyBrightness(1));
        return opening.illuminancesLx().stream().map(lx -> lx / share).toList();
    }

    /** An opening under a sky of luminances in cd/m². */
    public static Opening under(List<Double> skyCdM2, Lens lens, Interval open) {
        double share = illuminanceLx(lens, new SkyBrightness(1));
        return new Opening(open, skyCdM2.stream().map(cdM2 -> cdM2 * share).toList());
    }

    /** The stars at the frame's centre. */
    public static Exposed.Stars stars(Lens lens, Optional<Site> site, Optional<Direction> aim) {
        return stars(lens, site.map(Site::latitude), site.map(Site::extinctionMag)
                .orElse(Atmosphere.clearExtinctionMag(0)), aim);
    }

    /** The stars at the frame's centre, in the air of an earlier entry about the same sheet. */
    public static Exposed.Stars stars(Lens lens, Exposed before, Optional<Place> place,
            Optional<Direction> aim) {
        double extinctionMag = before.stars().lossMag() / Atmosphere.airmass(altitude(before.aim()));
        return stars(lens, place.map(Place::latitude), extinctionMag, aim);
    }

    /** A sheet whose stars run as fast as its lens, place and aim have it. */
    public static Exposed withStars(Exposed sheet) {
        return new Exposed(sheet.film(), sheet.batch(), sheet.place(), sheet.aim(), sheet.lens(),
                sheet.openings(), sheet.measured(), stars(sheet.lens(), sheet, sheet.place(), sheet.aim()),
                sheet.temperatureC());
    }

    private static Exposed.Stars stars(Lens lens, Optional<Angle> latitude, double extinctionMag,
                                       Optional<Direction> aim) {
        Angle declination = latitude.flatMap(there -> aim.map(towards -> towards.declination(there)))
                .orElse(Angle.ZERO);
        PassingStars stars = PassingStars.of(lens, declination.degrees(),
                Atmosphere.lossMag(extinctionMag, altitude(aim)));
        return new Exposed.Stars(stars.imageSpeedMmS(), stars.lossMag());
    }

    private static Angle altitude(Optional<Direction> aim) {
        return aim.map(Direction::altitude).orElse(Atmosphere.USUAL_ALTITUDE);
    }

    private static double illuminanceLx(Lens lens, SkyBrightness sky) {
        return FilmPlane.illuminanceLx(lens, lens.fNumbers().get(0), sky);
    }
}
