package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Puts nights and sites in order by how many of a trip's wishes they have the time for, counted by worth; without wishes,
 * and of equals, by what their skies are good for.
 *
 * <p>The sky counts hours of true darkness, Sun below -18° and moonlight adding less than 0.2 mag at the zenith, whole,
 * moonlit hours a quarter, and a quarter of an hour for each bright planet that stands high while it is dark; common
 * practice, no source.
 */
public final class NightRanking {

    private static final double MOONLIT_SHARE = 0.25;
    private static final double PLANET_HOURS = 0.25;
    private static final double PLANET_HIGH_DEG = 20;
    private static final List<Body> PLANETS = List.of(Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN);
    private static final double FULL_HOURS = 12;
    private static final double DARK_MOONLIGHT_SHARE = Math.pow(10, 0.4 * 0.2) - 1;
    private static final Duration STEP = Duration.ofMinutes(20);
    private static final double SECONDS_AN_HOUR = 3600;

    private final Ephemeris ephemeris;
    private final Optional<Trip> trip;
    private final Progress progress;

    /** A night's rank and what orders it among those of the same score. */
    private record Ranked(NightRank rank, double skyScore) {
    }

    /**
     * Ranks with the positions of an ephemeris, which several threads may ask at once.
     *
     * @param trip     whose wishes count, if any
     * @param progress told of every night done
     */
    public NightRanking(Ephemeris ephemeris, Optional<Trip> trip, Progress progress) {
        this.ephemeris = ephemeris;
        this.trip = trip.filter(asked -> !asked.wishes().isEmpty());
        this.progress = progress;
    }

    /** The same by their skies alone. */
    public NightRanking(Ephemeris ephemeris) {
        this(ephemeris, Optional.empty(), Progress.NONE);
    }

    /** Every date at every site, the best first; equals by date, then by the sites' order. */
    public List<NightRank> nights(List<Site> sites, List<LocalDate> dates) {
        Runnable done = progress.each(dates.size() * sites.size());
        return IntStream.range(0, dates.size() * sites.size()).parallel().mapToObj(number -> {
            Ranked ranked = ranked(sites.get(number % sites.size()), dates.get(number / sites.size()));
            done.run();
            return ranked;
        }).sorted(Comparator.comparingDouble((Ranked ranked) -> -ranked.rank.score())
                .thenComparingDouble(ranked -> -ranked.skyScore)).map(Ranked::rank).toList();
    }

    /**
     * Every run of {@code length} consecutive evenings at one site among nights ranked, the best first; none when the
     * evenings are fewer.
     */
    public static List<Stay> stays(List<NightRank> ranks, int length) {
        Map<Site, List<NightRank>> bySite = ranks.stream().sorted(Comparator.comparing(rank -> rank.night().date()))
                .collect(Collectors.groupingBy(rank -> rank.night().site(), LinkedHashMap::new, Collectors.toList()));
        List<Stay> stays = new ArrayList<>();
        for (List<NightRank> inTime : bySite.values()) {
            for (int first = 0; first + length <= inTime.size(); first++) {
                List<NightRank> run = inTime.subList(first, first + length);
                stays.add(new Stay(run, run.stream().mapToDouble(NightRank::score).average().orElseThrow()));
            }
        }
        stays.sort(Comparator.comparingDouble(Stay::score).reversed()
                .thenComparing(stay -> stay.nights().get(0).night().date()));
        return List.copyOf(stays);
    }

    private Ranked ranked(Site site, LocalDate date) {
        Night night = Night.of(ephemeris, site, date);
        List<Interval> trulyDark = trulyDark(night);
        List<Body> high = night.darkness().isEmpty() ? List.of() : high(night);
        double darkHours = hours(night.darkness());
        double trueHours = hours(trulyDark);
        double skyScore = Math.min(1, (trueHours + MOONLIT_SHARE * (darkHours - trueHours) + PLANET_HOURS * high.size())
                / FULL_HOURS);
        Appearance moon = ephemeris.appearance(Body.MOON, site, night.middle());
        NightRank bySky = new NightRank(night, darkHours, hours(night.moonlessDarkness()), moon, List.of(), skyScore,
                reason(night, trueHours, moon, high));
        return new Ranked(trip.map(asked -> byWishes(bySky, asked, trulyDark)).orElse(bySky), skyScore);
    }

    private NightRank byWishes(NightRank bySky, Trip asked, List<Interval> trulyDark) {
        NightDemand demand = new NightDemand(ephemeris, bySky.night(), trulyDark, 100 * bySky.moon().illuminatedFraction());
        List<Wish> wishes = asked.wishes();
        List<Wish> served = new ArrayList<>();
        double worth = 0;
        for (Wish wish : wishes) {
            double share = demand.share(wish, asked.camera());
            worth += share * wish.worth();
            if (share == 1) {
                served.add(wish);
            }
        }
        return new NightRank(bySky.night(), bySky.darkHours(), bySky.moonlessDarkHours(), bySky.moon(), served,
                worth / wishes.stream().mapToDouble(Wish::worth).sum(),
                served.size() + " of " + wishes.size() + " wishes; " + bySky.reason());
    }

    /** When it is dark and the Moon adds hardly any light. */
    private List<Interval> trulyDark(Night night) {
        List<Interval> spans = new ArrayList<>();
        Stream.concat(night.moonlessDarkness().stream(), faintlyMoonlit(night).stream())
                .sorted(Comparator.comparing(Interval::start)).forEach(span -> Spans.add(spans, span));
        return spans;
    }

    /** Darkness with the Moon up but adding hardly any light, in steps. */
    private List<Interval> faintlyMoonlit(Night night) {
        SkyLight light = new SkyLight(ephemeris, night.site());
        List<Interval> faint = new ArrayList<>();
        for (Interval span : Interval.intersect(night.darkness(), night.moonUp())) {
            long steps = Math.max(1, Math.round(span.seconds() / STEP.toSeconds()));
            Instant from = span.start();
            for (long step = 1; step <= steps; step++) {
                Instant to = step == steps ? span.endExclusive() : span.start().plus(span.lasts().multipliedBy(step).dividedBy(steps));
                Interval part = new Interval(from, to);
                if (faint(light, part.middle())) {
                    faint.add(part);
                }
                from = to;
            }
        }
        return faint;
    }

    private static boolean faint(SkyLight light, Instant at) {
        SkyLight.Sample zenith = light.at(Direction.ZENITH, at);
        return zenith.moon().cdM2() < DARK_MOONLIGHT_SHARE * zenith.dark().cdM2();
    }

    /** The bright planets that stand high at the start, in the middle or at the end of darkness. */
    private List<Body> high(Night night) {
        Instant from = night.darkness().get(0).start();
        Instant to = night.darkness().get(night.darkness().size() - 1).endExclusive();
        List<Instant> looks = List.of(from, new Interval(from, to).middle(), to.minusMillis(1));
        return PLANETS.stream().filter(planet -> looks.stream().anyMatch(at ->
                ephemeris.position(planet, night.site(), at).airlessAltitude().degrees() >= PLANET_HIGH_DEG)).toList();
    }

    private static double hours(List<Interval> spans) {
        return spans.stream().mapToDouble(Interval::seconds).sum() / SECONDS_AN_HOUR;
    }

    private static String reason(Night night, double trueHours, Appearance moon, List<Body> high) {
        if (night.sunDown().isEmpty()) {
            return "polar day: the Sun does not set";
        }
        if (night.darkness().isEmpty()) {
            return "no darkness: the Sun does not go below -18°";
        }
        String lit = String.format(Locale.ROOT, "Moon %.0f %% lit", 100 * moon.illuminatedFraction());
        double moonlitHours = hours(night.darkness()) - trueHours;
        return String.format(Locale.ROOT, "%.1f h truly dark", trueHours)
                + (moonlitHours < 0.05 ? ", " : String.format(Locale.ROOT, ", %.1f h moonlit, ", moonlitHours)) + lit
                + (high.isEmpty() ? "" : "; " + high.stream().map(Body::label).collect(Collectors.joining(", ")) + " high");
    }
}
