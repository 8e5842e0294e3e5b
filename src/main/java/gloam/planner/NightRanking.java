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
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Puts nights and sites in order by what their skies are good for, whatever the wishes.
 *
 * <p>Counts hours of true darkness, Sun below -18° and moonlight adding less than 0.2 mag at the zenith, whole, and
 * moonlit hours a quarter; common practice, no source.
 */
public final class NightRanking {

    private static final double MOONLIT_SHARE = 0.25;
    private static final double FULL_HOURS = 12;
    private static final double DARK_MOONLIGHT_SHARE = Math.pow(10, 0.4 * 0.2) - 1;
    private static final Duration STEP = Duration.ofMinutes(20);
    private static final double SECONDS_AN_HOUR = 3600;

    private final Ephemeris ephemeris;

    /** Ranks with the positions of an ephemeris, which several threads may ask at once. */
    public NightRanking(Ephemeris ephemeris) {
        this.ephemeris = ephemeris;
    }

    /** Every date at every site, the best first; equals by date, then by the sites' order. */
    public List<NightRank> nights(List<Site> sites, List<LocalDate> dates) {
        return IntStream.range(0, dates.size() * sites.size()).parallel()
                .mapToObj(number -> rank(sites.get(number % sites.size()), dates.get(number / sites.size())))
                .sorted(Comparator.comparingDouble(rank -> -rank.score())).toList();
    }

    /**
     * Every run of {@code length} consecutive dates at every site, the best first; none when the dates are fewer.
     *
     * @param dates consecutive evenings
     */
    public List<Stay> stays(List<Site> sites, List<LocalDate> dates, int length) {
        List<Stay> stays = new ArrayList<>();
        for (Site site : sites) {
            List<NightRank> ranks = dates.parallelStream().map(date -> rank(site, date)).toList();
            for (int first = 0; first + length <= ranks.size(); first++) {
                List<NightRank> run = ranks.subList(first, first + length);
                stays.add(new Stay(run, run.stream().mapToDouble(NightRank::score).average().orElseThrow()));
            }
        }
        stays.sort(Comparator.comparingDouble(Stay::score).reversed()
                .thenComparing(stay -> stay.nights().get(0).night().date()));
        return List.copyOf(stays);
    }

    private NightRank rank(Site site, LocalDate date) {
        Night night = Night.of(ephemeris, site, date);
        double darkHours = hours(night.darkness());
        double moonlessHours = hours(night.moonlessDarkness());
        double trueHours = moonlessHours + faintMoonHours(night);
        double score = Math.min(1, (trueHours + MOONLIT_SHARE * (darkHours - trueHours)) / FULL_HOURS);
        Appearance moon = ephemeris.appearance(Body.MOON, site, night.middle());
        return new NightRank(night, darkHours, moonlessHours, moon, score, reason(night, darkHours, trueHours, moon));
    }

    /** Hours of darkness with the Moon up but adding hardly any light. */
    private double faintMoonHours(Night night) {
        SkyLight light = new SkyLight(ephemeris, night.site());
        double hours = 0;
        for (Interval span : Interval.intersect(night.darkness(), night.moonUp())) {
            long steps = Math.max(1, Math.round(span.seconds() / STEP.toSeconds()));
            Duration step = span.lasts().dividedBy(steps);
            hours += IntStream.range(0, (int) steps)
                    .mapToObj(i -> span.start().plus(step.multipliedBy(i)).plus(step.dividedBy(2)))
                    .filter(at -> faint(light, at)).count() * step.toMillis() / 1000.0 / SECONDS_AN_HOUR;
        }
        return hours;
    }

    private static boolean faint(SkyLight light, Instant at) {
        SkyLight.Sample zenith = light.at(Direction.ZENITH, at);
        return zenith.moon().cdM2() < DARK_MOONLIGHT_SHARE * zenith.dark().cdM2();
    }

    private static double hours(List<Interval> spans) {
        return spans.stream().mapToDouble(Interval::seconds).sum() / SECONDS_AN_HOUR;
    }

    private static String reason(Night night, double darkHours, double trueHours, Appearance moon) {
        if (night.sunDown().isEmpty()) {
            return "polar day: the Sun does not set";
        }
        if (darkHours == 0) {
            return "no darkness: the Sun does not go below -18°";
        }
        String lit = String.format(Locale.ROOT, "Moon %.0f %% lit", 100 * moon.illuminatedFraction());
        double moonlitHours = darkHours - trueHours;
        return String.format(Locale.ROOT, "%.1f h truly dark", trueHours)
                + (moonlitHours < 0.05 ? ", " : String.format(Locale.ROOT, ", %.1f h moonlit, ", moonlitHours)) + lit;
    }
}
