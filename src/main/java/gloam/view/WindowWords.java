package gloam.view;

import gloam.ephemeris.Night;
import gloam.ephemeris.StarCatalogue;
import gloam.planner.CloudCover;
import gloam.planner.Limits;
import gloam.planner.Miss;
import gloam.planner.Plan;
import gloam.planner.WindowSky;
import gloam.proof.StarCount;
import java.util.List;

/** Puts into one line why a window is where it is and what it will give. */
final class WindowWords {

    private WindowWords() {
    }

    /**
     * Such as "moonless and dark 20:31–04:10, sky 21.4 mag/arcsec², tone −1.8 ± 0.6, 23 of 41 stars record,
     * trail 27 mm".
     */
    static String reason(Plan.Window window, Night night) {
        return sky(window, night) + ", tone "
                + Wording.tone(window.skyToneStops(), window.skyToneSpreadStops()) + ", " + records(window)
                + ", " + TrailWords.of(window).sentence() + clear(window)
                + (window.misses().isEmpty() ? "" : "; misses: "
                + String.join(", ", misses(window.misses())));
    }

    /** By how much parts of a wish are missed, a few words each. */
    static List<String> misses(List<Miss> misses) {
        return misses.stream().map(WindowWords::words).toList();
    }

    private static String words(Miss miss) {
        if (miss instanceof Miss.Tone tone) {
            return "tone " + Wording.number(Math.abs(tone.stops()), 1) + " stops "
                    + (tone.stops() > 0 ? "lighter" : "darker") + " than wanted";
        } else if (miss instanceof Miss.Trail trail) {
            return "trail " + Wording.number(Math.abs(trail.mm()), 0) + " mm "
                    + (trail.mm() > 0 ? "longer" : "shorter") + " than wanted";
        } else if (miss instanceof Miss.Stars stars) {
            return stars.recorded() + " of the " + stars.wanted() + " stars wanted record";
        }
        Miss.TooFaint faint = (Miss.TooFaint) miss;
        return RequirementWords.name(faint.target()) + " " + Wording.number(faint.mag(), 1)
                + " mag too faint";
    }

    /** Such as "moonless and dark 20:31–04:10, sky 21.4 mag/arcsec²", a part of the reason. */
    static String sky(Plan.Window window, Night night) {
        WindowSky sky = window.sky();
        String span = sky.span().map(NightTimes.of(night)::span).orElse("");
        return SkyWords.of(sky, span, moon(window)) + ", sky "
                + Wording.number(sky.light().magArcsec2(), 1) + " mag/arcsec²";
    }

    /** Such as "Moon 14° high behind you, 122° from the aim" or, half-way through, "Moon down". */
    private static String moon(Plan.Window window) {
        double altitudeDeg = window.moon().position().apparentAltitude().degrees();
        if (altitudeDeg < 0) {
            return "Moon down half-way through";
        }
        double aroundDeg = window.moon().position().azimuth().minus(window.aim().azimuth()).degrees();
        return "Moon " + Wording.number(altitudeDeg, 0) + "° high " + words(Limits.Side.at(aroundDeg)) + ", "
                + Wording.number(window.moon().fromAim().degrees(), 0) + "° from the aim";
    }

    private static String words(Limits.Side side) {
        return switch (side) {
            case AHEAD -> "ahead";
            case BEHIND -> "behind you";
            case LEFT -> "to your left";
            case RIGHT -> "to your right";
        };
    }

    private static String records(Plan.Window window) {
        StarCount count = window.stars();
        String stars = StarWords.of(count.recorded(), count.spread(), count.crossing(), "stars",
                StarCatalogue.FAINTEST_MAG, count.fainter()) + " record";
        return RequirementWords.beforeStars(window.wish().mustRecord().stream().map(RequirementWords::name))
                + stars;
    }

    private static String clear(Plan.Window window) {
        return window.cloud().map(cloud -> ", " + cloud(cloud)).orElse("");
    }

    /** Such as "clear 58 % (cloud 35 %, covered for 20 min)". */
    static String cloud(CloudCover cloud) {
        return "clear " + Wording.percent(cloud.clearChance()) + " (cloud "
                + Wording.percent(cloud.meanFraction())
                + (Wording.percent(cloud.mostFraction()).equals(Wording.percent(cloud.meanFraction())) ? ""
                : ", " + Wording.percent(cloud.mostFraction()) + " at most")
                + (cloud.coveredMin() == 0 ? ""
                : ", covered for " + Wording.lasting(60.0 * cloud.coveredMin())) + ")";
    }
}
