package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.light.SkyLight;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts nights and sites in order by how many of a trip's wishes they have the time for, counted by worth;
 * without wishes, and of equals, by what their skies are good for.
 *
 * <p>Of the sky count the hours that {@link SkyTaste} says; it is truly dark with the Sun below -18° and
 * moonlight adding less than 0.2 mag at the zenith; common practice, no source.
 */
public final class NightRanking {

    private static final double PLANET_HIGH_SINE = Math.sin(Math.toRadians(20));
    private static final List<Body> PLANETS = List.of(Body.VENUS, Body.MARS, Body.JUPITER, Body.SATURN);
    private static final double FULL_HOURS = 12;
    private static final double STEP_S = 1200;
    private static final double SECONDS_AN_HOUR = 3600;

    private final Ephemeris ephemeris;
    private final StarField stars;
    private final Optional<Trip> trip;
    private final List<List<Equipment>> equipment;
    private final Progress progress;
    private SkyTaste taste = SkyTaste.DARK;

    /** A night's rank and, for the order among those of the same score, the hours its sky counts for. */
    private record Ranked(NightRank rank, double skyHours) implements Comparable<Ranked> {

        @Override
        public int compareTo(Ranked other) {
            int byScore = Double.compare(other.rank.score(), rank.score());
            int byDark = Double.compare(other.rank.night().site().darkSkyMagArcsec2(),
                    rank.night().site().darkSkyMagArcsec2());
            return byScore != 0 ? byScore : byDark != 0 ? byDark : Double.compare(other.skyHours, skyHours);
        }
    }

    /**
     * Ranks with the positions of an ephemeris, which several threads may ask at once.
     *
     * @param trip     whose wishes count, if any
     * @param progress told of every night done
     */
    public NightRanking(Ephemeris ephemeris, StarCatalogue stars, Optional<Trip> trip, Progress progress) {
        this(ephemeris, StarField.of(trip.isPresent() ? stars.stars() : List.of()), trip, progress);
    }

    /** The same by their skies alone. */
    public NightRanking(Ephemeris ephemeris) {
        this(ephemeris, StarField.of(List.of()), Optional.empty(), Progress.NONE);
    }

    /** The same with any stars. */
    NightRanking(Ephemeris ephemeris, StarField stars, Optional<Trip> trip, Progress progress) {
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.trip = trip.filter(asked -> !asked.wishes().isEmpty()).map(Trip::withSheetsEnough);
        this.equipment = this.trip.map(Equipment::all).orElse(List.of());
        this.progress = progress;
    }

    /** The same for a sky wanted for something else than darkness where no wishes count. */
    public NightRanking wanting(SkyTaste wanted) {
        taste = wanted;
        return this;
    }

    /** Every date at every site that has it, the best first; equals by date, then by the sites' order. */
    public List<NightRank> nights(List<Site> sites, List<LocalDate> dates) {
        List<SiteEvening> evenings = SiteEvening.all(dates, sites);
        Runnable done = progress.each(evenings.size());
        return evenings.parallelStream().map(evening -> {
            Ranked ranked = ranked(evening.site(), evening.date());
            done.run();
            return ranked;
        }).sorted().map(Ranked::rank).toList();
    }

    /**
     * Every run of {@code length} consecutive evenings at one site among nights ranked, the best first; none
     * when the evenings are fewer.
     */
    public static List<Stay> stays(List<NightRank> ranks, int length) {
        Map<Site, List<NightRank>> bySite = ranks.stream()
                .sorted(Comparator.comparing(rank -> rank.night().date()))
                .collect(Collectors.groupingBy(rank -> rank.night().site(), LinkedHashMap::new,
                Collectors.toList()));
        List<Stay> stays = new ArrayList<>();
        for (List<NightRank> inTime : bySite.values()) {
            for (int first = 0; first + length <= inTime.size(); first++) {
                List<NightRank> run = inTime.subList(first, first + length);
                if (gap(run)) {
                    continue;
                }
                stays.add(new Stay(run, run.stream().mapToDouble(NightRank::score).average().orElseThrow()));
            }
        }
        stays.sort(Comparator.comparingDouble(Stay::score).reversed()
                .thenComparing(stay -> stay.nights().get(0).night().date()));
        return List.copyOf(stays);
    }

    /** Whether evenings of their site lie between nights in order of date that are not among them. */
    private static boolean gap(List<NightRank> run) {
        Night last = run.get(run.size() - 1).night();
        return Night.evenings(List.of(last.site()), run.get(0).night().date(), last.date()).size()
                > run.size();
    }

    private Ranked ranked(Site site, LocalDate date) {
        Night night = Night.of(ephemeris, site, date);
        List<Interval> trulyDark = trulyDark(night);
        List<Body> high = night.darkness().isEmpty() ? List.of() : high(night);
        double darkHours = hours(night.darkness());
        double trueHours = hours(trulyDark);
        double skyHours = taste.hours(darkHours, trueHours, high.size() / (double) PLANETS.size());
        Appearance moon = ephemeris.appearance(Body.MOON, site, night.middle());
        NightRank bySky = new NightRank(night, darkHours, hours(night.moonlessDarkness()), trueHours, moon,
                high, 0, List.of(), Math.min(1, skyHours / FULL_HOURS));
        return new Ranked(trip.isPresent() ? byWishes(bySky, trip.get()) : bySky, skyHours);
    }

    private NightRank byWishes(NightRank bySky, Trip asked) {
        List<Wish> wishes = asked.wishes();
        Timetable.Night best = best(asked, bySky.night(), new Shortfalls());
        List<Wish> served = best.exposed().stream().map(Timetable.Exposed::wish).distinct().sorted()
                .map(wishes::get).toList();
        double worth = best.exposed().stream().mapToDouble(Timetable.Exposed::worth).sum();
        return new NightRank(bySky.night(), bySky.darkHours(), bySky.moonlessDarkHours(),
                bySky.trulyDarkHours(), bySky.moon(), bySky.high(), wishes.size(), served,
                worth / wishes.stream().mapToDouble(wish -> wish.worth() * wish.repeat()).sum());
    }

    private Timetable.Night best(Trip asked, Night night, Shortfalls shortfalls) {
        SiteNight there = new SiteNight(asked, equipment, ephemeris, stars, night, shortfalls);
        Timetable.Night best = Timetable.of(asked).choose(List.of(List.of(there.offers().all()))).nights()
                .get(0);
        return there.fallShort(best.exposed()) ? best(asked, night, shortfalls) : best;
    }

    /** When it is dark and the Moon adds hardly any light. */
    private List<Interval> trulyDark(Night night) {
        List<Interval> parts = new ArrayList<>(night.moonlessDarkness());
        parts.addAll(faintlyMoonlit(night));
        return Interval.union(parts);
    }

    /**
     * Darkness with the Moon up but adding hardly any light, in steps from both ends: in between the Moon
     * climbs and sinks once, and its light with it.
     */
    private List<Interval> faintlyMoonlit(Night night) {
        SkyLight light = new SkyLight(ephemeris, night.site());
        SkyLight.Patch zenith = light.patch(Direction.ZENITH);
        List<Interval> faint = new ArrayList<>();
        for (Interval span : Interval.intersect(night.darkness(), night.moonUp())) {
            int steps = (int) Math.max(1, Math.round(span.seconds() / STEP_S));
            long stepNanos = span.lasts().toNanos() / steps;
            int first = 0;
            while (first < steps && faint(light, zenith,
                    span.start().plusNanos(stepNanos * first + stepNanos / 2))) {
                first++;
            }
            int last = steps;
            while (last > first && faint(light, zenith,
                    span.start().plusNanos(stepNanos * last - stepNanos / 2))) {
                last--;
            }
            if (first == steps) {
                faint.add(span);
                continue;
            }
            if (first > 0) {
                faint.add(new Interval(span.start(), span.start().plusNanos(stepNanos * first)));
            }
            if (last < steps) {
                faint.add(new Interval(span.start().plusNanos(stepNanos * last), span.endExclusive()));
            }
        }
        return faint;
    }

    private static boolean faint(SkyLight light, SkyLight.Patch zenith, Instant at) {
        return light.moment(at).at(zenith).moonlightMag() < SkyLight.DARK_MOONLIGHT_MAG;
    }

    /** The bright planets that stand high at the start, in the middle or at the end of darkness. */
    private List<Body> high(Night night) {
        Interval dark = Interval.span(night.darkness());
        Set<Body> high = EnumSet.noneOf(Body.class);
        for (Instant at : List.of(dark.start(), dark.middle(), dark.endExclusive().minusMillis(1))) {
            for (Body planet : PLANETS) {
                if (!high.contains(planet) && ephemeris.sightline(planet, night.site(), at)
                        .up() >= PLANET_HIGH_SINE) {
                    high.add(planet);
                }
            }
        }
        return List.copyOf(high);
    }

    private static double hours(List<Interval> spans) {
        double seconds = 0;
        for (Interval span : spans) {
            seconds += span.seconds();
        }
        return seconds / SECONDS_AN_HOUR;
    }
}
