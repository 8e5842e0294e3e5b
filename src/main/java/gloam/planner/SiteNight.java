package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.proof.StarCount;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** One night at one site as the wishes of a trip meet it. For one thread at a time. */
final class SiteNight {

    /** An estimate of fewer stars than that part of those wanted is not as far off as that. */
    private static final double FEW_SHARE = 0.5;
    /** Nor is an estimate that leaves so many magnitudes to spare. */
    private static final double SURE_MAG = 1;

    private final Trip trip;
    private final List<List<Equipment>> equipment;
    private final Ephemeris ephemeris;
    private final StarField stars;
    private final NightSky sky;
    private final ClearSky clear;
    private final Shortfalls shortfalls;
    private final Map<ExposureChoice, StarCount> counts = new IdentityHashMap<>();

    /**
     * A night of a trip.
     *
     * @param equipment  that for each of its wishes, with every camera that may take it
     * @param shortfalls what counts of stars have shown of its nights
     */
    SiteNight(Trip trip, List<List<Equipment>> equipment, Ephemeris ephemeris, StarField stars, Night night,
            Shortfalls shortfalls) {
        this.trip = trip;
        this.equipment = equipment;
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.sky = new NightSky(ephemeris, night, trip.bodies(), trip.begun().map(Trip.Begun::at),
                trip.outings().awake().map(hours -> new NightSky.Awake(hours, trip.preparation())));
        this.clear = new ClearSky(trip.forecast(), sky);
        this.shortfalls = shortfalls;
    }

    private SiteNight(SiteNight of, ClearSky clear, Shortfalls shortfalls) {
        this.trip = of.trip;
        this.equipment = of.equipment;
        this.ephemeris = of.ephemeris;
        this.stars = of.stars;
        this.sky = of.sky;
        this.clear = clear;
        this.shortfalls = shortfalls;
    }

    NightSky sky() {
        return sky;
    }

    /** What it offers to all wishes. */
    EveningOffers offers() {
        return new EveningOffers(sky.night(), IntStream.range(0, trip.wishes().size()).mapToObj(this::to)
                .toList());
    }

    /** Whether its sky may leave time for the shortest exposure of a wish. */
    boolean mayOpen(int number) {
        Wish wish = trip.wishes().get(number);
        return equipment.get(number).stream().anyMatch(with -> Moments.mayHold(
                Conditions.of(wish, sky, new Aiming(wish.aim(), sky, with.camera())), sky.sunDown(),
                DurationLimits.shortestMin(wish)));
    }

    /** How much of its worth a wish has on it at best. */
    double worthShare() {
        return clear.worthShare();
    }

    /** What it offers to a wish with all cameras; where that is nothing, what closes it to the first. */
    EveningOffers.ToWish to(int number) {
        return to(number, true);
    }

    /** The same with all that is worth as much taken for equal. */
    EveningOffers.ToWish worthTo(int number) {
        return to(number, false);
    }

    private EveningOffers.ToWish to(int number, boolean preferred) {
        return EveningOffers.ToWish.together(equipment.get(number).stream()
                .map(with -> to(trip.wishes().get(number), with, number, preferred)).toList());
    }

    private EveningOffers.ToWish to(Wish wish, Equipment with, int number, boolean preferred) {
        Aiming aiming = new Aiming(wish.aim(), sky, with.camera());
        List<Condition> conditions = Conditions.of(wish, sky, aiming);
        Optional<Moments> moments = Moments.of(conditions, sky.sunDown());
        if (moments.isEmpty()) {
            return EveningOffers.ToWish.none(Reasons.closed(conditions, sky));
        }
        WishNight night = new WishNight(wish, with, sky, aiming, moments.get(), stars, clear,
                shortfalls);
        List<Offer> offers = ExposureSearch.offers(night, number, sky.clock().minutes(), preferred);
        if (!offers.isEmpty()) {
            return EveningOffers.ToWish.of(offers);
        }
        if (!night.sequel().none()) {
            return new EveningOffers.ToWish(offers, night.sequel().closed(
                    moments.get().throughout().nextSetBit(0) + DurationLimits.shortestMin(wish)));
        }
        return wish.records() instanceof Wish.Records.AtLeast && !night.fellShort()
                ? countedOffer(wish, night, number) : EveningOffers.ToWish.of(offers);
    }

    /** Of stars that are estimated to be too few the exposure in which a count finds enough. */
    private EveningOffers.ToWish countedOffer(Wish wish, WishNight night, int number) {
        Refused refused = new Refused(night, sky);
        Reason reason = refused.reason();
        if (!(reason instanceof Reason.TooFewStars few)) {
            return EveningOffers.ToWish.none(reason);
        } else if (few.recorded() < FEW_SHARE * few.wanted()) {
            return EveningOffers.ToWish.of(List.of());
        }
        Reason.TooFewStars counted = counted(few, wish, night.with());
        return counted.recorded() < counted.wanted() ? EveningOffers.ToWish.none(counted)
                : EveningOffers.ToWish.of(List.of(refused.countedEnough(number)));
    }

    private Reason.TooFewStars counted(Reason.TooFewStars few, Wish wish, Equipment with) {
        return new Reason.TooFewStars(few.wanted(), recorded(wish, with, few.nearest()), few.nearest());
    }

    /** Why it offers nothing to a wish of the trip that its sky is not closed to; its stars are counted. */
    Reason reason(int number) {
        Wish wish = trip.wishes().get(number);
        Equipment with = equipment.get(number).get(0);
        Reason reason = new Refused(at(wish, with), sky).reason();
        return reason instanceof Reason.TooFewStars few ? counted(few, wish, with) : reason;
    }

    /**
     * The best exposure, with the first camera that has one, for a wish that need not be one of the trip's,
     * the earliest of equals, in which no fewer stars are counted than must record; empty for none.
     */
    Optional<ExposureChoice> best(Wish wish) {
        SiteNight counting = new SiteNight(this, clear, new Shortfalls());
        return trip.takers(wish).stream().flatMap(number ->
                counting.counted(wish, Equipment.of(trip, wish, number)).stream()).findFirst();
    }

    private Optional<ExposureChoice> counted(Wish wish, Equipment with) {
        EveningOffers.ToWish found = to(wish, with, 0, true);
        if (found.none()) {
            return Optional.empty();
        }
        WishNight night = at(wish, with);
        Timetable.Exposed best = Timetable.Exposed.of(found.best(), found.best().firstOpenMin());
        if (wish.records() instanceof Wish.Records.AtLeast) {
            ExposureChoice made = new Making(trip, sky, one -> night).made(List.of(best)).get(0).exposure();
            if (tooFew(wish, with, made)) {
                return takenDown(wish, with, made) ? counted(wish, with) : Optional.empty();
            }
        }
        return Optional.of(ExposureChoice.of(night, best.openMin(), best.openMin() + best.firstMin()));
    }

    /** Whether a count finds fewer stars on an exposure than must record. */
    private boolean tooFew(Wish wish, Equipment with, ExposureChoice exposure) {
        return wish.records() instanceof Wish.Records.AtLeast least && exposure.marginMag() < SURE_MAG
                && count(wish, with, exposure).recorded() < least.trails();
    }

    /** The stars of the first opening of an exposure. */
    StarCount count(Wish wish, Equipment with, ExposureChoice exposure) {
        return counts.computeIfAbsent(exposure, asked ->
                new ShotFigures(wish, with, sky, ephemeris, stars).count(asked));
    }

    /** Takes down that they are too few; whether that is new. */
    private boolean takenDown(Wish wish, Equipment with, ExposureChoice exposure) {
        return shortfalls.add(sky.night(), wish, with.camera(), exposure.fNumber(), exposure.marginMag());
    }

    /** What the trip would have to put up with to serve a wish that the forecast alone closes. */
    Optional<Remedy> underCloud(Wish wish) {
        return new SiteNight(this, clear.atAnyChance(sky), new Shortfalls()).best(wish)
                .map(exposure -> new Remedy.Changed(
                Remedy.Change.CLEAR, Chance.percent(cloud(exposure)
                .orElseThrow().clearChance()), sky.clock().at(exposure.openMin())));
    }

    /** The cloud over an exposure; empty without a forecast. */
    Optional<CloudCover> cloud(ExposureChoice exposure) {
        return clear.over(exposure.openMin(), exposure.lastMin());
    }

    /** How many stars an exposure for a wish records. */
    private int recorded(Wish wish, Equipment with, Reason.Exposure exposure) {
        Framing framing = new Framing(exposure.aim(), wish.aim().roll(), with.camera());
        Interval open = Interval.lasting(exposure.openAt(), Duration.ofMinutes(exposure.minutes()));
        Setting setting = new Setting(framing, exposure.fNumber(), List.of(open));
        return new ShotFigures(wish, with, sky, ephemeris, stars)
                .count(setting, List.of(setting)).recorded();
    }

    /** A wish that can be exposed at some minutes of it. */
    WishNight at(Wish wish, Equipment with) {
        Aiming aiming = new Aiming(wish.aim(), sky, with.camera());
        return new WishNight(wish, with, sky, aiming, Moments.of(Conditions.of(wish, sky, aiming),
                sky.sunDown()).orElseThrow(), stars, clear, shortfalls);
    }

    /** The exposures chosen for wishes of the trip as they are made, in order of time. */
    List<Made> made(List<Timetable.Exposed> chosen) {
        return new Making(trip, sky, one -> at(trip.wishes().get(one.wish()), with(one))).made(chosen);
    }

    /** What an exposure for a wish of the trip is made with. */
    Equipment with(Timetable.Exposed one) {
        return equipment.get(one.wish()).stream().filter(with -> with.number() == one.camera()).findFirst()
                .orElseThrow();
    }

    /**
     * Counts the stars of exposures as they are made and takes down where fewer record than must; whether
     * that was not known of one.
     */
    boolean fallShort(List<Made> all) {
        boolean any = false;
        for (Made made : all) {
            Wish wish = trip.wishes().get(made.chosen().wish());
            Equipment with = with(made.chosen());
            any |= tooFew(wish, with, made.exposure()) && takenDown(wish, with, made.exposure());
        }
        return any;
    }

    /** Whether stars must be counted of any of them. */
    boolean wantStars(List<Timetable.Exposed> chosen) {
        return chosen.stream().anyMatch(one -> trip.wishes().get(one.wish()).records()
                instanceof Wish.Records.AtLeast);
    }
}
