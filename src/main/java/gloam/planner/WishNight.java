package gloam.planner;

import gloam.ephemeris.Target;
import gloam.gear.FNumber;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Judges any exposure for a wish on a night: whether the wish allows it, and the chance that it comes out as
 * wished. What is said of one exposure hangs on no other. For one thread at a time.
 */
final class WishNight {

    private final Wish wish;
    private final Equipment with;
    private final NightSky sky;
    private final Aiming aiming;
    private final Moments moments;
    private final StarField stars;
    private final DurationLimits limits;
    private final ClearSky clear;
    private final MinuteRun whole;
    private final Sequel sequel;
    private final WishLight light;
    private final CrossingStars crossing;
    private final TargetTrail[] trails;
    private final TargetTrail[] required;
    private final TimeInFrame inFrame;
    private final MoonlessFrame moonless;
    private final Shortfalls shortfalls;
    private final double[] tooFewMag;

    /** A wish at the good moments of a night, of which there are some. */
    WishNight(Wish wish, Equipment with, NightSky sky, Aiming aiming, Moments moments, StarField stars,
            ClearSky clear, Shortfalls shortfalls) {
        this.wish = wish;
        this.with = with;
        this.sky = sky;
        this.aiming = aiming;
        this.moments = moments;
        this.stars = stars;
        this.clear = clear;
        this.shortfalls = shortfalls;
        this.tooFewMag = shortfalls.of(sky.night(), wish, with.camera(), with.fNumbers());
        this.limits = new DurationLimits(wish, sky, aiming);
        BitSet good = moments.throughout();
        this.whole = new MinuteRun(good.nextSetBit(0), good.length() - 1);
        this.sequel = Sequel.of(wish, with, sky, stars, clear, shortfalls);
        this.light = new WishLight(wish, with, sky, aiming, whole, sequel);
        this.crossing = new CrossingStars(sky, aiming, stars,
                wish.records() instanceof Wish.Records.AtLeast least ? Math.max(1, least.trails()) : 1);
        this.trails = wish.targets().stream().map(target -> TargetTrail.of(target, sky, with))
                .toArray(TargetTrail[]::new);
        this.required = Arrays.stream(trails).filter(trail -> wish.mustRecord().contains(trail.target()))
                .toArray(TargetTrail[]::new);
        this.inFrame = new TimeInFrame(wish, sky, aiming, moments);
        this.moonless = new MoonlessFrame(wish, sky, aiming);
    }

    /** The same through another f-number alone. */
    WishNight through(FNumber fNumber) {
        return new WishNight(wish, with.through(List.of(fNumber)), sky, aiming, moments, stars, clear,
                shortfalls);
    }

    Wish wish() {
        return wish;
    }

    Equipment with() {
        return with;
    }

    Aiming aiming() {
        return aiming;
    }

    Moments moments() {
        return moments;
    }

    /** What is exposed on the same sheet after the first opening. */
    Sequel sequel() {
        return sequel;
    }

    WishLight light() {
        return light;
    }

    DurationLimits limits() {
        return limits;
    }

    /** The durations that are looked at, in minutes, from the shortest on. */
    int[] durations() {
        return limits.durations(whole);
    }

    /** Whether time, sky, length and what follows are as the wish has them; its light is not looked at. */
    boolean allows(int openMin, int closeMin) {
        return moments.hold(openMin, openMin + (closeMin - openMin) / 2, closeMin)
                && leaves(openMin, closeMin);
    }

    /** The same of an exposure at moments that are good for the wish. */
    boolean leaves(int openMin, int closeMin) {
        int middleMin = openMin + (closeMin - openMin) / 2;
        return limits.allow(middleMin, closeMin - openMin)
                && (closeMin - openMin) / 2 <= moonless.halfMin(middleMin) && sequel.fits(closeMin);
    }

    /** The chance of the tone, 0 to 1. */
    double ofTone(double toneStops, int openMin, int closeMin) {
        return Chance.ofTone(wish.tone(), toneStops, () -> light.spreadStops(toneStops, openMin, closeMin));
    }

    /**
     * By how many magnitudes what must record is brighter than the trail limit; infinite where nothing must.
     */
    double marginMag(int number, double toneStops, int openMin, int closeMin) {
        if (wish.records() instanceof Wish.Records.AtLeast least) {
            return marginMag(least.trails(), number, toneStops, openMin, closeMin);
        }
        double leastMag = Double.POSITIVE_INFINITY;
        for (TargetTrail trail : required) {
            leastMag = Math.min(leastMag, marginMag(trail, number, toneStops, openMin, closeMin));
        }
        return leastMag;
    }

    /** Of what must record by its name, what is least bright over the trail limit; empty for none. */
    Optional<Target> faintest(int number, double toneStops, int openMin, int closeMin) {
        return Arrays.stream(required).min(Comparator.comparingDouble(trail ->
                marginMag(trail, number, toneStops, openMin, closeMin))).map(TargetTrail::target);
    }

    private double marginMag(int stars, int number, double toneStops, int openMin, int closeMin) {
        StarLimit limit = starLimit(number, toneStops, openMin + (closeMin - openMin) / 2);
        if (limit.none()) {
            return Double.NEGATIVE_INFINITY;
        }
        return limit.equatorMag() - crossing.magnitude(stars, openMin, closeMin, limit);
    }

    private StarLimit starLimit(int number, double toneStops, int middleMin) {
        double log2Lx = light.log2Lx(number, middleMin);
        double fastMag = with.equatorial().get(number).magnitude(toneStops, log2Lx);
        double slowMag = with.slower().get(number).magnitude(toneStops, log2Lx);
        return new StarLimit(fastMag, (slowMag - fastMag) / Equipment.OCTAVES);
    }

    /** How many stars record. */
    int recorded(int number, double toneStops, int openMin, int closeMin) {
        StarLimit limit = starLimit(number, toneStops, openMin + (closeMin - openMin) / 2);
        return limit.none() ? 0 : crossing.recorded(openMin, closeMin, limit);
    }

    private double marginMag(TargetTrail trail, int number, double toneStops, int openMin, int closeMin) {
        int middleMin = openMin + (closeMin - openMin) / 2;
        return trail.marginMag(number, toneStops, light.log2Lx(number, middleMin), middleMin);
    }

    /** Whether nothing at all would show, neither a trail nor a tone between the film's black and white. */
    boolean blank(int number, double toneStops, int openMin, int closeMin) {
        if (toneStops >= with.blackStops() && toneStops <= with.whiteStops()) {
            return false;
        }
        for (TargetTrail trail : trails) {
            if (marginMag(trail, number, toneStops, openMin, closeMin) >= 0) {
                return false;
            }
        }
        return marginMag(1, number, toneStops, openMin, closeMin) < 0;
    }

    /** What an exposure that is certain to come out as wished is worth. */
    double worth() {
        return wish.worth() * clear.worthShare();
    }

    /** The least chance of a clear sky for which a sheet is exposed, in percent. */
    double leastClearPercent() {
        return clear.leastPercent();
    }

    /** The cloud over an exposure; empty without a forecast. */
    Optional<CloudCover> cloud(int openMin, int closeMin) {
        return clear.over(openMin, sequel.lastMin(closeMin));
    }

    /** The chance that an allowed exposure comes out as wished if the sky stays clear, 0 to 1. */
    double underClearSky(int number, double toneStops, int openMin, int closeMin) {
        return ofTone(toneStops, openMin, closeMin)
                * ofTrail(number, marginMag(number, toneStops, openMin, closeMin))
                * inFrame.share(openMin, closeMin);
    }

    private double ofTrail(int number, double marginMag) {
        return marginMag <= tooFewMag[number] ? 0 : Chance.ofTrail(marginMag);
    }

    /** By how many mag what must record is too faint, or 0; something where a count found too few. */
    double shortMag(int number, double toneStops, int openMin, int closeMin) {
        double marginMag = marginMag(number, toneStops, openMin, closeMin);
        return marginMag >= 0 && marginMag <= tooFewMag[number]
                ? Math.max(Double.MIN_NORMAL, tooFewMag[number] - marginMag) : Math.max(0, -marginMag);
    }

    /** Whether a count found too few stars in something that was offered. */
    boolean fellShort() {
        return Arrays.stream(tooFewMag).anyMatch(mag -> mag > Double.NEGATIVE_INFINITY);
    }

    /** The chance that counts for an exposure that the sky stays clear, 0 to 1. */
    double clear(int openMin, int closeMin) {
        return clear.chance(openMin, sequel.lastMin(closeMin));
    }

    /**
     * The chance that an allowed exposure of some tone comes out as wished; 0 if no more than a floor, in
     * hundredths.
     */
    double chance(int number, double toneStops, int openMin, int closeMin, int floor) {
        double chance = clear(openMin, closeMin) * ofTone(toneStops, openMin, closeMin);
        if (Chance.hundredths(chance) <= floor || !light.blends(number, openMin, closeMin)) {
            return 0;
        }
        double marginMag = marginMag(number, toneStops, openMin, closeMin);
        chance *= ofTrail(number, marginMag) * inFrame.share(openMin, closeMin);
        return Chance.hundredths(chance) <= floor || marginMag == Double.POSITIVE_INFINITY
                && blank(number, toneStops, openMin, closeMin) ? 0 : chance;
    }

    /** The chance where what must record just does. */
    double chanceOfRecorded(int number, int openMin, int closeMin) {
        double toneStops = light.toneStops(number, openMin, closeMin);
        return clear(openMin, closeMin) * ofTone(toneStops, openMin, closeMin) * Chance.ofTrail(0)
                * inFrame.share(openMin, closeMin);
    }

    /** {@link #chance} of any in hundredths. */
    int hundredths(int number, int openMin, int closeMin) {
        return Chance.hundredths(chance(number, light.toneStops(number, openMin, closeMin), openMin, closeMin,
                0));
    }
}
