package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.exposure.TrailLimit;
import gloam.light.Atmosphere;
import gloam.trail.Framing;
import java.util.List;
import java.util.function.DoublePredicate;

/** By how much exposures miss the trails that must record for a wish on a night. For one thread at a time. */
final class TrailAims {

    /** How often the stars in a fixed frame are looked up: in this time they move by less than 4°. */
    private static final int STARS_STEP_MIN = 15;
    private static final double MOST_SPARE_MAG = 1;
    private static final double MOST_SHORTFALL_MAG = 5;
    private static final int HALVINGS = 9;

    private final Wish.Records records;
    private final NightSky sky;
    private final StarField stars;
    private final FrameStars[] starsByStep;

    /** The trails of a wish. */
    TrailAims(Wish.Records records, NightSky sky, StarField stars) {
        this.records = records;
        this.sky = sky;
        this.stars = stars;
        this.starsByStep = new FrameStars[sky.clock().minutes() / STARS_STEP_MIN + 2];
    }

    /** How far what must record is from just failing to, 0 to 1. */
    double safety(double shortfallMag) {
        return records instanceof Wish.Records.Nothing ? 1 : Math.max(0, Math.min(1, -shortfallMag / MOST_SPARE_MAG));
    }

    /**
     * Magnitudes by which the trail limit would have to be deeper for all to record that must; when they do, what there
     * is to spare with a minus, at most a magnitude; infinite where the stars are not there.
     *
     * @param middleMin minute at the middle of the exposure
     * @param on        the exposure's circumstances, whatever image speed and loss they state
     */
    double shortfallMag(Framing framing, int middleMin, TrailLimit.Circumstances on) {
        if (records instanceof Wish.Records.AtLeast least) {
            LimitBySpeed limit = LimitBySpeed.of(on, FrameStars.equatorMmS(on.lens()));
            FrameStars inFrame = starsAt(framing, middleMin);
            return inFrame.count() < least.trails() ? Double.POSITIVE_INFINITY : Math.max(-MOST_SPARE_MAG,
                    Math.min(MOST_SHORTFALL_MAG, inFrame.shortfallMag(least.trails(), limit)));
        }
        return records instanceof Wish.Records.One one ? shortfallMag(one.body(), nearest(middleMin, NightClock.NODE_MIN), on) : 0;
    }

    /** Whether a star of the catalogue or one of some bodies leaves a visible trail. */
    boolean any(Framing framing, int middleMin, TrailLimit.Circumstances on, List<Body> bodies) {
        LimitBySpeed limit = LimitBySpeed.of(on, FrameStars.equatorMmS(on.lens()));
        return starsAt(framing, middleMin).recorded(limit) > 0 || bodies.stream()
                .anyMatch(body -> shortfallMag(body, nearest(middleMin, NightClock.NODE_MIN), on) <= 0);
    }

    private FrameStars starsAt(Framing framing, int middleMin) {
        int step = Math.round(middleMin / (float) STARS_STEP_MIN);
        if (starsByStep[step] == null) {
            starsByStep[step] = FrameStars.of(sky, framing, sky.clock().span(middleMin - 1, middleMin + 1), stars);
        }
        return starsByStep[step];
    }

    private static int nearest(int minute, int stepMin) {
        return Math.round(minute / (float) stepMin) * stepMin;
    }

    private double shortfallMag(Body body, int minute, TrailLimit.Circumstances on) {
        Appearance look = sky.ephemeris().appearance(body, sky.site(), sky.clock().at(minute));
        double speedMmS = FrameStars.equatorMmS(on.lens()) * look.position().declination().cos();
        double lossMag = Atmosphere.lossMag(sky.site().extinctionMag(), look.position().apparentAltitude());
        TrailLimit.Circumstances met = new TrailLimit.Circumstances(on.film(), on.lens(), on.fNumber(), on.exposureS(),
                on.skyProgress(), on.skyIlluminanceLx(), speedMmS, lossMag);
        return leastDeeper(deeperMag -> TrailLimit.records(met, look.magnitude() - deeperMag, look.semidiameter()));
    }

    /** The least magnitudes by which the limit must be deeper for something to hold, between the bounds of interest. */
    private static double leastDeeper(DoublePredicate holds) {
        double hidden = -MOST_SPARE_MAG;
        double shown = MOST_SHORTFALL_MAG;
        if (holds.test(hidden)) {
            return hidden;
        }
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (hidden + shown) / 2;
            if (holds.test(middle)) {
                shown = middle;
            } else {
                hidden = middle;
            }
        }
        return shown;
    }
}
