package gloam.planner;

import gloam.units.Interval;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts into one line why a wish cannot be exposed on a night. */
final class Reasons {

    private Reasons() {
    }

    /** A condition and when it holds on a night. */
    private record Held(Condition condition, BitSet minutes, List<Interval> spans) {

        static Held of(Condition condition, NightSky sky) {
            BitSet minutes = condition.spans().map(sky.clock()::during).orElseGet(() -> condition.holds(sky.sunDown()));
            return new Held(condition, minutes, condition.spans().orElseGet(() -> sky.clock().spans(minutes)));
        }

        boolean at(Condition.When when) {
            return condition.when() == when;
        }
    }

    /** The condition or the pair of conditions that leaves no minute of the night. */
    static String closed(List<Condition> conditions, NightSky sky) {
        List<Held> held = conditions.stream().map(condition -> Held.of(condition, sky)).toList();
        Optional<Held> never = held.stream().filter(one -> one.minutes.isEmpty()).findFirst();
        if (never.isPresent()) {
            return ConditionWords.never(never.get().condition.what(), sky.night());
        }
        BitSet throughout = sky.sunDown();
        for (Condition.When when : Condition.When.values()) {
            BitSet good = (BitSet) throughout.clone();
            for (Held one : held.stream().filter(one -> one.at(when)).toList()) {
                if (!good.intersects(one.minutes)) {
                    return exclusion(held, one, sky.clock().spans(good), sky);
                }
                good.and(one.minutes);
            }
            throughout = when == Condition.When.THROUGHOUT ? good : throughout;
        }
        throw new IllegalStateException("all conditions hold together");
    }

    private static String exclusion(List<Held> all, Held last, List<Interval> others, NightSky sky) {
        Optional<Held> other = all.stream().filter(one -> !one.minutes.intersects(last.minutes)).findFirst();
        String against = other.map(one -> ConditionWords.what(one.condition.what()) + " only " + words(one.spans, sky))
                .orElseGet(() -> "all else only " + words(others, sky));
        return against + ", but " + ConditionWords.what(last.condition.what()) + " only " + words(last.spans, sky);
    }

    private static String words(List<Interval> spans, NightSky sky) {
        NightTimes times = NightTimes.of(sky.night());
        return spans.stream().map(times::span).collect(Collectors.joining(" and "));
    }

    /** The aims that leave no shot worth a sheet, where the span itself is there. */
    static String conflict(Wish wish, List<ShotChooser.Offer> offers) {
        Optional<Shot> best = offers.stream().flatMap(offer -> offer.shots().stream())
                .max(Comparator.comparingDouble(Shot::satisfaction));
        if (best.isPresent()) {
            return missed(wish, best.get());
        }
        Optional<Failed> failed = offers.stream().flatMap(offer -> offer.failed().stream()).min(Failed.ORDER);
        if (failed.isPresent()) {
            Shot shot = failed.get().shot();
            return failed.get().blank().map(blank -> blank(shot, blank)).orElseGet(() -> missed(wish, shot));
        }
        return offers.stream().map(ShotChooser.Offer::conflict)
                .min(Comparator.comparingInt(conflict -> conflict.bounds().gapMin()))
                .map(conflict -> excluded(wish, conflict)).orElse("no start leaves time for it");
    }

    private static String blank(Shot shot, Blanks.Blank blank) {
        boolean dark = shot.toneStops() < blank.boundStops();
        String nothing = String.format(Locale.ROOT, "nothing would show: no star leaves a trail and the sky "
                + "stays %s, tone %s at f/%s in %s, while a tone shows from %s %s", dark ? "black" : "white",
                Wording.stops(shot.toneStops()), Wording.fNumber(shot.fNumber()),
                Wording.duration(shot.durationMin()), Wording.stops(blank.boundStops()),
                dark ? "up" : "down");
        return nothing + (blank.atFNumber().isEmpty() ? "; it takes another light" : "; it takes f/"
                + Wording.fNumber(blank.atFNumber().getAsDouble()) + (dark ? " or wider" : " or narrower"));
    }

    private static String missed(Wish wish, Shot best) {
        if (Satisfaction.ofTone(wish.tone(), best.toneStops()) < Satisfaction.ofRecords(best.shortfallMag())) {
            return String.format(Locale.ROOT, "the nearest tone is %s at f/%s in %s, too far from %s",
                    Wording.stops(best.toneStops()), Wording.fNumber(best.fNumber()),
                    Wording.duration(best.durationMin()), Wording.tone(wish.tone()));
        }
        String what = wish.records() instanceof Wish.Records.One one ? one.body().properName()
                : stars(((Wish.Records.AtLeast) wish.records()).trails());
        return Double.isInfinite(best.shortfallMag()) ? "fewer than " + what + " of the catalogue stand in the frame"
                : String.format(Locale.ROOT, "%s would not record: %.1f mag too faint for f/%s", what,
                best.shortfallMag(), Wording.fNumber(best.fNumber()));
    }

    private static String stars(int count) {
        return count == 1 ? "1 star" : count + " stars";
    }

    private static String excluded(Wish wish, ShotChooser.Conflict conflict) {
        Bounds bounds = conflict.bounds();
        return least(wish, bounds.leastBy(), conflict.fNumber()) + " needs " + Wording.duration(bounds.leastMin())
                + ", " + most(wish, bounds.mostBy(), conflict.fNumber()) + " ends it after "
                + Wording.duration(Math.max(0, bounds.mostMin()));
    }

    private static String least(Wish wish, Bounds.Cut cut, double fNumber) {
        return switch (cut) {
            case TRAIL -> "a trail of " + Wording.mm(wish.trail().leastMm().orElseThrow());
            case TONE -> Wording.tone(wish.tone()) + " at f/" + Wording.fNumber(fNumber);
            case ARC -> "an arc of " + Wording.degrees(wish.limits().arcDeg().least().orElseThrow());
            default -> named(cut, "the shortest exposure wanted");
        };
    }

    private static String most(Wish wish, Bounds.Cut cut, double fNumber) {
        return switch (cut) {
            case TRAIL -> "a trail of at most " + Wording.mm(wish.trail().mostMm().orElseThrow());
            case TONE -> Wording.tone(wish.tone()) + " at f/" + Wording.fNumber(fNumber);
            case ARC -> "an arc of at most " + Wording.degrees(wish.limits().arcDeg().most().orElseThrow());
            default -> named(cut, "the longest exposure wanted");
        };
    }

    private static String named(Bounds.Cut cut, String exposure) {
        return switch (cut) {
            case OPENING -> "opening in dusk";
            case CLOSING -> "closing in dawn";
            case MIDDLE -> "the middle of the exposure";
            case SPAN -> "the span";
            case BLEND -> "the share of twilight";
            default -> exposure;
        };
    }
}
