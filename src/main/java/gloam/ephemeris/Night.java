package gloam.ephemeris;

import gloam.gear.Site;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * One night at a site, from local noon to local noon.
 *
 * <p>Where the Sun or the Moon does not pass a limit, the lists hold nothing or the whole span.
 *
 * @param site        where
 * @param date        the date of its evening
 * @param span        from noon of that date to noon of the next, by the site's clocks
 * @param events      everything that happens, in order of time
 * @param sunDown     when the Sun is below the horizon (upper limb, 34′ of refraction)
 * @param civilNight  when the Sun's centre is below -6°
 * @param nauticalNight when the Sun's centre is below -12°
 * @param darkness    when the Sun's centre is below -18°
 * @param moonUp      when the Moon is above the horizon (upper limb, 34′ of refraction)
 */
public record Night(Site site, LocalDate date, Interval span, List<Event> events, List<Interval> sunDown,
                    List<Interval> civilNight, List<Interval> nauticalNight, List<Interval> darkness,
                    List<Interval> moonUp) {

    /** Copies the lists. */
    public Night {
        events = List.copyOf(events);
        sunDown = List.copyOf(sunDown);
        civilNight = List.copyOf(civilNight);
        nauticalNight = List.copyOf(nauticalNight);
        darkness = List.copyOf(darkness);
        moonUp = List.copyOf(moonUp);
    }

    /**
     * The night of that evening at a site.
     *
     * @throws OutsideCoverage when part of it lies outside what the ephemeris covers
     */
    public static Night of(Ephemeris ephemeris, Site site, LocalDate date) {
        Interval span = coveredSpan(ephemeris, site, date);
        Courses courses = Courses.of(ephemeris, site, span);
        SunCourse sun = courses.sun();
        MoonCourse moon = courses.moon();
        List<Event> events = new ArrayList<>();
        sun.addTo(events);
        moon.addTo(events);
        events.sort(Event.IN_TIME);
        return new Night(site, date, span, events, sun.horizon().below(), sun.civil().below(),
                sun.nautical().below(), sun.astronomical().below(), moon.horizon().above());
    }

    /** The nights from one evening to another, both included, in order. */
    public static List<Night> range(Ephemeris ephemeris, Site site, LocalDate first, LocalDate last) {
        return evenings(List.of(site), first, last).stream().map(date -> of(ephemeris, site, date)).toList();
    }

    /**
     * The dates from one to another, both included, that have an evening at one of some sites or more.
     *
     * @throws BadInput when no date has
     */
    public static List<LocalDate> evenings(List<Site> sites, LocalDate first, LocalDate last) {
        List<LocalDate> evenings = first.datesUntil(last.plusDays(1))
                .filter(date -> !having(sites, date).isEmpty()).toList();
        if (evenings.isEmpty()) {
            throw skipped(sites.get(0), first);
        }
        return evenings;
    }

    /** Those of some sites that have an evening of a date: a zone moved over the date line skips a day. */
    public static List<Site> having(List<Site> sites, LocalDate date) {
        return sites.stream()
                .filter(site -> noon(site, date).isBefore(noon(site, date.plusDays(1)))).toList();
    }

    /** The evening of the night that an instant lies in. */
    public static LocalDate eveningOf(Site site, Instant at) {
        LocalDate evening = at.atZone(site.zone()).toLocalDate();
        while (at.isBefore(noon(site, evening)) || having(List.of(site), evening).isEmpty()) {
            evening = evening.minusDays(1);
        }
        return evening;
    }

    /**
     * From noon of a date to noon of the next by the site's clocks: 24 hours but for nights when the clocks
     * change.
     *
     * @throws BadInput when those clocks skip the date
     */
    public static Interval spanOf(Site site, LocalDate date) {
        if (having(List.of(site), date).isEmpty()) {
            throw skipped(site, date);
        }
        return new Interval(noon(site, date), noon(site, date.plusDays(1)));
    }

    /** Noon of a date by the site's clocks, the first of two; of a skipped date that of the next. */
    private static Instant noon(Site site, LocalDate date) {
        return date.atTime(LocalTime.NOON).atZone(site.zone()).toInstant();
    }

    private static BadInput skipped(Site site, LocalDate date) {
        return new BadInput(date + " does not exist in " + site.zone()
                + ": the clocks skip that day. Give a date before or after");
    }

    /**
     * The same of a night that an ephemeris covers.
     *
     * @throws OutsideCoverage when part of it lies outside
     */
    public static Interval coveredSpan(Ephemeris ephemeris, Site site, LocalDate date) {
        Interval span = spanOf(site, date);
        if (!ephemeris.covers().contains(span)) {
            throw new OutsideCoverage(date, ephemeris.covers());
        }
        return span;
    }

    /** Half-way through the Sun's absence, or from noon to noon where there is none. */
    public Instant middle() {
        return (sunDown.isEmpty() ? span : sunDown.get(0)).middle();
    }

    /** When it is dark and the Moon is below the horizon. */
    public List<Interval> moonlessDarkness() {
        List<Interval> moonless = new ArrayList<>();
        for (Interval dark : darkness) {
            moonless.addAll(dark.without(moonUp));
        }
        return moonless;
    }
}
