package gloam.planner;

import gloam.trail.Framing;
import gloam.units.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
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
    record Finding(Wish wish, NightSky sky, List<List<Shot>> openings, Optional<Reason> closedBy) {

        /** All shots to choose from. */
        List<Shot> shots() {
            return openings.stream().flatMap(List::stream).toList();
        }

        /** The best satisfaction to be had, 0 for none. */
        double satisfaction() {
            return shots().stream().mapToDouble(Shot::satisfaction).max().orElse(0);
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
        Optional<Moments> moments = Moments.of(conditions, sky.sunDown());
        if (moments.isEmpty()) {
            return new Finding(wish, sky, List.of(), Optional.of(Reasons.closed(conditions, sky)));
        }
        List<ShotChooser.Offer> offers = offers(moments.get());
        List<List<Shot>> good = offers.stream().map(offer -> offer.shots().stream()
                .filter(shot -> shot.satisfaction() >= Satisfaction.LEAST).toList()).filter(shots -> !shots.isEmpty()).toList();
        return new Finding(wish, sky, good, good.isEmpty() ? Optional.of(Reasons.conflict(wish, offers)) : Optional.empty());
    }

    private List<ShotChooser.Offer> offers(Moments moments) {
        List<ShotChooser.Offer> offers = new ArrayList<>();
        List<MinuteRun> runs = MinuteRun.of(moments.throughout());
        MinuteRun longest = runs.stream().max(Comparator.comparingInt(MinuteRun::lastsMin)).orElseThrow();
        Openings openings = new Openings(wish, sky, aiming, moments);
        ShotChooser chooser = new ShotChooser(kit, new ExposureLimits(wish, new TwilightShare(wish.limits(), sky.darkRun()),
                growth(openings, moments, longest)), new TrailAims(wish.records(), sky, stars));
        for (MinuteRun run : runs) {
            Optional<FramedLight> shared = aiming.fixed()
                    ? Optional.of(FramedLight.of(aiming, kit.film(), run)) : Optional.empty();
            for (int anchorMin : openings.anchors(run)) {
                Opening opening = openings.at(anchorMin, run);
                Framing framing = aiming.framing(anchorMin);
                FramedLight light = shared.orElseGet(() -> FramedLight.of(sky, framing, kit.film(), new MinuteRun(
                        opening.openAt(opening.mostMin()), opening.closeAt(opening.mostMin()))));
                offers.add(chooser.offer(opening, framing, light, openings.left(opening)));
            }
        }
        return offers;
    }

    /** The trail's growth up to the longest exposure, around the middle of where the camera may point. */
    private Optional<TrailGrowth> growth(Openings openings, Moments moments, MinuteRun longest) {
        if (wish.trail().free()) {
            return Optional.empty();
        }
        BitSet middles = moments.at(Condition.When.AT_MIDDLE);
        int middleMin = aiming.fixed() ? (longest.first() + longest.last()) / 2
                : (middles.nextSetBit(0) + middles.length() - 1) / 2;
        int halfMin = Math.max(1, Math.min(openings.longestMin(), longest.lastsMin()) / 2);
        Framing framing = aiming.framing(middleMin);
        Interval open = sky.clock().span(middleMin - halfMin, middleMin + halfMin);
        return Optional.of(TrailGrowth.of(sky, framing, aiming.centre(framing, open), open));
    }
}
