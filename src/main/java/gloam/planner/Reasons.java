package gloam.planner;

import gloam.gear.FNumber;
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

    /** The condition or the pair of conditions that leaves no minute of the night, if any does. */
    static Optional<String> closed(List<Condition> conditions, NightSky sky) {
        Optional<Condition> never = conditions.stream().filter(condition -> condition.minutes().isEmpty()).findFirst();
        if (never.isPresent()) {
            return Optional.of(never.get().never());
        }
        BitSet throughout = (BitSet) conditions.get(0).minutes().clone();
        for (Condition condition : throughoutFirst(conditions)) {
            BitSet common = (BitSet) throughout.clone();
            common.and(condition.minutes());
            if (common.isEmpty()) {
                return Optional.of(exclusion(conditions, condition, throughout, sky));
            }
            if (condition.when() == Condition.When.THROUGHOUT) {
                throughout = common;
            }
        }
        return Optional.empty();
    }

    private static List<Condition> throughoutFirst(List<Condition> conditions) {
        return conditions.stream().sorted(Comparator.comparing(Condition::when)).toList();
    }

    private static String exclusion(List<Condition> conditions, Condition last, BitSet others, NightSky sky) {
        Optional<Condition> other = conditions.stream()
                .filter(condition -> !condition.minutes().intersects(last.minutes())).findFirst();
        String against = other.map(condition -> condition.what() + " only " + runs(condition.minutes(), sky))
                .orElseGet(() -> "all else only " + runs(others, sky));
        return against + ", but " + last.what() + " only " + runs(last.minutes(), sky);
    }

    private static String runs(BitSet minutes, NightSky sky) {
        NightTimes times = NightTimes.of(sky.night());
        return MinuteRun.of(minutes).stream()
                .map(run -> times.span(sky.clock().at(run.first()), sky.clock().at(run.last()))).collect(Collectors.joining(" and "));
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
                + Wording.fNumber(blank.atFNumber().get()) + (dark ? " or wider" : " or narrower"));
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

    private static String least(Wish wish, Bounds.Cut cut, FNumber fNumber) {
        return switch (cut) {
            case TRAIL -> "a trail of " + Wording.mm(wish.trail().leastMm().orElseThrow());
            case TONE -> Wording.tone(wish.tone()) + " at f/" + Wording.fNumber(fNumber);
            case ARC -> "an arc of " + Wording.degrees(wish.limits().arcDeg().least().orElseThrow());
            default -> named(cut, "the shortest exposure wanted");
        };
    }

    private static String most(Wish wish, Bounds.Cut cut, FNumber fNumber) {
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
