package gloam.planner;

import gloam.gear.FNumber;
import java.util.List;
import java.util.Optional;

/**
 * How far a night has the time for a wish, by the conditions and the limits of exposures that the timetable goes by.
 *
 * <p>Which trails record and how long they get is left to the timetable: a night has the time for every wish that the
 * timetable can serve on it.
 */
final class TimeForWish {

    /** From one look at the sky to the next: in twilight the light in between is known to a tenth of a stop. */
    static final int LOOK_MIN = 2 * NightClock.NODE_MIN;

    private final Wish wish;
    private final Kit kit;
    private final NightSky sky;
    private final Aiming aiming;
    private final ExposureLimits limits;

    private TimeForWish(Wish wish, Kit kit, NightSky sky) {
        this.wish = wish;
        this.kit = kit;
        this.sky = sky;
        this.aiming = new Aiming(wish.aim(), sky, kit.camera());
        this.limits = new ExposureLimits(wish, new TwilightShare(wish.limits(), sky.darkRun()), Optional.empty());
    }

    /**
     * The longest time in a row that suits a wish, as a share of its shortest exposure, at most 1; 0 where no exposure of
     * that time makes what it wants.
     */
    static double share(Wish wish, Kit kit, NightSky sky) {
        TimeForWish time = new TimeForWish(wish, kit, sky);
        return Moments.of(Conditions.of(wish, sky, time.aiming), sky.sunDown())
                .map(moments -> time.share(moments)).orElse(0.0);
    }

    private double share(Moments moments) {
        Openings openings = new Openings(wish, sky, aiming, moments);
        List<MinuteRun> runs = MinuteRun.of(moments.throughout());
        boolean enough = false;
        int longestMin = 0;
        for (MinuteRun run : runs) {
            Optional<FramedLight> shared = Optional.empty();
            for (int anchorMin : openings.anchors(run)) {
                Opening opening = openings.at(anchorMin, run);
                Bounds left = openings.left(opening);
                enough |= !left.empty();
                longestMin = Math.max(longestMin, enough ? 0 : openings.longestLeft(opening));
                Bounds turned = limits.byTurn(left, opening.stepMin());
                if (!turned.empty()) {
                    if (limits.anyLight()) {
                        return staysBlack() ? 0 : 1;
                    }
                    if (shared.isEmpty() || !aiming.fixed()) {
                        shared = Optional.of(light(opening, run));
                    }
                    if (suits(turned, opening, shared.get())) {
                        return staysBlack() ? 0 : 1;
                    }
                }
            }
        }
        return enough ? 0 : longestMin * 60e3 / wish.shortest().toMillis();
    }

    /** Whether nothing at all would show, neither trail nor tone. */
    private boolean staysBlack() {
        boolean noTwilight = wish.sky() == Wish.SkyKind.DARK || wish.sky() == Wish.SkyKind.MOONLIT;
        int middleMin = sky.clock().minuteOf(sky.night().middle()) / sky.clock().stepMin() * sky.clock().stepMin();
        return noTwilight && wish.bodies().isEmpty()
                && Blanks.certain(kit, aiming.light(middleMin).total(), wish.longest().toMillis() * 1e-3);
    }

    private FramedLight light(Opening opening, MinuteRun run) {
        return aiming.fixed() ? FramedLight.of(aiming, kit.film(), run)
                : FramedLight.of(sky, aiming.framing(opening.anchorMin()), kit.film(),
                        new MinuteRun(opening.openAt(opening.mostMin()), opening.closeAt(opening.mostMin())));
    }

    private boolean suits(Bounds left, Opening opening, FramedLight light) {
        for (FNumber fNumber : kit.fNumbers()) {
            if (!limits.byLight(left, new ExposureLimits.Stop(opening, fNumber, light.through(fNumber))).empty()) {
                return true;
            }
        }
        return false;
    }
}
