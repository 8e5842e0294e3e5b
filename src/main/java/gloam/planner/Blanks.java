package gloam.planner;

import gloam.exposure.ExposureEngine;
import gloam.exposure.FilmPlane;
import gloam.exposure.TrailLimit;
import gloam.film.ToneCurve;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.units.Stops;
import java.util.Comparator;
import java.util.Optional;

/** Knows the sheets on which nothing shows: no trail, and a sky as black or as white as the film gets. */
final class Blanks {

    /** V magnitude of the brightest star, Sirius: Hipparcos catalogue (ESA 1997), from memory. */
    private static final double BRIGHTEST_MAG = -1.44;
    /** By how much the sky of a night may be brighter, while it is dark or moonlit, than half-way through. */
    private static final double BRIGHTER_STOPS = 2;

    private final Wish wish;
    private final Kit kit;
    private final TrailAims trails;
    private final double leastProgress;
    private final double mostProgress;

    /** The blank sheets of a wish. */
    Blanks(Wish wish, Kit kit, TrailAims trails) {
        this.wish = wish;
        this.kit = kit;
        this.trails = trails;
        ToneCurve tone = kit.film().tone();
        this.leastProgress = tone.leastShown(TrailLimit.LEAST_DIFFERENCE_DENSITY);
        this.mostProgress = tone.mostShown(TrailLimit.LEAST_DIFFERENCE_DENSITY);
    }

    /**
     * Whether a sheet stays black for certain, whatever stars are in the frame and whenever it is opened.
     *
     * @param halfway the sky of the aim half-way through the night
     * @param openS   the longest exposure, in s
     */
    static boolean certain(Kit kit, SkyBrightness halfway, double openS) {
        Lens lens = kit.camera().lens();
        FNumber fNumber = kit.fNumbers().get(0);
        double lx = FilmPlane.illuminanceLx(lens, fNumber, halfway);
        double most = openS * ExposureEngine.ratePerS(kit.film(), lx * Stops.factor(BRIGHTER_STOPS));
        return most < kit.film().tone().leastShown(TrailLimit.LEAST_DIFFERENCE_DENSITY)
                && TrailLimit.magnitude(new TrailLimit.Circumstances(kit.film(), lens, fNumber, openS, most,
                        lx, FrameStars.equatorMmS(lens) * FrameStars.LEAST_SPEED_SHARE, 0)) < BRIGHTEST_MAG;
    }

    /** Whether nothing shows of a shot met in given circumstances. */
    boolean blank(Shot shot, TrailLimit.Circumstances on) {
        return (on.skyProgress() < leastProgress || on.skyProgress() > mostProgress)
                && !trails.any(shot.framing(), shot.middleMin(), on, wish.bodies());
    }

    /** Why nothing shows of a blank shot in a light. */
    Reason reason(Shot shot, FramedLight light) {
        boolean dark = Stops.factor(shot.toneStops()) < leastProgress;
        Comparator<FNumber> nearestFirst = dark ? Comparator.reverseOrder() : Comparator.naturalOrder();
        Optional<FNumber> shown = FNumber.wholeStops().stream().sorted(nearestFirst)
                .filter(fNumber -> nearestFirst.compare(fNumber, shot.fNumber()) > 0)
                .filter(fNumber -> !blank(shot,
                        kit.circumstances(light, fNumber, shot.openMin(), shot.closeMin()))).findFirst();
        return new Reason.NothingShows(Reason.Exposure.of(shot),
                ExposureEngine.toneStops(dark ? leastProgress : mostProgress), shown);
    }
}
