package gloam.planner;

import gloam.gear.FNumber;
import java.util.ArrayList;
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
    private boolean allowed;
    private boolean blends;

    /** An exposure looked at. */
    private record Looked(int number, int openMin, int closeMin, double toneStops, double missStops, double shortMag) {

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
        for (int durationMin : night.limits().durations()) {
            for (int openMin = 0; openMin + durationMin <= sky.clock().minutes(); openMin++) {
                boolean look = openMin % NightClock.NODE_MIN == 0
                        || !night.moments().throughout().get(openMin - 1)
                        || !night.moments().throughout().get(openMin + durationMin + 1);
                if (look && night.moments().throughout().get(openMin) && night.allows(openMin, openMin + durationMin)) {
                    allowed = true;
                    look(openMin, openMin + durationMin);
                }
            }
        }
        if (!allowed) {
            return noDuration();
        } else if (blends) {
            return Reason.Plain.OVERCAST;
        } else if (blank != null) {
            return nothingShows(blank);
        } else if (trail != null && (tone == null || trail.shortMag <= tone.missStops)) {
            return notRecorded(trail);
        }
        return tone == null && both == null ? Reason.Plain.TWILIGHT_SHARE
                : new Reason.ToneMissed(exposure(tone == null ? both : tone), night.wish().tone());
    }

    private void look(int openMin, int closeMin) {
        for (int number = 0; number < night.with().fNumbers().size(); number++) {
            double toneStops = night.toneStops(number, openMin, closeMin);
            Looked looked = new Looked(number, openMin, closeMin, toneStops,
                    Chance.missStops(night.wish().tone(), toneStops),
                    Math.max(0, -night.marginMag(number, toneStops, openMin, closeMin)));
            if (!night.blends(number, openMin, closeMin)) {
                continue;
            }
            if (looked.missStops > 0) {
                tone = looked.shortMag > 0 ? tone : Looked.nearer(tone, looked);
                both = Looked.nearer(both, looked);
            } else if (looked.shortMag > 0) {
                trail = Looked.nearer(trail, looked);
            } else if (night.blank(number, toneStops, openMin, closeMin)) {
                blank = Looked.nearer(blank, looked);
            } else {
                blends = true;
            }
        }
    }

    private Reason.Exposure exposure(Looked looked) {
        return new Reason.Exposure(night.with().fNumbers().get(looked.number), looked.closeMin - looked.openMin,
                looked.toneStops, sky.clock().at(looked.openMin),
                night.aiming().direction(looked.openMin + (looked.closeMin - looked.openMin) / 2));
    }

    private Reason notRecorded(Looked looked) {
        return Double.isInfinite(looked.shortMag) && night.wish().records() instanceof Wish.Records.AtLeast least
                ? new Reason.TooFewStars(least.trails())
                : new Reason.NotRecorded(night.wish().records(), looked.shortMag, exposure(looked));
    }

    private Reason nothingShows(Looked looked) {
        boolean dark = looked.toneStops < night.with().blackStops();
        Comparator<FNumber> nearestFirst = dark ? Comparator.reverseOrder() : Comparator.naturalOrder();
        FNumber now = night.with().fNumbers().get(looked.number);
        Optional<FNumber> shown = FNumber.wholeStops().stream().sorted(nearestFirst)
                .filter(fNumber -> nearestFirst.compare(fNumber, now) > 0).filter(fNumber -> {
                    WishNight other = night.through(fNumber);
                    return !other.blank(0, other.toneStops(0, looked.openMin, looked.closeMin), looked.openMin,
                            looked.closeMin);
                }).findFirst();
        return new Reason.NothingShows(exposure(looked), dark ? night.with().blackStops() : night.with().whiteStops(), shown);
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
                .map(bounds -> (Reason) new Reason.NoDuration(night.wish(), bounds.leastBy(), bounds.leastMin(),
                        bounds.mostBy(), Math.max(0, bounds.mostMin()), night.with().fNumbers().get(0)))
                .orElse(Reason.Plain.NO_START);
    }
}
