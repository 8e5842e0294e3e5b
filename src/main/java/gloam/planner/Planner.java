package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sets the wishes of a trip against its nights and sites: the same trip always gives the same plan. */
public final class Planner {

    private static final double PREVIEW_AGREES_MAG = 0.5;

    private final Ephemeris ephemeris;
    private final StarField stars;
    private final Progress progress;

    /**
     * Plans with the positions of an ephemeris, which several threads may ask at once, and the stars of a
     * catalogue.
     */
    public Planner(Ephemeris ephemeris, StarCatalogue stars) {
        this(ephemeris, StarField.of(stars.stars()), Progress.NONE);
    }

    /** The same with any stars. */
    Planner(Ephemeris ephemeris, List<Star> stars) {
        this(ephemeris, StarField.of(stars), Progress.NONE);
    }

    private Planner(Ephemeris ephemeris, StarField stars, Progress progress) {
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.progress = progress;
    }

    /** The same that tells of every night looked at. */
    public Planner watchedBy(Progress told) {
        return new Planner(ephemeris, stars, told);
    }

    /** The timetable of a trip: every night of it, and on each a window or a refusal for every wish. */
    public Plan plan(Trip trip) {
        Settled settled = settled(trip);
        List<List<EveningOffers>> evenings = settled.evenings;
        Timetable.Choice choice = settled.choice;
        Refusals refusals = new Refusals(trip, settled.met, evenings, choice.nights());
        List<Plan.NightPlan> nights = IntStream.range(0, evenings.size()).parallel().mapToObj(night -> {
            Spent spent = settled.spent.get(night);
            return new Plan.NightPlan(spent.at.sky().night(), spent.windows,
                    refusals.of(night, spent.site, spent.at), Note.of(trip, spent.at.sky().night()),
                    trip.wishes().isEmpty() ? List.of() : spent.at.sky().course(trip.forecast()));
        }).toList();
        return new Plan(trip, nights, cautions(trip, choice),
                new LeftOver(trip, evenings, choice.nights()).alternatives(settled.met));
    }

    /** What the timetable of a trip is worth. */
    double worth(Trip trip) {
        return settled(trip).choice.worth();
    }

    /**
     * A night as it is spent.
     *
     * @param site  number of the site
     * @param fallsShort whether a window of it records fewer stars than must, which was not known
     */
    private record Spent(int site, SiteNight at, List<Plan.Window> windows, boolean fallsShort) {
    }

    /** A timetable in which no window records fewer stars than must, and what it was chosen from. */
    private record Settled(Function<Night, SiteNight> met, List<List<EveningOffers>> evenings,
            Timetable.Choice choice, List<Spent> spent) {
    }

    private Settled settled(Trip trip) {
        List<Equipment> equipment = Equipment.all(trip);
        Shortfalls shortfalls = new Shortfalls();
        Function<Night, SiteNight> met =
                night -> new SiteNight(trip, equipment, ephemeris, stars, night, shortfalls);
        return settled(trip, equipment, met, evenings(trip, met));
    }

    /** Chooses, counts the stars of what is chosen, and where they are too few chooses again without that. */
    private Settled settled(Trip trip, List<Equipment> equipment, Function<Night, SiteNight> met,
            List<List<EveningOffers>> evenings) {
        Timetable.Choice choice = choice(trip, evenings);
        int[] firstSheet = new int[evenings.size()];
        int sheet = trip.spent() + 1;
        for (int night = 0; night < firstSheet.length; night++) {
            firstSheet[night] = sheet;
            sheet += choice.nights().get(night).exposed().size();
        }
        List<Spent> spent = IntStream.range(0, evenings.size()).parallel().mapToObj(night -> {
            Timetable.Night chosen = choice.nights().get(night);
            int site = chosen.exposed().isEmpty() ? mostPromising(evenings.get(night)) : chosen.site();
            return spent(trip, equipment, site, met.apply(evenings.get(night).get(site).night()),
                    chosen.exposed(), firstSheet[night]);
        }).toList();
        if (spent.stream().noneMatch(Spent::fallsShort)) {
            return new Settled(met, evenings, choice, spent);
        }
        return settled(trip, equipment, met, IntStream.range(0, evenings.size()).parallel()
                .mapToObj(night -> IntStream.range(0, evenings.get(night).size()).mapToObj(site ->
                spent.get(night).fallsShort && site == spent.get(night).site
                ? met.apply(spent.get(night).at.sky().night()).offers() : evenings.get(night).get(site))
                .toList()).toList());
    }

    private static Timetable.Choice choice(Trip trip, List<List<EveningOffers>> evenings) {
        Timetable timetable = Timetable.of(trip);
        Travel travel = trip.outings().travel();
        Moves moves = Moves.of(travel,
                evenings.stream().map(sites -> sites.stream().map(EveningOffers::night).toList()).toList());
        return (travel.none() ? timetable : timetable.moving(moves))
                .choose(evenings.stream().map(sites -> sites.stream().map(EveningOffers::all).toList())
                .toList());
    }

    private List<List<EveningOffers>> evenings(Trip trip, Function<Night, SiteNight> met) {
        List<SiteEvening> asked = SiteEvening.all(trip.dates(), trip.sites());
        Runnable done = progress.each(asked.size());
        Map<LocalDate, List<EveningOffers>> byDate = asked.parallelStream().map(at -> {
            EveningOffers evening = met.apply(Night.of(ephemeris, at.site(), at.date())).offers();
            done.run();
            return evening;
        }).collect(Collectors.groupingBy(evening -> evening.night().date(), TreeMap::new,
                Collectors.toList()));
        return List.copyOf(byDate.values());
    }

    private static int mostPromising(List<EveningOffers> evenings) {
        return IntStream.range(0, evenings.size()).boxed()
                .max(Comparator.comparingLong((Integer site) -> evenings.get(site).promise())
                        .thenComparing(Comparator.reverseOrder())).orElseThrow();
    }

    private Spent spent(Trip trip, List<Equipment> equipment, int site, SiteNight night,
            List<Timetable.Exposed> exposed, int firstSheet) {
        List<SiteNight.Made> made = night.made(exposed);
        List<Plan.Window> windows = IntStream.range(0, exposed.size()).mapToObj(number -> {
            Timetable.Exposed one = exposed.get(number);
            return new ShotFigures(trip.wishes().get(one.wish()), equipment.get(one.wish()), night.sky(),
                    ephemeris, stars)
                    .window(firstSheet + number, made.get(number), night.cloud(made.get(number).exposure()),
                            one.worth());
        }).toList();
        return new Spent(site, night, windows, night.fallShort(exposed, made, number ->
                windows.get(number).misses().stream().anyMatch(miss -> miss instanceof Miss.Stars)));
    }

    private static List<Caution> cautions(Trip trip, Timetable.Choice choice) {
        List<Caution> cautions = new ArrayList<>();
        if (choice.bound() > choice.worth() * (1 + 1e-9)) {
            cautions.add(new Caution.NotProvenBest(choice.worth() / choice.bound()));
        }
        if (!trip.forecast().forecast()) {
            cautions.add(new Caution.NoForecast(trip.forecast().clearPriorPercent()));
        }
        trip.sites().forEach(site -> trip.preview().sky(site, trip.camera().lens()).ifPresent(sky -> {
            if (trip.preview().sets(site)) {
                cautions.add(new Caution.SkyByPreview(sky.magArcsec2(), site.name()));
            } else if (Math.abs(sky.magArcsec2() - site.darkSkyMagArcsec2()) > PREVIEW_AGREES_MAG) {
                cautions.add(new Caution.PreviewDisagrees(sky.magArcsec2(), site.darkSkyMagArcsec2(),
                        site.name()));
            }
        }));
        return cautions;
    }
}
