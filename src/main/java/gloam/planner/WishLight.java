package gloam.planner;

import gloam.ephemeris.Body;
import gloam.exposure.Bracket;
import gloam.light.SkyLight;
import gloam.proof.AwayFromMoon;
import gloam.units.Stops;
import java.util.function.IntFunction;

/**
 * The sky's light on the film of a wish's exposures on a night, at the frame's centre. For one thread at a
 * time.
 */
final class WishLight {

    /** From one direction of a camera that follows to the next: the light in between is straight in stops. */
    private static final int LIGHT_MIN = 15;
    private static final int SECONDS = 60;

    private final Wish wish;
    private final Equipment with;
    private final NightSky sky;
    private final Aiming aiming;
    private final TwilightShare twilight;
    private final boolean withMoon;
    private final Sequel sequel;
    private final MinuteRun whole;
    private final MinuteLight[] light;

    /**
     * The light of a wish.
     *
     * @param whole  the minutes that exposures lie in
     * @param sequel what adds to their light
     */
    WishLight(Wish wish, Equipment with, NightSky sky, Aiming aiming, MinuteRun whole, Sequel sequel) {
        this.wish = wish;
        this.with = with;
        this.sky = sky;
        this.aiming = aiming;
        this.twilight = new TwilightShare(wish.limits(), sky.darkRun());
        this.withMoon = wish.letsMoonIn();
        this.whole = whole;
        this.sequel = sequel;
        this.light = new MinuteLight[sky.clock().minutes() / LIGHT_MIN + 3];
    }

    /** Logarithm to base 2 of the sky's progress at the frame's centre: its tone in stops. */
    double toneStops(int number, int openMin, int closeMin) {
        double ownStops = ownStops(number, openMin, closeMin);
        return sequel.none() ? ownStops
                : log2(Stops.factor(ownStops) + sequel.progress(number, closeMin));
    }

    private double ownStops(int number, int openMin, int closeMin) {
        if (aiming.fixed()) {
            return log2(light(0).through(number).progress(openMin, closeMin));
        }
        int middleMin = openMin + (closeMin - openMin) / 2;
        int step = middleMin / LIGHT_MIN;
        double before = log2(light(step).through(number).progress(openMin, closeMin));
        int overMin = middleMin % LIGHT_MIN;
        return overMin == 0 ? before
                : before + (log2(light(step + 1).through(number).progress(openMin, closeMin)) - before)
                * overMin / LIGHT_MIN;
    }

    private static double log2(double progress) {
        return Stops.between(1, progress);
    }

    private MinuteLight light(int step) {
        if (light[step] == null) {
            int reachMin = (int) wish.longest().toMinutes() / 2 + LIGHT_MIN + 1;
            MinuteRun minutes = aiming.fixed() ? whole
                    : new MinuteRun(Math.max(whole.first(), step * LIGHT_MIN - reachMin),
                    Math.min(whole.last(), step * LIGHT_MIN + reachMin));
            light[step] = MinuteLight.of(sky, with, seen(aiming.fixed() ? 0 : step * LIGHT_MIN), minutes);
        }
        return light[step];
    }

    /** The sky by the minute, as it is judged when the camera points as at a minute. */
    private IntFunction<SkyLight.Sample> seen(int aimedMin) {
        if (!withMoon && aiming.fixed()) {
            return aiming::light;
        } else if (!withMoon) {
            SkyLight.Patch patch = sky.patch(aiming.direction(aimedMin));
            return minute -> sky.light(patch, minute);
        }
        AwayFromMoon frame = new AwayFromMoon(aiming.framing(aimedMin), sky::patch);
        return minute -> frame.light(sky.position(Body.MOON, minute).apparentDirection(),
                patch -> sky.light(patch, minute));
    }

    /** Light on the film half-way through, as the logarithm to base 2 of lx. */
    double log2Lx(int number, int middleMin) {
        return light(aiming.fixed() ? 0 : (middleMin + LIGHT_MIN / 2) / LIGHT_MIN).log2Lx(middleMin)
                - with.log2Squared(number);
    }

    /** Standard deviation of a tone. */
    double spreadStops(double toneStops, int openMin, int closeMin) {
        int step = aiming.fixed() ? 0 : (openMin + closeMin) / 2 / LIGHT_MIN;
        return with.response().spreadStops(toneStops
                - log2((closeMin - openMin + sequel.openMin()) * SECONDS),
                light(step).skySpreadStops(openMin, closeMin));
    }

    /** The chance in hundredths that the tone of any exposure has at most. */
    int mostHundredths() {
        return mostHundredths(wish, with, aiming.fixed() ? light(0).leastSkySpreadStops() : 0);
    }

    /** The same under any light that is known no better. */
    static int mostHundredths(Wish wish, Equipment with, double leastSkySpreadStops) {
        return wish.tone() instanceof Wish.Tone.Near near && wish.later().isEmpty()
                ? Chance.hundredths(Bracket.rightChance(0, with.response().leastSpreadStops(
                near.stops() - near.withinStops() - log2(wish.longest().toSeconds()),
                near.stops() + near.withinStops() - log2(wish.shortest().toSeconds()),
                leastSkySpreadStops))) : Chance.CERTAIN;
    }

    /** Whether the share of twilight is as wished. */
    boolean blends(int number, int openMin, int closeMin) {
        return !wish.limits().blends() || twilight.suits(openMin, closeMin, made(number, openMin, closeMin));
    }

    /** Minutes of twilight in an exposure. */
    int twilightMin(int openMin, int closeMin) {
        return twilight.minutes(openMin, closeMin);
    }

    /** The share of twilight in the tone of an exposure, in per cent. */
    double twilightPercent(int number, int openMin, int closeMin) {
        return twilight.percent(openMin, closeMin, made(number, openMin, closeMin));
    }

    private MinuteProgress made(int number, int openMin, int closeMin) {
        return light(aiming.fixed() ? 0 : (openMin + closeMin) / 2 / LIGHT_MIN).through(number);
    }
}
