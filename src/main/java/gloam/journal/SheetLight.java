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
    /** Where nothing is said of the aim: half-way up, on the equator, through clear air at sea level. */
    private static final Angle USUAL_ALTITUDE = Angle.ofDegrees(45);

    private SheetLight() {
    }

    /** An opening under the computed sky. */
    public static Opening computed(SkyLight sky, Direction aim, Lens lens, Interval open) {
        int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.round(open.seconds() / STEP_S)));
        List<Double> illuminancesLx = IntStream.rangeClosed(0, steps).mapToObj(step -> illuminanceLx(lens,
                sky.at(aim, open.start().plus(open.lasts().multipliedBy(step).dividedBy(steps))).total())).toList();
        double steadyLx = illuminancesLx.get(illuminancesLx.size() / 2);
        boolean steady = illuminancesLx.stream().allMatch(lx -> Math.abs(lx / steadyLx - 1) < STEADY_SHARE);
        return new Opening(open, steady ? List.of(steadyLx) : illuminancesLx);
    }

    /** An opening under a measured sky that stays as it is. */
    public static Opening measured(SkyBrightness sky, Lens lens, Interval open) {
        return new Opening(open, List.of(illuminanceLx(lens, sky)));
    }

    /** The stars at the frame's centre. */
    public static Exposed.Stars stars(Lens lens, Optional<Site> site, Optional<Direction> aim) {
        Angle altitude = aim.map(Direction::altitude).orElse(USUAL_ALTITUDE);
        double extinctionMag = site.map(Site::extinctionMag).orElse(Atmosphere.clearExtinctionMag(0));
        Angle declination = site.flatMap(there -> aim.map(towards -> towards.declination(there.latitude())))
                .orElse(Angle.ZERO);
        PassingStars stars = PassingStars.of(lens, declination.degrees(), extinctionMag * Atmosphere.airmass(altitude));
        return new Exposed.Stars(stars.imageSpeedMmS(), stars.lossMag());
    }

    private static double illuminanceLx(Lens lens, SkyBrightness sky) {
        return FilmPlane.illuminanceLx(lens, lens.fNumbers().get(0), sky);
    }
}
