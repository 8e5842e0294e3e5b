package gloam.planner;

import gloam.ephemeris.Target;
import gloam.gear.FNumber;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds why no exposure is worth a sheet for a wish, though the sky it wants is there. */
final class Refused {

    private final WishNight night;
    private final NightSky sky;
    private Looked tone;
    private Looked trail;
    private Looked both;
    private Looked blank;
    private Looked unblended;
    private boolean blendAlone;
    private boolean allowed;
    private Looked overcast;

    /** An exposure looked at. */
    private record Looked(int number, int openMin, int closeMin, double toneStops, double missStops,
            double shortMag) {

        double miss() {
            return missStops + shortMag;
        }

        static Looked nearer(Looked one, Looked other) {
            return one == null || other.miss() < one.miss() ? other : one;
        }
    }

    /** A wish on a night that offers nothing to it. */
    Refused(WishNight night, NightSky sky) {
        this.night = night;
        this.sky = sky;
    }

    /** The reason, its figures those of the exposure that comes nearest. */
    Reason reason() {
        for (int durationMin : night.durations()) {
            for (int openMin = 0; openMin + durationMin <= sky.clock().minutes(); openMin++) {
                if (looked(openMin, openMin + durationMin) && night.allows(openMin, openMin + durationMin)) {
                    allowed = true;
                    look(openMin, openMin + durationMin);
                }
            }
        }
        if (!allowed) {
            return noDuration();
        } else if (overcast != null) {
            return overcast();
        } else if (blendAlone) {
            return twilight(unblended);
        } else if (blank != null && (tone == null || blank.miss() <= tone.missStops)) {
            return nothingShows(blank);
        } else if (trail != null && (tone == null || trail.shortMag <= tone.missStops)) {
            return notRecorded(trail);
        } else if (tone != null) {
            return new Reason.ToneMissed(exposure(tone), night.wish().tone());
        }
        return both == null ? twilight(unblended) : new Reason.ToneAndTrailsMissed(exposure(both),
                night.wish().tone(), faintest(both), both.shortMag);
    }

    /**
     * The exposure whose stars come nearest to what is wanted, as an offer if a count finds enough of them.
     */
    Offer countedEnough(int number) {
        double chance = night.chanceOfRecorded(trail.number, trail.openMin, trail.closeMin);
        return Offer.at(number, night.with().number(), trail.openMin, trail.closeMin,
                Gain.of(night.wish().worth(), Math.max(1, Chance.hundredths(chance)),
                Preference.of(night, trail.number, trail.toneStops, trail.openMin, trail.closeMin)));
    }

    /** Every five minutes and at the ends of what is open is near enough for a reason. */
    private boolean looked(int openMin, int closeMin) {
        BitSet good = night.moments().throughout();
        return good.get(openMin)
                && (openMin % NightClock.NODE_MIN == 0 || !good.get(openMin - 1) || !good.get(closeMin + 1));
    }

    private void look(int openMin, int closeMin) {
        for (int number = 0; number < night.with().fNumbers().size(); number++) {
            double toneStops = night.light().toneStops(number, openMin, closeMin);
            Looked looked = new Looked(number, openMin, closeMin, toneStops,
                    Chance.missStops(night.wish().tone(), toneStops),
                    night.shortMag(number, toneStops, openMin, closeMin));
            if (!night.light().blends(number, openMin, closeMin)) {
                boolean elseGood = looked.miss() == 0 && !night.blank(number, toneStops, openMin, closeMin);
                unblended = elseGood || unblended == null ? nearerBlend(unblended, looked) : unblended;
                blendAlone |= elseGood;
            } else if (looked.missStops > 0 && looked.shortMag > 0) {
                both = Looked.nearer(both, looked);
            } else if (looked.shortMag > 0) {
                trail = Looked.nearer(trail, looked);
            } else if (night.blank(number, toneStops, openMin, closeMin)) {
                blank = Looked.nearer(blank, looked);
            } else if (looked.missStops > 0) {
                tone = Looked.nearer(tone, looked);
            } else if (night.clear(openMin, closeMin) == 0
                    && Chance.hundredths(night.underClearSky(number, toneStops, openMin, closeMin)) > 0) {
                overcast = overcast == null || clear(looked) > clear(overcast) ? looked : overcast;
            } else {
                tone = Looked.nearer(tone, looked);
            }
        }
    }

    private int clear(Looked looked) {
        return Chance.percent(night.cloud(looked.openMin, looked.closeMin).map(CloudCover::clearChance)
                .orElseThrow());
    }

    private Reason overcast() {
        return new Reason.Overcast(night.cloud(overcast.openMin, overcast.closeMin).orElseThrow(),
                sky.clock().span(overcast.openMin, overcast.closeMin), night.leastClearPercent());
    }

    private Reason.Exposure exposure(Looked looked) {
        return new Reason.Exposure(night.with().fNumbers().get(looked.number),
                looked.closeMin - looked.openMin, looked.toneStops, sky.clock().at(looked.openMin),
                night.aiming().direction(looked.openMin + (looked.closeMin - looked.openMin) / 2));
    }

    private Looked nearerBlend(Looked one, Looked other) {
        return one == null || blendMargin(other) > blendMargin(one) ? other : one;
    }

    private double blendMargin(Looked looked) {
        Limits limits = night.wish().limits();
        return Math.min(limits.twilightMin()
                .margin(night.light().twilightMin(looked.openMin, looked.closeMin)),
                limits.twilightPercent().margin(night.light()
                .twilightPercent(looked.number, looked.openMin, looked.closeMin)));
    }

    private Reason twilight(Looked looked) {
        return new Reason.TwilightMissed(exposure(looked),
                night.light().twilightMin(looked.openMin, looked.closeMin),
                night.light().twilightPercent(looked.number, looked.openMin, looked.closeMin));
    }

    private Reason notRecorded(Looked looked) {
        Optional<Target> faintest = faintest(looked);
        if (faintest.isPresent()) {
            return new Reason.TooFaint(faintest.get(), looked.shortMag, exposure(looked));
        }
        return new Reason.TooFewStars(((Wish.Records.AtLeast) night.wish().records()).trails(),
                night.recorded(looked.number, looked.toneStops, looked.openMin, looked.closeMin),
                exposure(looked));
    }

    private Optional<Target> faintest(Looked looked) {
        return night.faintest(looked.number, looked.toneStops, looked.openMin, looked.closeMin);
    }

    private Reason nothingShows(Looked looked) {
        boolean dark = looked.toneStops < night.with().blackStops();
        Comparator<FNumber> nearestFirst = dark ? Comparator.reverseOrder() : Comparator.naturalOrder();
        FNumber now = night.with().fNumbers().get(looked.number);
        Optional<FNumber> shown = FNumber.wholeStops().stream().sorted(nearestFirst)
                .filter(fNumber -> nearestFirst.compare(fNumber, now) > 0).filter(fNumber -> {
                    WishNight other = night.through(fNumber);
                    return !other.blank(0, other.light().toneStops(0, looked.openMin, looked.closeMin),
                            looked.openMin, looked.closeMin);
                }).findFirst();
        return new Reason.NothingShows(exposure(looked), dark ? night.with().blackStops()
                : night.with().whiteStops(), shown);
    }

    /** The pair of limits that leaves the least wanting. */
    private Reason noDuration() {
        Openings openings = new Openings(night.wish(), sky, night.aiming(), night.moments());
        List<Bounds> left = new ArrayList<>();
        for (MinuteRun run : MinuteRun.of(night.moments().throughout())) {
            for (int anchorMin : openings.anchors(run)) {
                Opening opening = openings.at(anchorMin, run);
                left.add(night.limits().byTurn(openings.left(opening), opening.middleAt(opening.mostMin()),
                        opening.stepMin()));
            }
        }
        return left.stream().filter(Bounds::empty).min(Comparator.comparingInt(Bounds::gapMin))
                .map(bounds -> noDuration(bounds)).orElse(Reason.Plain.NO_START);
    }

    /** What would be allowed if the shortest wanted were shorter, or else the longest longer. */
    private Reason noDuration(Bounds bounds) {
        int stepMin = night.aiming().fixed() ? 1 : 2;
        int shortestMin = DurationLimits.shortestMin(night.wish());
        int longestMin = DurationLimits.longestMin(night.wish());
        for (int min = (shortestMin - 1) / stepMin * stepMin; min > 0; min -= stepMin) {
            if (allowed(min)) {
                return reason(DurationLimit.EXPOSURE, shortestMin, ofTime(bounds.mostBy()), min);
            }
        }
        for (int min = (longestMin / stepMin + 1) * stepMin; min < sky.clock().minutes(); min += stepMin) {
            if (allowed(min)) {
                return reason(ofTime(bounds.leastBy()), min, DurationLimit.EXPOSURE, longestMin);
            }
        }
        boolean ofTime = bounds.leastBy() != DurationLimit.EXPOSURE
                && bounds.mostBy() != DurationLimit.EXPOSURE;
        return ofTime ? reason(bounds.leastBy(), bounds.leastMin(), bounds.mostBy(),
                Math.max(0, bounds.mostMin())) : Reason.Plain.NO_START;
    }

    private static DurationLimit ofTime(DurationLimit limit) {
        return limit == DurationLimit.EXPOSURE ? DurationLimit.SPAN : limit;
    }

    private Reason reason(DurationLimit leastBy, int leastMin, DurationLimit mostBy, int mostMin) {
        return new Reason.NoDuration(night.wish(), leastBy, leastMin, mostBy, mostMin, night.with().fNumbers()
                .get(0));
    }

    private boolean allowed(int durationMin) {
        for (int openMin = 0; openMin + durationMin <= sky.clock().minutes(); openMin++) {
            if (looked(openMin, openMin + durationMin) && night.allows(openMin, openMin + durationMin)) {
                return true;
            }
        }
        return false;
    }
}
