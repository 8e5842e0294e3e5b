package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.field.Forecast;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.LightDome;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.support.Places;
import gloam.units.Angle;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * Small trips by chance: few nights of few places, so that what the sky does there is computed once for many.
 */
final class RandomTrips {

    private static final LocalDate FIRST = LocalDate.of(2027, 2, 1);
    private static final int DATES = 28;
    private static final List<Site> SITES = List.of(Places.MID_NORTH, Places.MID_SOUTH);

    /** One of them with a town on its horizon, under a sky that was measured. */
    private static final Site BY_A_TOWN = new Site("by a town", Places.MID_NORTH.latitude(),
            Places.MID_NORTH.longitude(), Places.MID_NORTH.heightM(), Places.MID_NORTH.zone(), 20.6, 0.3,
            Places.MID_NORTH.skyline(), List.of(new LightDome(Angle.ofDegrees(150), new LightDome.Town(40_000,
            18), LightDome.USUAL_COLOUR_K)), List.of(), 0.1);
    private static final Camera PINHOLE = new Camera("pinhole", new Lens(60, List.of(FNumber.exact(200)), 1,
            Double.POSITIVE_INFINITY, 300, 0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(120, 90),
            Duration.ofMinutes(6));

    /** Carried beside the camera of all others, with a film of its own or without. */
    static final Camera SECOND = new Camera("second camera", new Lens(90, List.of(FNumber.exact(8),
            FNumber.exact(16), FNumber.exact(32)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE), new Frame(110, 80), Duration.ofMinutes(3));
    private static final FilmStock SLOWER = new FilmStock("slower film", 160, FilmStock.Kind.POSITIVE,
            List.of(new FilmStock.Layer("grey", Reciprocity.power(1.3, 1))), ToneCurve.PRINT, 0, "invented");

    private RandomTrips() {
    }

    /** A trip of one or two nights, one or two sites and up to three wishes. */
    static Trip trip(RandomGenerator random) {
        int nights = 1 + random.nextInt(2);
        LocalDate first = FIRST.plusDays(random.nextInt(DATES - nights));
        List<Wish> wishes = IntStream.range(0, 1 + random.nextInt(3)).mapToObj(i -> wish("wish " + i, random))
                .toList();
        List<Site> sites = random.nextInt(4) == 0 ? SITES : List.of(SITES.get(random.nextInt(SITES.size())));
        boolean pinhole = random.nextInt(16) == 0;
        Trip trip = Trips.trip("random", random.nextInt(16) == 0 ? List.of(BY_A_TOWN) : sites, first,
                first.plusDays(nights - 1L), pinhole ? PINHOLE : Trips.CAMERA,
                1 + random.nextInt(4),
                pinhole ? wishes.stream().map(wish -> wish.through(List.of())).toList() : wishes,
                random.nextInt(4) == 0 ? weather(random, sites) : Weather.UNKNOWN);
        return narrowed(trip, random);
    }

    /** A trip with hours and places of its own, and wishes with more of them, or one more. */
    private static Trip narrowed(Trip trip, RandomGenerator random) {
        LocalDate first = trip.firstNight();
        LocalTime from = LocalTime.of(random.nextInt(24), random.nextInt(60));
        Outings outings = switch (random.nextInt(12)) {
            case 0 -> new Outings(Evenings.of(first.toString()), 500, Optional.empty(), Travel.NONE);
            case 1 -> new Outings(Evenings.ALL, 1 + random.nextInt(2), Optional.empty(),
                    Travel.NONE);
            case 2 -> new Outings(Evenings.ALL, 500,
                    Optional.of(new Limits.TimeOfNight(from, from.plusHours(5 + random.nextInt(12)))),
                    Travel.NONE);
            case 3 -> new Outings(Evenings.ALL, 500, Optional.empty(),
                    new Travel(Duration.ofMinutes(random.nextInt(1500)), random.nextBoolean() ? List.of()
                    : List.of(new Travel.Leg(SITES.get(1).name(), SITES.get(0).name(),
                    Duration.ofMinutes(random.nextInt(1500))))));
            default -> Outings.ANY;
        };
        List<Wish> wishes = new ArrayList<>(trip.wishes());
        if (wishes.size() < 3 && random.nextBoolean()) {
            Wish more = wish("wish " + wishes.size(), random).recording(new Wish.Records.Nothing());
            wishes.add(trip.camera().equals(PINHOLE) ? more.through(List.of()) : more);
        }
        List<Wish> all = wishes.stream().map(wish -> narrowed(wish, random)).toList();
        boolean two = !trip.camera().equals(PINHOLE) && random.nextInt(4) == 0;
        Trip one = new Trip(trip.title(), trip.sites(), first, trip.lastNight(), trip.cameras(), trip.film(),
                trip.sheets(), trip.preview(), all, trip.forecast(), trip.begun(), outings);
        return two ? withSecond(one, random) : one;
    }

    /** The same trip with a second camera, which some of its wishes are for, or the first. */
    private static Trip withSecond(Trip trip, RandomGenerator random) {
        List<CarriedCamera> cameras = List.of(trip.cameras().get(0), new CarriedCamera(SECOND,
                random.nextBoolean() ? Optional.of(SLOWER) : Optional.empty()));
        List<Wish> wishes = trip.wishes().stream().map(wish -> random.nextInt(3) > 0 ? wish
                : forOne(wish, cameras.get(random.nextInt(2)))).toList();
        return new Trip(trip.title(), trip.sites(), trip.firstNight(), trip.lastNight(), cameras, trip.film(),
                trip.sheets(), trip.preview(), wishes, trip.forecast(), trip.begun(), trip.outings());
    }

    private static Wish forOne(Wish wish, CarriedCamera camera) {
        return limited(camera.takes(wish) ? wish : wish.through(List.of()),
                wish.limits().by(List.of(camera.camera().name())));
    }

    private static Wish narrowed(Wish wish, RandomGenerator random) {
        return switch (random.nextInt(16)) {
            case 0 -> limited(wish, wish.limits().at(List.of(SITES.get(random.nextInt(2)).name())));
            case 1 -> limited(wish, wish.limits().with(Limits.MoonFrame.values()[random.nextInt(2)]));
            case 2 -> wish.aim() instanceof Aim.Follow follow ? aimed(wish, new Aim.Follow(follow.target(),
                    follow.levelWithin(), upFrom(random.nextInt(50)), Optional.empty(), follow.roll()))
                    : wish;
            case 3 -> wish.aim() instanceof Aim.Follow follow ? aimed(wish, new Aim.Follow(follow.target(),
                    follow.levelWithin(), Between.ANY, Optional.of(new Sector(random.nextInt(360),
                    random.nextDouble() * 360)), follow.roll())) : wish;
            case 4 -> wish.recording(new Wish.Records.These(List.of(Body.MARS,
                    Trips.stars().get(random.nextInt(60)))));
            case 5 -> wish.tone() instanceof Wish.Tone.Near near
                    ? wish.toned(new Wish.Tone.Near(near.stops(), 0.25)) : wish;
            default -> wish;
        };
    }

    private static Wish limited(Wish wish, Limits limits) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(), wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(),
                limits);
    }

    /** A wish that is aimed otherwise. */
    static Wish aimed(Wish wish, Aim aim) {
        return new Wish(wish.name(), aim, wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(), wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(),
                wish.limits());
    }

    /** Forecasts for all sites or for one, and any chances. */
    static Weather weather(RandomGenerator random, List<Site> sites) {
        boolean everywhere = random.nextBoolean();
        return new Weather(everywhere ? Optional.of(forecast(random)) : Optional.empty(),
                everywhere && random.nextBoolean() ? Map.of() : Map.of(sites.get(0).name(), forecast(random)),
                10 * random.nextInt(5), 10 * (1 + random.nextInt(9)));
    }

    private static Forecast forecast(RandomGenerator random) {
        Instant from = FIRST.minusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant();
        return new Forecast(IntStream.range(0, 4 * (DATES + 3)).mapToObj(row -> new Forecast.Row(
                from.plus(Duration.ofHours(6L * row)), random.nextInt(11) / 10.0, OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty())).toList());
    }

    /** A wish of any kind. */
    static Wish wish(String name, RandomGenerator random) {
        SkyKind sky = SkyKind.values()[random.nextInt(SkyKind.values().length)];
        int shortestMin = 5 * (1 + random.nextInt(12));
        int longestMin = shortestMin + 5 * random.nextInt(20);
        List<FNumber> fNumbers = random.nextBoolean() ? List.of()
                : Trips.CAMERA.lens().fNumbers().subList(random.nextInt(2), 3 + random.nextInt(3));
        return new Wish(name, aim(random), sky, tone(random), records(random), trail(random),
                Duration.ofMinutes(shortestMin),
                Duration.ofMinutes(longestMin), fNumbers, 1 + random.nextInt(3), 1 + random.nextInt(2),
                Optional.empty(), limits(random));
    }

    private static Aim aim(RandomGenerator random) {
        return switch (random.nextInt(5)) {
            case 0 -> new Aim.Pole(Angle.ZERO);
            case 1 -> Trips.following(random.nextBoolean() ? Body.MARS : Body.JUPITER, random.nextBoolean()
                    ? Optional.empty() : Optional.of(Angle.ofDegrees(2 + random.nextInt(20))));
            default -> new Aim.Point(Direction.ofDegrees(random.nextInt(360), 5 + random.nextInt(80)),
                    Angle.ZERO);
        };
    }

    private static Wish.Tone tone(RandomGenerator random) {
        double stops = -4 + random.nextInt(11) / 2.0;
        return switch (random.nextInt(4)) {
            case 0 -> new Wish.Tone.Free();
            case 1 -> new Wish.Tone.Near(stops);
            default -> new Wish.Tone.AtMost(stops);
        };
    }

    private static Wish.Records records(RandomGenerator random) {
        return switch (random.nextInt(4)) {
            case 0 -> new Wish.Records.AtLeast(1 + random.nextInt(8));
            case 1 -> new Wish.Records.These(List.of(random.nextBoolean() ? Body.MARS
                    : Body.JUPITER));
            default -> new Wish.Records.Nothing();
        };
    }

    private static TrailLength trail(RandomGenerator random) {
        int leastMm = 2 + random.nextInt(20);
        return random.nextInt(4) > 0 ? new TrailLength(OptionalDouble.empty(), OptionalDouble.empty())
                : new TrailLength(OptionalDouble.of(leastMm),
                OptionalDouble.of(leastMm + 5 + random.nextInt(30)));
    }

    private static Limits limits(RandomGenerator random) {
        Between any = Between.ANY;
        Optional<Limits.Side> noSide = Optional.empty();
        Optional<Limits.TimeOfNight> noTime = Optional.empty();
        LocalTime from = LocalTime.of(random.nextInt(24), random.nextInt(60));
        return switch (random.nextInt(16)) {
            case 0 -> new Limits(upFrom(random.nextInt(30)), any, noSide, any, noTime, any, any, any);
            case 1 -> new Limits(any, upFrom(random.nextInt(60)), noSide, any, noTime, any, any, any);
            case 2 -> new Limits(any, any, Optional.of(Limits.Side.values()[random.nextInt(4)]), any, noTime,
                    any, any, any);
            case 3 -> new Limits(any, any, noSide, upFrom(3 + random.nextInt(15)), noTime, any, any, any);
            case 4 -> new Limits(any, any, noSide, any,
                    Optional.of(new Limits.TimeOfNight(from, from.plusHours(3))), any, any, any);
            case 5 -> new Limits(any, any, noSide, any, noTime, upFrom(random.nextInt(40)), any, any);
            case 6 -> new Limits(any, any, noSide, any, noTime, any, upFrom(random.nextInt(100)), any);
            case 7 -> new Limits(any, any, noSide, any, noTime, any, any, upFrom(random.nextInt(25)));
            default -> Limits.NONE;
        };
    }

    private static Between upFrom(double least) {
        return new Between(OptionalDouble.of(least), OptionalDouble.empty());
    }
}
