package gloam.bench;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.units.Angle;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.shredzone.commons.suncalc.MoonIllumination;
import org.shredzone.commons.suncalc.MoonTimes;
import org.shredzone.commons.suncalc.SunTimes;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

/**
 * A year of nights with every event, beside what a general-purpose library of minute accuracy takes for rise,
 * set, three twilights, Moon rise and set and the Moon's phase; another place and another year each time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class YearOfNights {

    private static final int DAYS = 365;
    private static final int SITES = 50;
    private static final int FIRST_YEAR = 2001;
    private static final int YEARS = 57;
    private static final List<Twilight> TWILIGHTS =
            List.of(Twilight.VISUAL, Twilight.CIVIL, Twilight.NAUTICAL, Twilight.ASTRONOMICAL);

    private final Ephemeris ephemeris = OrekitEphemeris.builtIn();
    private int turn;

    /** Gloam, one site, one thread. */
    @Benchmark
    public List<Night> gloam() {
        turn++;
        return year(site(turn), date(turn));
    }

    /** The library, one place, one thread. */
    @Benchmark
    public void suncalc(Blackhole hole) {
        turn++;
        Site site = site(turn);
        double[] place = {site.latitude().degrees(), site.longitude().degrees()};
        for (int day = 0; day < DAYS; day++) {
            ZonedDateTime noon = date(turn).plusDays(day).atTime(12, 0).atZone(ZoneOffset.UTC);
            for (Twilight twilight : TWILIGHTS) {
                hole.consume(SunTimes.compute().on(noon).at(place).oneDay().twilight(twilight).execute());
            }
            hole.consume(MoonTimes.compute().on(noon).at(place).oneDay().execute());
            hole.consume(MoonIllumination.compute().on(noon).execute());
        }
    }

    /** Gloam, fifty sites, one thread. */
    @Benchmark
    public long fiftySitesOneCore() {
        turn++;
        return fiftySites(IntStream.range(0, SITES));
    }

    /** Gloam, fifty sites, every core. */
    @Benchmark
    public long fiftySitesEveryCore() {
        turn++;
        return fiftySites(IntStream.range(0, SITES).parallel());
    }

    private long fiftySites(IntStream numbers) {
        return numbers.mapToLong(number -> year(site(SITES * turn + number), date(turn)).stream()
                .mapToLong(night -> night.events().size()).sum()).sum();
    }

    private List<Night> year(Site site, LocalDate first) {
        return Night.range(ephemeris, site, first, first.plusDays(DAYS - 1));
    }

    /** From 60° south to 60° north, all around: never the same twice in a run. */
    private static Site site(int number) {
        double latitudeDeg = number * 37.31 % 120 - 60;
        double longitudeDeg = number * 73.17 % 360 - 180;
        return new Site("bench", Angle.ofDegrees(latitudeDeg), Angle.ofDegrees(longitudeDeg), 100,
                ZoneOffset.UTC, 21.6, 0.2, Skyline.FLAT);
    }

    private static LocalDate date(int number) {
        return LocalDate.of(FIRST_YEAR + number % YEARS, 1 + number % 12, 1 + number % 28);
    }
}
