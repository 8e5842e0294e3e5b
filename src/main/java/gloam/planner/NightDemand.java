package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.Target;
import gloam.gear.Camera;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far a night has the time that wishes need: their kind of sky, what they follow or must record over the terrain and in
 * the frame, their Moon and their hours, and light that shows at all. Tone, trail length and the depth of
 * twilight are left to the timetable.
 */
final class NightDemand {

    /** From one look at the sky to the next, straight in between: what rises or sets is some minutes off. */
    private static final long STEP_S = 3600;

    private final Ephemeris ephemeris;
    private final Night night;
    private final List<Interval> trulyDark;
    private final double moonLitPercent;
    private final Map<Target, Direction[]> seen = new HashMap<>();
    private final Map<Target, List<Interval>> clear = new HashMap<>();

    /**
     * The demand for a night.
     *
     * @param trulyDark      when it is dark and the Moon adds hardly any light
     * @param moonLitPercent lit part of the Moon's disc
     */
    NightDemand(Ephemeris ephemeris, Night night, List<Interval> trulyDark, double moonLitPercent) {
        this.ephemeris = ephemeris;
        this.night = night;
        this.trulyDark = trulyDark;
        this.moonLitPercent = moonLitPercent;
    }

    /** The longest time in a row that suits a wish, as a share of its shortest exposure, at most 1. */
    double share(Wish wish, Kit kit) {
        if (wish.limits().moonLitPercent().margin(moonLitPercent) < 0 || aimsIntoTerrain(wish.aim())) {
            return 0;
        }
        List<Interval> spans = ofSky(wish.sky());
        for (Target target : targets(wish)) {
            spans = Interval.intersect(spans, clear.computeIfAbsent(target, this::clear));
        }
        for (List<Interval> limit : limits(wish, kit.camera())) {
            spans = Interval.intersect(spans, limit);
        }
        double longestS = spans.stream().filter(span -> holdsTwilight(wish.sky(), span))
                .mapToDouble(span -> usableS(wish.aim(), span)).max().orElse(0);
        return longestS > 0 && staysBlack(wish, kit) ? 0
                : Math.min(1, longestS / (wish.shortest().toMillis() * 1e-3));
    }

    private boolean staysBlack(Wish wish, Kit kit) {
        boolean noTwilight = wish.sky() == Wish.SkyKind.DARK || wish.sky() == Wish.SkyKind.MOONLIT;
        int middle = nodes() / 2;
        return noTwilight && wish.bodies().isEmpty() && Blanks.certain(kit,
                new SkyLight(ephemeris, night.site()).at(aim(wish.aim(), middle), at(middle)).total(),
                wish.longest().toMillis() * 1e-3);
    }

    private boolean aimsIntoTerrain(Aim aim) {
        return aim instanceof Aim.Point point && point.direction().altitude()
                .compareTo(night.site().skyline().altitudeAt(point.direction().azimuth())) < 0;
    }

    private List<Interval> ofSky(Wish.SkyKind sky) {
        return switch (sky) {
            case DARK -> trulyDark;
            case MOONLIT -> Interval.intersect(night.darkness(), night.moonUp());
            case DUSK, DAWN, ANY -> night.sunDown();
        };
    }

    /** What it follows and what must record. */
    private static List<Target> targets(Wish wish) {
        Stream<Target> followed = wish.aim() instanceof Aim.Follow follow ? Stream.of(follow.target()) : Stream.of();
        return Stream.concat(followed, wish.bodies().stream()).distinct().toList();
    }

    private List<Interval> clear(Target target) {
        return where(node -> clearanceDeg(seen(target, node)));
    }

    private double clearanceDeg(Direction direction) {
        return direction.altitude().minus(night.site().skyline().altitudeAt(direction.azimuth())).degrees();
    }

    /** When each further limit of a wish holds. */
    private List<List<Interval>> limits(Wish wish, Camera camera) {
        List<List<Interval>> limits = new ArrayList<>();
        wish.limits().time().ifPresent(time -> limits.add(byTheClock(time)));
        if (!wish.limits().moonAltitudeDeg().any()) {
            limits.add(where(node -> wish.limits().moonAltitudeDeg().margin(seen(Body.MOON, node).altitude().degrees())));
        }
        wish.limits().moonSide().ifPresent(side -> limits.add(where(node -> side.marginDeg(
                seen(Body.MOON, node).azimuth().minus(aim(wish.aim(), node).azimuth()).degrees()))));
        if (!(wish.aim() instanceof Aim.Follow) && wish.records() instanceof Wish.Records.One one) {
            limits.add(where(node -> -Conditions.outsideDeg(new Framing(aim(wish.aim(), node), wish.aim().roll(), camera),
                    seen(one.body(), node))));
        }
        return limits;
    }

    private Direction seen(Target target, int node) {
        Direction[] known = seen.computeIfAbsent(target, unknown -> new Direction[nodes()]);
        if (known[node] == null) {
            known[node] = ephemeris.position(target, night.site(), at(node)).apparentDirection();
        }
        return known[node];
    }

    private Direction aim(Aim aim, int node) {
        double latitudeDeg = night.site().latitude().degrees();
        return aim instanceof Aim.Follow follow ? seen(follow.target(), node) : aim instanceof Aim.Point point
                ? point.direction() : Direction.ofDegrees(latitudeDeg < 0 ? 180 : 0, Math.abs(latitudeDeg));
    }

    private int nodes() {
        return (int) (night.span().lasts().toSeconds() / STEP_S) + 2;
    }

    private Instant at(int node) {
        return night.span().start().plusSeconds(node * STEP_S);
    }

    /** When a margin is not negative while the Sun is down. */
    private List<Interval> where(IntToDoubleFunction margin) {
        List<Interval> where = new ArrayList<>();
        for (int node = 0; node + 1 < nodes(); node++) {
            Interval step = new Interval(at(node), at(node + 1));
            if (!Interval.intersect(night.sunDown(), List.of(step)).isEmpty()) {
                Spans.notNegative(step, margin.applyAsDouble(node), margin.applyAsDouble(node + 1))
                        .ifPresent(where::add);
            }
        }
        return Interval.union(where);
    }

    private List<Interval> byTheClock(Limits.TimeOfNight time) {
        List<Interval> spans = new ArrayList<>();
        LocalDate last = night.span().endExclusive().atZone(night.site().zone()).toLocalDate();
        for (LocalDate date = night.date().minusDays(1); !date.isAfter(last); date = date.plusDays(1)) {
            LocalDate ends = time.to().isAfter(time.from()) ? date : date.plusDays(1);
            Instant from = instant(date.atTime(time.from()));
            Instant to = instant(ends.atTime(time.to()));
            if (from.isBefore(to)) {
                spans.add(new Interval(from, to));
            }
        }
        return Interval.union(spans);
    }

    /** When the clocks show a time first; of a time that they skip, when they do. */
    private Instant instant(LocalDateTime time) {
        ZoneRules clocks = night.site().zone().getRules();
        return clocks.getValidOffsets(time).isEmpty() ? clocks.getTransition(time).getInstant()
                : time.atZone(night.site().zone()).toInstant();
    }

    /** Whether a span has a twilight in it that a picture may open or close in. */
    private boolean holdsTwilight(Wish.SkyKind sky, Interval span) {
        Instant dusk = night.darkness().isEmpty() ? night.middle() : night.darkness().get(0).start();
        Instant dawn = night.darkness().isEmpty() ? night.middle()
                : night.darkness().get(night.darkness().size() - 1).endExclusive();
        return switch (sky) {
            case DUSK -> span.start().isBefore(dusk);
            case DAWN -> span.endExclusive().isAfter(dawn);
            case DARK, MOONLIT, ANY -> true;
        };
    }

    /** Seconds of a span; where the trail must be level, those about the target's highest place in it. */
    private double usableS(Aim aim, Interval span) {
        if (!(aim instanceof Aim.Follow follow) || follow.levelWithin().isEmpty()) {
            return span.seconds();
        }
        Instant top = IntStream.range(0, nodes()).filter(node -> span.contains(at(node))).boxed()
                .max(Comparator.comparing(node -> seen(follow.target(), node).altitude())).map(this::at).orElse(span.start());
        return 2e-3 * Math.min(Duration.between(span.start(), top).toMillis(),
                Duration.between(top, span.endExclusive()).toMillis());
    }
}
