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
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sets the wishes of a trip against its nights and sites: the same trip always gives the same plan. */
public final class Planner {

    private static final double PREVIEW_AGREES_MAG = 0.5;
    /** Fewer trails make hardly a picture of the stars; common practice, no source. */
    private static final int FEW_STARS = 5;

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
        Function<Night, SiteNight> met = met(trip, Equipment.all(trip));
        Settled settled = settled(trip, met, evenings(trip, met));
        List<List<EveningOffers>> evenings = settled.evenings;
        Timetable.Choice choice = settled.choice;
        Refusals refusals = new Refusals(trip, met, evenings, choice.nights());
        int[] firstSheet = new int[evenings.size()];
        int sheet = trip.spent() + 1;
        for (int night = 0; night < firstSheet.length; night++) {
            firstSheet[night] = sheet;
            sheet += choice.nights().get(night).exposed().size();
        }
        List<Plan.NightPlan> nights = IntStream.range(0, evenings.size()).parallel().mapToObj(night -> {
            Timetable.Night chosen = choice.nights().get(night);
            int site = chosen.exposed().isEmpty() ? mostPromising(evenings.get(night)) : chosen.site();
            Night there = evenings.get(night).get(site).night();
            Outing outing = settled.outings.get(night).orElseGet(() -> Outing.none(met.apply(there)));
            SiteNight spent = outing.there;
            return new Plan.NightPlan(there, windows(trip, outing, firstSheet[night]),
                    refusals.of(night, site, spent), Note.of(trip, there),
                    trip.wishes().isEmpty() ? List.of() : spent.sky().course(trip.forecast()));
        }).toList();
        return new Plan(trip, nights, cautions(trip, choice, nights),
                new LeftOver(trip, evenings, choice.nights()).alternatives(met));
    }

    private Function<Night, SiteNight> met(Trip trip, List<List<Equipment>> equipment) {
        Shortfalls shortfalls = new Shortfalls();
        return night -> new SiteNight(trip, equipment, ephemeris, stars, night, shortfalls);
    }

    /**
     * A timetable in which no exposure records fewer stars than must.
     *
     * @param evenings what it was chosen from
     * @param outings  those of each night, where anything is exposed
     */
    private record Settled(List<List<EveningOffers>> evenings, Timetable.Choice choice,
            List<Optional<Outing>> outings) {
    }

    /** A night at a site, and the exposures made there. */
    private record Outing(SiteNight there, List<Made> made) {

        static Outing none(SiteNight there) {
            return new Outing(there, List.of());
        }
    }

    /** Chooses, counts the stars of what is chosen, and where they are too few chooses again without that. */
    private static Settled settled(Trip trip, Function<Night, SiteNight> met,
            List<List<EveningOffers>> evenings) {
        Timetable.Choice choice = choice(trip, evenings);
        List<Optional<Outing>> outings = IntStream.range(0, evenings.size()).parallel().mapToObj(night ->
                Optional.of(choice.nights().get(night)).filter(chosen -> !chosen.exposed().isEmpty())
                .map(chosen -> {
                    SiteNight there = met.apply(evenings.get(night).get(chosen.site()).night());
                    return new Outing(there, there.made(chosen.exposed()));
                })).toList();
        List<Boolean> tooFew = IntStream.range(0, evenings.size()).parallel().mapToObj(night ->
                outings.get(night).map(outing -> outing.there.fallShort(outing.made)).orElse(false)).toList();
        if (!tooFew.contains(true)) {
            return new Settled(evenings, choice, outings);
        }
        return settled(trip, met, IntStream.range(0, evenings.size()).parallel()
                .mapToObj(night -> IntStream.range(0, evenings.get(night).size()).mapToObj(site ->
                tooFew.get(night) && site == choice.nights().get(night).site()
                ? met.apply(evenings.get(night).get(site).night()).offers() : evenings.get(night).get(site))
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

    private List<Plan.Window> windows(Trip trip, Outing outing, int firstSheet) {
        List<Made> made = outing.made;
        SiteNight night = outing.there;
        return IntStream.range(0, made.size()).mapToObj(number -> {
            Timetable.Exposed one = made.get(number).chosen();
            Wish wish = trip.wishes().get(one.wish());
            ExposureChoice exposure = made.get(number).exposure();
            return new ShotFigures(wish, night.with(one), night.sky(), ephemeris, stars).window(
                    firstSheet + number, made.get(number), night.cloud(exposure), one.worth(),
                    night.count(wish, night.with(one), exposure));
        }).toList();
    }

    private static List<Caution> cautions(Trip trip, Timetable.Choice choice, List<Plan.NightPlan> nights) {
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
        nights.stream().flatMap(night -> night.windows().stream())
                .filter(window -> window.wish().ofStarsUnasked()
                && window.stars().recorded() + window.stars().fainter() < FEW_STARS)
                .map(window -> new Caution.FewStars(window.wish().name(), window.stars().recorded(),
                        FEW_STARS))
                .distinct().forEach(cautions::add);
        return cautions;
    }
}
