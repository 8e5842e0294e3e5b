package gloam.view;

import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.planner.Aim;
import gloam.planner.Between;
import gloam.planner.LaterOpening;
import gloam.planner.Limits;
import gloam.planner.Wish;
import gloam.units.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A wish as understood.
 *
 * @param name           its name
 * @param aim            where the camera points, in words
 * @param sky            the kind of sky wanted
 * @param tone           the tone of the sky wanted, in words
 * @param records        what must leave a trail, in words
 * @param trailLeastMm   least trail length in mm
 * @param trailMostMm    greatest trail length in mm
 * @param shortestMin    shortest exposure in minutes
 * @param longestMin     longest exposure in minutes
 * @param fNumbers       allowed f-numbers; empty for all of the lens
 * @param worth          its worth
 * @param repeat         most sheets to spend on it
 * @param film           its film, if not the trip's
 * @param cameras        the cameras that may take it; empty for all of the trip
 * @param limits         further limits, in words
 * @param laterOpenings  later openings on the same sheet, in words
 */
public record WishRow(String name, String aim, String sky, String tone, String records,
        OptionalDouble trailLeastMm,
                      OptionalDouble trailMostMm, double shortestMin, double longestMin,
                      List<Double> fNumbers,
                      double worth, int repeat, Optional<String> film, List<String> cameras, String limits,
                      List<String> laterOpenings) {

    static WishRow of(Wish wish) {
        return new WishRow(wish.name(), words(wish.aim()), Label.of(wish.sky()), words(wish.tone()),
                words(wish.records()), wish.trail().leastMm(), wish.trail().mostMm(),
                wish.shortest().toSeconds() / 60.0, wish.longest().toSeconds() / 60.0,
                wish.fNumbers().stream().map(FNumber::marked).toList(), wish.worth(), wish.repeat(),
                wish.film().map(FilmStock::name), wish.limits().cameras(), limits(wish),
                wish.later().stream().map(WishRow::words).toList());
    }

    private static String words(LaterOpening later) {
        return words(later.aim()) + ", sky " + Label.of(later.sky()) + ", " + later.lasts().toMinutes()
                + " min" + later.fNumber().map(fNumber -> " at " + fNumber).orElse("")
                + (later.gap().isZero() ? "" : ", at least " + later.gap().toMinutes() + " min after");
    }

    private static String words(Aim aim) {
        String roll = ", roll " + Wording.plain(aim.roll().degrees()) + "°";
        if (aim instanceof Aim.Follow follow) {
            return "follow " + RequirementWords.name(follow.target()) + follow.levelWithin()
                    .map(within -> ", its trail level within " + Wording.plain(within.degrees()) + "°")
                    .orElse("") + place(follow) + roll;
        }
        if (aim instanceof Aim.Pole) {
            return "the celestial pole" + roll;
        }
        Aim.Point point = (Aim.Point) aim;
        return "azimuth " + Wording.plain(point.direction().azimuth().degrees()) + "°, altitude "
                + Wording.plain(point.direction().altitude().degrees()) + "°" + roll;
    }

    private static String place(Aim.Follow follow) {
        List<String> words = new ArrayList<>();
        add(words, "altitude", follow.altitudeDeg(), "°");
        follow.azimuth().ifPresent(sector -> words.add("azimuth between " + RequirementWords.words(sector)));
        return words.stream().map(", "::concat).collect(Collectors.joining());
    }

    /** The name of a body or star as trip files have it. */
    static String name(Target target) {
        return target instanceof Body body ? body.label() : ((Star) target).name();
    }

    private static String words(Wish.Tone tone) {
        if (tone instanceof Wish.Tone.Near near) {
            return Wording.signed(near.stops(), 1) + " stops within " + Wording.plain(near.withinStops());
        }
        return tone instanceof Wish.Tone.AtMost most
                ? "at most " + Wording.signed(most.stops(), 1) + " stops" : "any";
    }

    private static String words(Wish.Records records) {
        if (records instanceof Wish.Records.AtLeast least) {
            return "at least " + Wording.count(least.trails(), "star");
        }
        return records instanceof Wish.Records.These these
                ? these.targets().stream().map(RequirementWords::name).collect(Collectors.joining(" and "))
                : "nothing in particular";
    }

    /** All limits, one after the other. */
    private static String limits(Wish wish) {
        Limits limits = wish.limits();
        List<String> words = new ArrayList<>();
        if (!limits.sites().isEmpty()) {
            words.add("at " + String.join(" or ", limits.sites()));
        }
        words.add(wish.letsMoonIn() ? wish.ofMoon() ? "Moon pictured" : "Moon in the frame"
                : "Moon out of the frame");
        add(words, "Moon's altitude", limits.moonAltitudeDeg(), "°");
        add(words, "Moon lit", limits.moonLitPercent(), " %");
        limits.moonSide().ifPresent(side -> words.add("Moon " + Label.of(side)));
        add(words, "Sun's depth", limits.sunDepthDeg(), "°");
        limits.time().ifPresent(time -> words.add("by the clock " + time.from() + " … " + time.to()));
        add(words, "in twilight", limits.twilightMin(), " min");
        add(words, "of the tone in twilight", limits.twilightPercent(), " %");
        add(words, "arc", limits.arcDeg(), "°");
        return String.join("; ", words);
    }

    private static void add(List<String> words, String what, Between bounds, String unit) {
        bounds.least().ifPresent(least -> words.add(what + " from " + Wording.plain(least) + unit));
        bounds.most().ifPresent(most -> words.add(what + " up to " + Wording.plain(most) + unit));
    }
}
