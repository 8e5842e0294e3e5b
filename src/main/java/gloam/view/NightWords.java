package gloam.view;

import gloam.ephemeris.Body;
import gloam.planner.Caution;
import gloam.planner.NightRank;
import gloam.planner.Note;
import java.time.zone.ZoneOffsetTransition;
import java.util.StringJoiner;

/** Puts into lines what is to be known of a night, and of a timetable. */
final class NightWords {

    private NightWords() {
    }

    /** Why a night stands where it does among others. */
    static String reason(NightRank rank) {
        return rank.asked() == 0 ? sky(rank)
                : rank.served().size() + " of " + rank.asked() + " wishes; " + sky(rank);
    }

    private static String sky(NightRank rank) {
        if (rank.night().sunDown().isEmpty()) {
            return "polar day: the Sun does not set";
        }
        if (rank.night().darkness().isEmpty()) {
            return "no darkness: the Sun does not go below -18°";
        }
        String moonlit = Wording.number(rank.darkHours() - rank.trulyDarkHours(), 1);
        return Wording.number(rank.trulyDarkHours(), 1) + " h truly dark, "
                + (moonlit.equals("0.0") ? "" : moonlit + " h moonlit, ")
                + "Moon " + Math.round(100 * rank.moon().illuminatedFraction()) + " % lit" + high(rank);
    }

    private static String high(NightRank rank) {
        StringJoiner names = new StringJoiner(", ", "; ", " high").setEmptyValue("");
        for (Body body : rank.high()) {
            names.add(body.properName());
        }
        return names.toString();
    }

    /** A note of a night. */
    static String of(Note note, NightTimes times) {
        if (note instanceof Note.ClocksChange clocks) {
            return of(clocks.change());
        } else if (note instanceof Note.Dew dew) {
            return "dew threatens the lens from " + times.time(dew.from()) + ": the air is "
                    + Wording.number(dew.spareC(), 1) + " °C above its dew point";
        }
        Note.Cold cold = (Note.Cold) note;
        return "coldest at " + times.time(cold.at()) + ": " + Wording.number(cold.temperatureC(), 0)
                + " °C, with a wind of "
                + Wording.number(cold.windKmH(), 0) + " km/h like " + Wording.number(cold.feltC(), 0) + " °C"
                + (cold.freezesSkin() ? "; bare skin can freeze within half an hour" : "");
    }

    /** A change of the clocks. */
    static String of(ZoneOffsetTransition change) {
        return "on " + NightTimes.date(change.getDateTimeAfter().toLocalDate()) + " the clocks go "
                + (change.isGap() ? "forward" : "back") + " from " + change.getDateTimeBefore().toLocalTime()
                + " to " + change.getDateTimeAfter().toLocalTime()
                + (change.isGap() ? "" : "; times that come twice stand with their offset from UTC");
    }

    /** What a timetable leaves open. */
    static String of(Caution caution) {
        if (caution instanceof Caution.NotProvenBest best) {
            return "too many wishes to try every timetable: this one has at least "
                    + Wording.number(Math.floor(100 * best.share()), 0) + " % of the worth of the best";
        } else if (caution instanceof Caution.SkyByPreview preview) {
            return "the sky of " + preview.site() + " is that of the preview frame: "
                    + Wording.number(preview.frameMag(), 1) + " mag/arcsec²";
        } else if (caution instanceof Caution.PreviewDisagrees preview) {
            return "the preview frame shows a mid-tone for a sky of " + Wording.number(preview.frameMag(), 1)
                    + " mag/arcsec²; the plan uses the " + Wording.number(preview.siteMag(), 1)
                    + " stated for " + preview.site();
        } else if (caution instanceof Caution.FewStars few) {
            return few.wish() + ": " + (few.recorded() == 0 ? "no star leaves a trail"
                    : few.recorded() == 1 ? "only 1 star leaves a trail"
                    : "only " + few.recorded() + " stars leave a trail")
                    + "; the wish does not say how many must: add `records-at-least: " + few.asked() + "`";
        }
        return "cloud is unknown: no forecast was given, so every window counts as clear with a chance of "
                + Wording.plain(((Caution.NoForecast) caution).clearPercent()) + " %";
    }
}
