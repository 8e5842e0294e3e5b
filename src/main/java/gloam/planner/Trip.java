package gloam.planner;

import gloam.ephemeris.Body;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.units.Range;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A trip: where, when, with what and what for.
 *
 * @param title      its title
 * @param sites      the sites it can go to, at least one; a night is spent at one of them
 * @param firstNight date of the first night's evening
 * @param lastNight  date of the last night's evening, not before the first
 * @param camera     the camera carried
 * @param film       the film carried, for wishes that name no other
 * @param sheets     how many sheets may be spent, 1 to 500
 * @param preview    a digital test frame that looked right, if one was made
 * @param wishes     the pictures wanted
 */
public record Trip(String title, List<Site> sites, LocalDate firstNight, LocalDate lastNight, Camera camera,
                   FilmStock film, int sheets, Optional<Preview> preview, List<Wish> wishes) {

    /** Allowed numbers of sheets. */
    public static final Range SHEETS = new Range("sheets", 1, 500, "");

    /** Copies the lists; refuses a number of sheets outside its range with {@link gloam.units.BadInput}. */
    public Trip {
        SHEETS.check(sheets);
        sites = List.copyOf(sites);
        wishes = List.copyOf(wishes);
    }

    /** The evenings' dates, in order. */
    public List<LocalDate> dates() {
        return firstNight.datesUntil(lastNight.plusDays(1)).toList();
    }

    /** The Sun, and the planets that wishes follow or must record. */
    List<Body> bodies() {
        return Stream.concat(Stream.of(Body.SUN), wishes.stream().flatMap(wish -> wish.bodies().stream()))
                .filter(body -> body != Body.MOON).distinct().toList();
    }
}
