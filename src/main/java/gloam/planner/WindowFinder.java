package gloam.planner;

import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds when and how a wish can be exposed on a night: its spans, and in them the shots of every opening. */
final class WindowFinder {

    private final Wish wish;
    private final Kit kit;
    private final NightSky sky;
    private final StarField stars;
    private final Aiming aiming;

    /**
     * What was found.
     *
     * @param openings shots to choose from for each opening, from the shortest to the most satisfying
     * @param closedBy why there are none, where there are none
     */
    record Finding(Wish wish, NightSky sky, List<List<Shot>> openings, String closedBy) {

        /** All shots to choose from. */
        List<Shot> shots() {
            return openings.stream().flatMap(List::stream).toList();
        }

        /** The best satisfaction to be had, 0 for none. */
        double satisfaction() {
            return shots().stream().mapToDouble(Shot::satisfaction).max().orElse(0);
        }
    }

    /**
     * The moments of a night that are good for a wish.
     *
     * @param throughout the minutes in which the shutter may be open
     * @param own        those of them that are good for the opening, the middle or the closing, where these have a
     *                   condition of their own
     */
    private record Moments(BitSet throughout, Map<Condition.When, BitSet> own) {

        static Moments of(List<Condition> conditions) {
            Map<Condition.When, BitSet> common = new EnumMap<>(Condition.When.class);
            conditions.forEach(condition -> common.computeIfAbsent(condition.when(),
                    when -> (BitSet) condition.minutes().clone()).and(condition.minutes()));
            BitSet throughout = common.remove(Condition.When.THROUGHOUT);
            common.values().forEach(minutes -> minutes.and(throughout));
            return new Moments(throughout, common);
        }

        BitSet at(Condition.When when) {
            return own.getOrDefault(when, throughout);
        }
    }

    /** Looks at a wish on a night. */
    WindowFinder(Wish wish, Kit kit, NightSky sky, StarField stars) {
        this.wish = wish;
        this.kit = kit;
        this.sky = sky;
        this.stars = stars;
        this.aiming = new Aiming(wish.aim(), sky, kit.camera());
    }

    /** The shots of every opening, five minutes apart and at the start of every span. */
    Finding find() {
        List<Condition> conditions = Conditions.of(wish, sky, aiming);
        Optional<String> closed = Reasons.closed(conditions, sky);
        if (closed.isPresent()) {
            return new Finding(wish, sky, List.of(), closed.get());
        }
        List<ShotChooser.Offer> offers = offers(Moments.of(conditions));
        List<List<Shot>> good = offers.stream().map(offer -> offer.shots().stream()
                .filter(shot -> shot.satisfaction() >= Satisfaction.LEAST).toList()).filter(shots -> !shots.isEmpty()).toList();
        return new Finding(wish, sky, good, good.isEmpty() ? Reasons.conflict(wish, offers) : "");
    }

    private List<ShotChooser.Offer> offers(Moments moments) {
        List<ShotChooser.Offer> offers = new ArrayList<>();
        List<MinuteRun> runs = MinuteRun.of(moments.throughout);
        MinuteRun longest = runs.stream().max(Comparator.comparingInt(MinuteRun::lastsMin)).orElseThrow();
        ShotChooser chooser = new ShotChooser(wish, kit, growth(moments, longest),
                new TrailAims(wish.records(), sky, stars), new Blend(wish.limits(), sky.darkRun()));
        for (MinuteRun run : runs) {
            Optional<FramedLight> shared = aiming.fixed()
                    ? Optional.of(FramedLight.of(aiming, kit.film(), run)) : Optional.empty();
            for (int anchorMin : anchors(run, moments)) {
                Opening opening = opening(anchorMin, run);
                Framing framing = aiming.framing(anchorMin);
                FramedLight light = shared.orElseGet(() -> FramedLight.of(sky, framing, kit.film(), new MinuteRun(
                        opening.openAt(opening.mostMin()), opening.closeAt(opening.mostMin()))));
                offers.add(chooser.offer(opening, framing, light, left(opening, moments)));
            }
        }
        return offers;
    }

    /** The trail's growth up to the longest exposure, around the middle of where the camera may point. */
    private Optional<TrailGrowth> growth(Moments moments, MinuteRun longest) {
        if (wish.trail().free()) {
            return Optional.empty();
        }
        BitSet middles = moments.at(Condition.When.AT_MIDDLE);
        int middleMin = aiming.fixed() ? (longest.first() + longest.last()) / 2
                : (middles.nextSetBit(0) + middles.length() - 1) / 2;
        int halfMin = Math.max(1, Math.min(longestMin(), longest.lastsMin()) / 2);
        Framing framing = aiming.framing(middleMin);
        Interval open = sky.clock().span(middleMin - halfMin, middleMin + halfMin);
        return Optional.of(TrailGrowth.of(sky, framing, aiming.centre(framing, open), open));
    }

    private List<Integer> anchors(MinuteRun run, Moments moments) {
        BitSet good = moments.at(aiming.fixed() ? Condition.When.AT_OPENING : Condition.When.AT_MIDDLE);
        List<Integer> anchors = new ArrayList<>();
        int first = good.nextSetBit(run.first());
        for (int minute = first; minute >= 0 && minute < run.last(); minute = good.nextSetBit(minute + 1)) {
            if (minute % NightClock.NODE_MIN == 0 || minute == first && aiming.fixed()) {
                anchors.add(minute);
            }
        }
        return anchors;
    }

    private Opening opening(int anchorMin, MinuteRun run) {
        if (aiming.fixed()) {
            return new Opening(anchorMin, false, Math.min(longestMin(), run.last() - anchorMin));
        }
        int halfMin = Math.min(longestMin() / 2, Math.min(anchorMin - run.first(), run.last() - anchorMin));
        Framing framing = aiming.framing(anchorMin);
        int clearMin = 0;
        while (clearMin < halfMin && moonStaysOutside(framing, anchorMin, clearMin + NightClock.NODE_MIN)) {
            clearMin += NightClock.NODE_MIN;
        }
        return new Opening(anchorMin, true, 2 * Math.min(halfMin, clearMin));
    }

    private boolean moonStaysOutside(Framing framing, int middleMin, int halfMin) {
        return Conditions.wantsMoon(wish, aiming)
                || Conditions.moonOutsideDeg(sky, framing, middleMin - halfMin) >= 0
                && Conditions.moonOutsideDeg(sky, framing, middleMin + halfMin) >= 0;
    }

    private Bounds left(Opening opening, Moments moments) {
        int step = opening.stepMin();
        Bounds bounds = new Bounds(shortestMin(), longestMin(), Bounds.Cut.EXPOSURE, Bounds.Cut.EXPOSURE)
                .inStepsOf(step).atMost(opening.mostMin(), Bounds.Cut.SPAN);
        if (bounds.empty()) {
            return bounds;
        }
        for (Map.Entry<Condition.When, BitSet> own : moments.own.entrySet()) {
            bounds = bounds.firstRunOf(min -> own.getValue().get(opening.at(own.getKey(), min)), step,
                    Bounds.Cut.of(own.getKey()));
        }
        return bounds;
    }

    private int shortestMin() {
        return Math.max(1, (int) wish.shortest().plus(Duration.ofMinutes(1)).minusNanos(1).toMinutes());
    }

    private int longestMin() {
        return (int) wish.longest().toMinutes();
    }
}
