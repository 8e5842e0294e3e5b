package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.units.Angle;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/** Trips, wishes and kit for planner tests, all invented. */
public final class Trips {

    static final FilmStock FILM = new FilmStock("test film", 640, FilmStock.Kind.POSITIVE,
            List.of(new FilmStock.Layer("grey", Reciprocity.power(1.2, 1))), ToneCurve.PRINT, 0, "invented");
    static final Camera CAMERA = new Camera("test camera", new Lens(120, List.of(FNumber.exact(8),
            FNumber.exact(11.3137), FNumber.exact(16), FNumber.exact(22.6274), FNumber.exact(45.2548)),
            0.88, Double.POSITIVE_INFINITY, 40, 0, Projection.RECTILINEAR, Vignetting.NONE),
            new Frame(80, 80), Duration.ofMinutes(6));
    /** Moonless: new Moon on 6 February 2027. */
    public static final LocalDate DARK_NIGHT = LocalDate.of(2027, 2, 6);
    /** Full Moon on 20 February 2027. */
    static final LocalDate MOON_NIGHT = LocalDate.of(2027, 2, 19);

    private Trips() {
    }

    /**
     * A grid of stars over the whole sky, brightest first: 1 star of magnitude 0, and three times as many a
     * magnitude.
     */
    static List<Star> stars() {
        List<Star> stars = new ArrayList<>();
        double goldenTurnDeg = 360 * (Math.sqrt(5) - 1) / 2;
        for (int i = 0; i < 1000; i++) {
            double declinationDeg = Math.toDegrees(Math.asin(1 - (2 * i + 1) / 1000.0));
            double magnitude = Math.log(1 + i * 7 % 1000) / Math.log(3);
            stars.add(new Star("star " + i, i * goldenTurnDeg % 360, declinationDeg, 0, 0, magnitude, 0.6));
        }
        return stars;
    }

    public static Trip trip(List<Site> sites, LocalDate first, int nights, int sheets, List<Wish> wishes) {
        return trip("test trip", sites, first, first.plusDays(nights - 1L), CAMERA, sheets, wishes,
                Weather.UNKNOWN);
    }

    /** A trip with one camera, on which every evening is free. */
    static Trip trip(String title, List<Site> sites, LocalDate first, LocalDate last, Camera camera,
            int sheets, List<Wish> wishes, Weather weather) {
        return new Trip(title, sites, first, last, List.of(new CarriedCamera(camera, Optional.empty())), FILM,
                sheets, Previews.NONE, wishes, weather, Optional.empty(), Outings.ANY);
    }

    /** The same trip in other weather, perhaps begun. */
    static Trip under(Trip trip, Weather weather, Optional<Trip.Begun> begun) {
        return new Trip(trip.title(), trip.sites(), trip.firstNight(), trip.lastNight(), trip.cameras(),
                trip.film(), trip.sheets(), trip.preview(), trip.wishes(), weather, begun, trip.outings());
    }

    /** Following a target wherever it stands. */
    public static Aim.Follow following(Target target, Optional<Angle> levelWithin) {
        return new Aim.Follow(target, levelWithin, Between.ANY, Optional.empty(), Angle.ZERO);
    }

    /**
     * A wish at a fixed direction, 20 to 120 minutes, for which a builder method changes one thing at a time.
     */
    public static Wish pointed(String name, Direction direction, SkyKind sky, Wish.Tone tone) {
        return wish(name, new Aim.Point(direction, Angle.ZERO), sky, tone, new Wish.Records.Nothing());
    }

    static Wish followed(String name, Body body, SkyKind sky, Wish.Tone tone) {
        return wish(name, following(body, Optional.empty()), sky, tone,
                new Wish.Records.Nothing());
    }

    static Wish wish(String name, Aim aim, SkyKind sky, Wish.Tone tone, Wish.Records records) {
        return new Wish(name, aim, sky, tone, records,
                new TrailLength(OptionalDouble.empty(), OptionalDouble.empty()),
                Duration.ofMinutes(20), Duration.ofMinutes(120), List.of(), 1, 1, Optional.empty());
    }

    static Wish withTrail(Wish wish, double leastMm, double mostMm) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(),
                new TrailLength(OptionalDouble.of(leastMm), OptionalDouble.of(mostMm)), wish.shortest(),
                wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film());
    }

    public static Wish repeated(Wish wish, int repeat, double worth) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(), wish.longest(), wish.fNumbers(), worth, repeat, wish.film(), wish.limits());
    }

    /** A wish of any kind, by chance. */
    static Wish random(String name, RandomGenerator random) {
        SkyKind sky = SkyKind.values()[random.nextInt(SkyKind.values().length)];
        double stops = -4 + random.nextInt(5);
        Wish.Tone tone = switch (random.nextInt(3)) {
            case 0 -> new Wish.Tone.Free();
            case 1 -> new Wish.Tone.Near(stops);
            default -> new Wish.Tone.AtMost(stops);
        };
        Wish wish = random.nextBoolean()
                ? pointed(name, Direction.ofDegrees(random.nextInt(360), 5 + random.nextInt(80)), sky, tone)
                : followed(name, random.nextBoolean() ? Body.MARS : Body.JUPITER, sky, tone);
        return repeated(wish, 1 + random.nextInt(2), 1 + random.nextInt(3));
    }
}
