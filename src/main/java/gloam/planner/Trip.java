package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Night;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.units.BadInput;
import gloam.units.Range;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A trip: where, when, with what and what for.
 *
 * @param title      its title
 * @param sites      the sites it can go to, at least one; a night is spent at one of them
 * @param firstNight date of the first night's evening
 * @param lastNight  date of the last night's evening, not before the first
 * @param cameras    the cameras carried, at least one, each with a name of its own; all are at one site at a
 *                   time
 * @param film       the film carried, for wishes and cameras that name no other
 * @param sheets     how many sheets may be spent, 1 to 500
 * @param preview    digital test frames that looked right
 * @param wishes     the pictures wanted
 * @param forecast   the weather, as far as it is known
 * @param begun      how far it has gone, where it has begun
 * @param outings    when people go out
 */
public record Trip(String title, List<Site> sites, LocalDate firstNight, LocalDate lastNight,
                   List<CarriedCamera> cameras, FilmStock film, int sheets, Previews preview,
                   List<Wish> wishes, Weather forecast, Optional<Begun> begun, Outings outings) {

    /** Allowed numbers of sheets. */
    public static final Range SHEETS = new Range("sheets", 1, 500, "");

    /** Allowed numbers of sheets spent. */
    public static final Range SHEETS_SPENT = new Range("sheets spent", 0, 499, "");

    /** Time to level a tripod, aim and focus in the dark: common practice, no source. */
    private static final Duration SET_UP = Duration.ofMinutes(20);

    /** Copies the lists; refuses a number of sheets outside its range with {@link gloam.units.BadInput}. */
    public Trip {
        SHEETS.check(sheets);
        sites = List.copyOf(sites);
        cameras = List.copyOf(cameras);
        wishes = List.copyOf(wishes);
    }

    /** The same trip to other sites. */
    public Trip to(List<Site> others) {
        return new Trip(title, others, firstNight, lastNight, cameras, film, sheets, preview, wishes,
                forecast, begun, outings);
    }

    /**
     * What is left of the trip from an instant on.
     *
     * @throws BadInput when it is over by then
     */
    public Trip rest(Instant from) {
        LocalDate night = Night.eveningOf(sites.get(0), from);
        if (night.isAfter(lastNight)) {
            throw new BadInput("the trip's last night, " + lastNight
                    + ", is over by then; give an earlier instant");
        }
        return new Trip(title, sites, night.isAfter(firstNight) ? night : firstNight, lastNight, cameras,
                film,
                sheets, preview, wishes, forecast, Optional.of(new Begun(from, spent(), List.of(), first())),
                outings);
    }

    /**
     * One evening of the trip alone, which stays the same trip to calendars.
     *
     * @throws BadInput when it is none of the trip's
     */
    public Trip evening(LocalDate date) {
        if (!dates().contains(date)) {
            throw new BadInput(date + " is none of the nights " + firstNight + " … " + lastNight
                    + "; give one of them");
        }
        Instant noon = sites.stream().map(site -> Night.spanOf(site, date).start()).min(Instant::compareTo)
                .orElseThrow();
        return new Trip(title, sites, date, date, cameras, film, sheets, preview, wishes, forecast,
                begun.or(() -> Optional.of(new Begun(noon, 0, List.of(), firstNight))), outings);
    }

    /**
     * The same trip with some sheets gone, where it has begun.
     *
     * @throws BadInput when no sheet is left
     */
    public Trip withSpent(int spent) {
        if (SHEETS_SPENT.check(spent) >= sheets) {
            throw new BadInput(spent + " sheets spent leave none of the " + sheets
                    + " carried; give a smaller number");
        }
        return new Trip(title, sites, firstNight, lastNight, cameras, film, sheets, preview, wishes, forecast,
                begun.map(since -> new Begun(since.at, spent, since.done, since.firstNight)), outings);
    }

    /**
     * The same trip without wishes served, named each as often as it was.
     *
     * @throws BadInput when a wish is unknown
     */
    public Trip without(List<String> done) {
        done.stream().filter(name -> wishes.stream().noneMatch(wish -> wish.name().equals(name))).findFirst()
                .ifPresent(name -> {
                    throw new BadInput("no wish is named \"" + name + "\"; the trip has "
                            + String.join(", ", wishes.stream().map(Wish::name).toList()));
                });
        List<Wish> left = wishes.stream().flatMap(wish ->
                wish.after(Collections.frequency(done, wish.name())).stream()).toList();
        return new Trip(title, sites, firstNight, lastNight, cameras, film, sheets, preview, left, forecast,
                begun.map(since -> new Begun(since.at, since.spent, done, since.firstNight)), outings);
    }

    /** The same trip with a sheet for every picture wanted. */
    Trip withSheetsEnough() {
        int wanted = spent() + wishes.stream().mapToInt(Wish::repeat).sum();
        return new Trip(title, sites, firstNight, lastNight, cameras, film, Math.max(sheets, wanted), preview,
                wishes, forecast, begun, outings);
    }

    /** The only camera, or the first of several. */
    public Camera camera() {
        return cameras.get(0).camera();
    }

    /**
     * The same trip with one of its cameras alone, whose film is the trip's then.
     *
     * @throws BadInput when no camera has the name
     */
    public Trip by(String name) {
        CarriedCamera only = cameras.stream().filter(one -> one.camera().name().equals(name)).findFirst()
                .orElseThrow(() -> new BadInput("no camera is named \"" + name + "\"; the trip has "
                + String.join(", ", cameras.stream().map(one -> one.camera().name()).toList())));
        return new Trip(title, sites, firstNight, lastNight, List.of(only), only.film().orElse(film), sheets,
                preview, wishes, forecast, begun, outings);
    }

    /** The numbers of the cameras that may take a wish, from 0; the only camera takes all. */
    List<Integer> takers(Wish wish) {
        return IntStream.range(0, cameras.size()).filter(number -> cameras.size() == 1
                || wish.limits().allow(cameras.get(number).camera()) && cameras.get(number).takes(wish))
                .boxed().toList();
    }

    /** The film of a wish in one of the cameras. */
    FilmStock film(Wish wish, int number) {
        return wish.film().or(() -> cameras.get(number).film()).orElse(film);
    }

    /** Minutes from closing one sheet in a camera to opening the next. */
    int changeoverMin(int number) {
        return (int) Math.ceil(cameras.get(number).camera().changeover().toMillis() / 60_000.0);
    }

    /**
     * How long before the first opening of a night setting up begins: as long as the longest changeover at
     * least.
     */
    public Duration preparation() {
        return cameras.stream().map(one -> one.camera().changeover()).reduce(SET_UP,
                (one, other) -> one.compareTo(other) > 0 ? one : other);
    }

    /** What stays the same in every timetable of the trip: made of its title and its first night. */
    public UUID identity() {
        return UUID.nameUUIDFromBytes((title + "\n" + first()).getBytes(StandardCharsets.UTF_8));
    }

    private LocalDate first() {
        return begun.map(Begun::firstNight).orElse(firstNight);
    }

    /** Sheets gone before the timetable begins. */
    int spent() {
        return begun.map(Begun::spent).orElse(0);
    }

    /**
     * The dates of the evenings that are free, in order.
     *
     * @throws BadInput when none is, or the clocks of every site skip them all
     */
    public List<LocalDate> dates() {
        return outings.evenings().among(Night.evenings(sites, firstNight, lastNight));
    }

    /** The Sun, and the planets that wishes follow or must record. */
    List<Body> bodies() {
        return Stream.concat(Stream.of(Body.SUN), wishes.stream()
                .flatMap(wish -> Stream.concat(Stream.of(wish), wish.later().stream()
                .map(later -> later.alone(wish)))).flatMap(wish -> wish.bodies().stream()))
                .filter(body -> body != Body.MOON).distinct().toList();
    }

    /** The same trip with every film, its own and those of wishes, changed. */
    public Trip withFilms(UnaryOperator<FilmStock> change) {
        return new Trip(title, sites, firstNight, lastNight,
                cameras.stream().map(one -> new CarriedCamera(one.camera(), one.film().map(change))).toList(),
                change.apply(film), sheets, preview,
                wishes.stream().map(wish -> wish.withFilm(change)).toList(), forecast, begun, outings);
    }

    /**
     * How far a trip has gone.
     *
     * @param at         now: nothing opens earlier
     * @param spent      sheets gone by now
     * @param done       names of wishes served by now, each as often as it was
     * @param firstNight date of the evening on which the trip began
     */
    public record Begun(Instant at, int spent, List<String> done, LocalDate firstNight) {

        /** Copies the list. */
        public Begun {
            done = List.copyOf(done);
        }
    }
}
