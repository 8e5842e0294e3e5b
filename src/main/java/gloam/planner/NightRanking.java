package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
    private static final double SECONDS_AN_HOUR = 3600;
    /** So many nights are planned before it is seen again which others are worth it. */
    private static final int TOGETHER = 8;

    private final Ephemeris ephemeris;
    private final Optional<Trip> trip;
    private final Optional<NightAlone> alone;
    private final Progress progress;
    private SkyTaste taste = SkyTaste.DARK;

    /**
     * A night's rank and, for the order among those of the same score, the hours its sky counts for.
     *
     * @param gain  what its wishes gain as far as they are worth, 0 without any
     * @param place its place among those asked for
     */
    private record Ranked(NightRank rank, long gain, double skyHours, int place)
            implements Comparable<Ranked> {

        private static final Comparator<Ranked> BY_SKY =
                Comparator.comparingDouble((Ranked ranked) ->
                        -ranked.rank.night().site().darkSkyMagArcsec2())
                        .thenComparingDouble(ranked -> -ranked.skyHours)
                        .thenComparingInt(ranked -> ranked.place);
        private static final Comparator<Ranked> BEST_FIRST =
                Comparator.comparingDouble((Ranked ranked) -> -ranked.rank.score()).thenComparing(BY_SKY);

        @Override
        public int compareTo(Ranked other) {
            return BEST_FIRST.compare(this, other);
        }
    }

    /** A night that is not planned yet, and by wish what it can gain at most. */
    private record Promising(SiteEvening evening, int place, long[] most) {

        /** Those that can gain most first; equals far apart, so that unlike ones tell early what is good. */
        static final Comparator<Promising> MOST_FIRST =
                Comparator.comparingLong((Promising night) -> -night.gain())
                        .thenComparing(night -> Integer.reverse(night.place), Integer::compareUnsigned);

        long gain() {
            return Arrays.stream(most).sum();
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
        this.trip = trip.filter(asked -> !asked.wishes().isEmpty()).map(Trip::withSheetsEnough);
        this.alone = this.trip.map(asked -> new NightAlone(asked, ephemeris, stars));
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
        TrulyDark trulyDark = new TrulyDark(ephemeris, sites);
        Runnable done = progress.each(evenings.size());
        return IntStream.range(0, evenings.size()).parallel().mapToObj(place -> {
            SiteEvening evening = evenings.get(place);
            Night night = Night.of(ephemeris, evening.site(), evening.date());
            Ranked bySky = bySky(night, place, trulyDark);
            Ranked ranked = alone.map(plan -> byWishes(bySky, plan.best(night))).orElse(bySky);
            done.run();
            return ranked;
        }).sorted().map(Ranked::rank).toList();
    }

    /**
     * The same, cut after the first so many. Nights are planned in the order of what their skies could be
     * worth at most, until no other can be among the best.
     */
    public List<NightRank> best(List<Site> sites, List<LocalDate> dates, int many) {
        List<SiteEvening> evenings = SiteEvening.all(dates, sites);
        if (trip.isEmpty() || many >= evenings.size()) {
            return nights(sites, dates).stream().limit(many).toList();
        }
        Runnable done = progress.each(2 * evenings.size());
        List<Promising> promising = IntStream.range(0, evenings.size()).parallel().mapToObj(place -> {
            SiteEvening evening = evenings.get(place);
            done.run();
            return new Promising(evening, place,
                    alone.get().most(Night.of(ephemeris, evening.site(), evening.date())));
        }).sorted(Promising.MOST_FIRST).toList();
        TrulyDark trulyDark = new TrulyDark(ephemeris, sites);
        List<Ranked> best = List.of();
        for (int first = 0; first < promising.size(); first += TOGETHER) {
            Optional<Ranked> last = best.stream().skip(many - 1L).findFirst();
            Stream<Ranked> more = promising.subList(first, Math.min(promising.size(), first + TOGETHER))
                    .parallelStream().flatMap(night -> {
                        done.run();
                        return planned(night, last, trulyDark).stream();
                    });
            best = Stream.concat(best.stream(), more).sorted().limit(many).toList();
        }
        return best.stream().map(Ranked::rank).toList();
    }

    private Optional<Ranked> planned(Promising promising, Optional<Ranked> before, TrulyDark trulyDark) {
        long leastGain = before.map(Ranked::gain).orElse(0L);
        if (promising.gain() < leastGain) {
            return Optional.empty();
        }
        Night night = Night.of(ephemeris, promising.evening.site(), promising.evening.date());
        Supplier<Ranked> bySky = () -> bySky(night, promising.place, trulyDark);
        return alone.get().best(night, promising.most, new NightAlone.Wanted(leastGain, () -> before.isEmpty()
                || Ranked.BY_SKY.compare(bySky.get(), before.get()) < 0))
                .map(best -> byWishes(bySky.get(), best));
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

    private Ranked bySky(Night night, int place, TrulyDark trulyDark) {
        List<Body> high = night.darkness().isEmpty() ? List.of() : high(night);
        double darkHours = hours(night.darkness());
        double trueHours = hours(trulyDark.of(night));
        double skyHours = taste.hours(darkHours, trueHours, high.size() / (double) PLANETS.size());
        Appearance moon = ephemeris.appearance(Body.MOON, night.site(), night.middle());
        return new Ranked(new NightRank(night, darkHours, hours(night.moonlessDarkness()), trueHours, moon,
                high, 0, List.of(), Math.min(1, skyHours / FULL_HOURS)), 0, skyHours, place);
    }

    private Ranked byWishes(Ranked ranked, Timetable.Night best) {
        List<Wish> wishes = trip.get().wishes();
        List<Wish> served = best.exposed().stream().map(Timetable.Exposed::wish).distinct().sorted()
                .map(wishes::get).toList();
        NightRank bySky = ranked.rank;
        return new Ranked(new NightRank(bySky.night(), bySky.darkHours(), bySky.moonlessDarkHours(),
                bySky.trulyDarkHours(), bySky.moon(), bySky.high(), wishes.size(), served,
                Gain.worth(best.gained()) / allWorth()), Gain.ofWorth(best.gained()), ranked.skyHours,
                ranked.place);
    }

    private double allWorth() {
        return trip.get().wishes().stream().mapToDouble(wish -> wish.worth() * wish.repeat()).sum();
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
