package gloam.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds every exposure that a night leaves a wish and that is worth more than all that lie inside its time:
 * of each duration, the openings of all minutes, through the f-number that is best there.
 *
 * <p>Looks every five minutes and at the ends of what is allowed, and at the minutes between two looks that
 * differ.
 */
final class ExposureSearch {

    private static final int PREFERENCES = 100_000;
    /**
     * Between two looks that are as good through one f-number and differ by less in tone, nothing else is
     * found.
     */
    private static final double EVEN_STOPS = 0.1;
    /** Nor is the chance greater than so many times that of the looks. */
    private static final double EVEN_SHARE = 1.01;

    private final WishNight night;
    private final int minutes;
    private final int firstMin;
    private final int[] bestInside;
    private final int mostHundredths;
    private final boolean preferred;
    /** The place of the first f-number that gave no too light a tone; growing ones give darker tones. */
    private int lightest;

    private ExposureSearch(WishNight night, int minutes, boolean preferred) {
        this.night = night;
        this.preferred = preferred;
        this.minutes = minutes;
        this.firstMin = night.moments().throughout().nextSetBit(0);
        this.bestInside = new int[minutes + 1];
        this.mostHundredths = night.light().mostHundredths();
    }

    /**
     * The offers of a wish on a night.
     *
     * @param number    number of the wish in the trip
     * @param minutes   how many minutes the night has
     * @param preferred whether equals are told apart by what is preferred
     */
    static List<Offer> offers(WishNight night, int number, int minutes, boolean preferred) {
        ExposureSearch search = new ExposureSearch(night, minutes, preferred);
        List<Offer> offers = new ArrayList<>();
        int before = 0;
        for (int durationMin : night.durations()) {
            search.lengthenBy(durationMin - before);
            search.add(offers, number, durationMin);
            before = durationMin;
        }
        return List.copyOf(offers);
    }

    /**
     * The f-number, by its place among those to choose from, that is best for an exposure; where none is any
     * good the one at which what must record comes nearest to it, of those that keep the tone; -1 for none.
     */
    static int bestFNumber(WishNight night, int openMin, int closeMin) {
        int best = -1;
        int most = 0;
        int nearest = -1;
        double leastShortMag = Double.POSITIVE_INFINITY;
        for (int number = 0; number < night.with().fNumbers().size(); number++) {
            double toneStops = night.light().toneStops(number, openMin, closeMin);
            int value = value(night, number, toneStops, openMin, closeMin,
                    night.chance(number, toneStops, openMin, closeMin, 0));
            if (value > most) {
                most = value;
                best = number;
            }
            double shortMag = -night.marginMag(number, toneStops, openMin, closeMin);
            if ((nearest < 0 || shortMag < leastShortMag) && night.ofTone(toneStops, openMin, closeMin) > 0) {
                leastShortMag = shortMag;
                nearest = number;
            }
        }
        return best < 0 ? nearest : best;
    }

    /**
     * When to close an exposure whose tone is aimed at, for the tone nearest to the aim that costs nothing:
     * no later than there is time for, with the same chance.
     */
    static int closeNearestToTone(WishNight night, int openMin, int closeMin, int latestMin) {
        if (!(night.wish().tone() instanceof Wish.Tone.Near near)) {
            return closeMin;
        }
        int stepMin = night.aiming().fixed() ? 1 : 2;
        int number = bestFNumber(night, openMin, closeMin);
        int chance = night.hundredths(number, openMin, closeMin);
        int nearest = closeMin;
        double least = Math.abs(night.light().toneStops(number, openMin, closeMin) - near.stops());
        int lastMin = Math.min(latestMin, openMin + DurationLimits.longestMin(night.wish()));
        for (int later = closeMin + stepMin; later <= lastMin && night.allows(openMin, later);
                later += stepMin) {
            double miss = Math.abs(night.light().toneStops(number, openMin, later) - near.stops());
            if (miss < least && bestFNumber(night, openMin, later) == number
                    && night.hundredths(number, openMin, later) == chance) {
                nearest = later;
                least = miss;
            }
        }
        return nearest;
    }

    /** How long the camera is taken by the sheet of an exposure, with what follows on it. */
    private int sheetMin(int openMin, int durationMin) {
        return night.sequel().lastMin(openMin + durationMin) - openMin;
    }

    private static int value(WishNight night, int number, double toneStops, int openMin, int closeMin,
            double chance) {
        int hundredths = Chance.hundredths(chance);
        return hundredths == 0 ? 0 : hundredths * PREFERENCES
                + Preference.of(night, number, toneStops, openMin, closeMin);
    }

    /**
     * What lies inside exposures that open at a minute, when they get longer: by doubling what is covered.
     */
    private void lengthenBy(int min) {
        int shift;
        for (int covered = 1; covered <= min; covered += shift) {
            shift = Math.min(covered, min + 1 - covered);
            for (int openMin = firstMin; openMin + shift < bestInside.length; openMin++) {
                bestInside[openMin] = Math.max(bestInside[openMin], bestInside[openMin + shift]);
            }
        }
    }

    private void add(List<Offer> offers, int number, int durationMin) {
        BitSet allowed = night.moments().openings(durationMin);
        for (int openMin = allowed.nextSetBit(0); openMin >= 0; openMin = allowed.nextSetBit(openMin + 1)) {
            allowed.set(openMin, bestInside[openMin] < mostHundredths
                    && night.leaves(openMin, openMin + durationMin)
                    && night.clear(openMin, openMin + durationMin) > 0);
        }
        int[] values = new int[minutes + 1];
        for (MinuteRun run : MinuteRun.of(allowed)) {
            look(values, run, durationMin);
            addTo(offers, number, durationMin, values, run);
        }
        for (int openMin = allowed.nextSetBit(0); openMin >= 0; openMin = allowed.nextSetBit(openMin + 1)) {
            bestInside[openMin] = Math.max(bestInside[openMin], values[openMin] / PREFERENCES);
        }
    }

    /** What is found for one opening: the best value and chance, through which f-number, and the tone. */
    private record Look(int value, double chance, int number, double toneStops) {

        static final Look NOTHING = new Look(0, 0, -1, 0);

        /** Whether nothing better is found between this and the next. */
        boolean even(Look next) {
            return value == next.value && number == next.number
                    && Math.abs(toneStops - next.toneStops) < EVEN_STOPS
                    && Chance.hundredths(chance)
                    == Chance.hundredths(EVEN_SHARE * Math.max(chance, next.chance));
        }
    }

    private void look(int[] values, MinuteRun run, int durationMin) {
        int toMiddle = night.aiming().fixed() ? 0 : durationMin / 2;
        int everyMin = night.wish().limits().blends() ? 1 : NightClock.NODE_MIN;
        int openMin = run.first();
        Look before = at(openMin, durationMin);
        values[openMin] = before.value;
        while (openMin < run.last()) {
            int nextMin = Math.min(run.last(), ((openMin + toMiddle) / everyMin + 1) * everyMin - toMiddle);
            Look next = at(nextMin, durationMin);
            values[nextMin] = next.value;
            for (int between = openMin + 1; between < nextMin; between++) {
                values[between] = before.even(next) ? before.value : at(between, durationMin).value;
            }
            before = next;
            openMin = nextMin;
        }
    }

    private Look at(int openMin, int durationMin) {
        int closeMin = openMin + durationMin;
        Look best = Look.NOTHING;
        int numbers = night.with().fNumbers().size();
        while (lightest > 0 && tooLightStops(lightest - 1, openMin, closeMin) <= 0) {
            lightest--;
        }
        for (int number = lightest; number < numbers; number++) {
            double toneStops = night.light().toneStops(number, openMin, closeMin);
            double tooLightStops = Chance.tooLightStops(night.wish().tone(), toneStops);
            if (tooLightStops < 0) {
                break;
            } else if (tooLightStops > 0) {
                lightest = Math.min(number + 1, numbers - 1);
                continue;
            }
            double chance = night.chance(number, toneStops, openMin, closeMin,
                    Math.max(bestInside[openMin], best.value / PREFERENCES - (preferred ? 1 : 0)));
            int value = preferred ? value(night, number, toneStops, openMin, closeMin, chance)
                    : PREFERENCES * Chance.hundredths(chance);
            if (value > best.value) {
                best = new Look(value, chance, number, toneStops);
            }
        }
        return best;
    }

    private double tooLightStops(int number, int openMin, int closeMin) {
        return Chance.tooLightStops(night.wish().tone(), night.light().toneStops(number, openMin, closeMin));
    }

    private void addTo(List<Offer> offers, int number, int durationMin, int[] values, MinuteRun run) {
        int first = run.first();
        for (int openMin = run.first(); openMin <= run.last(); openMin++) {
            if (openMin == run.last() || values[openMin + 1] != values[first]
                    || sheetMin(openMin + 1, durationMin) != sheetMin(first, durationMin)) {
                if (values[first] > 0) {
                    offers.add(new Offer(number, night.with().number(), first, openMin,
                            sheetMin(first, durationMin), durationMin, Gain.of(night.worth(),
                            values[first] / PREFERENCES, values[first] % PREFERENCES)));
                }
                first = openMin + 1;
            }
        }
    }
}
