package gloam.view;

import gloam.ephemeris.Night;
import gloam.gear.FNumber;
import gloam.planner.DurationLimit;
import gloam.planner.Plan;
import gloam.planner.Reason;
import gloam.planner.Remedy;
import gloam.planner.Wish;
import gloam.units.Interval;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** Puts into one line why a wish is not served on a night, and what would serve it. */
final class ReasonWords {

    private final Night night;
    private final NightTimes times;

    /** The reasons of a night. */
    ReasonWords(Night night) {
        this.night = night;
        this.times = NightTimes.of(night);
    }

    /** Such as "moonlight all night; possible from Tue 2027-02-09 01:44". */
    String of(Plan.Refusal refusal) {
        return words(refusal.reason()) + refusal.remedy().map(remedy -> "; possible " + words(remedy)).orElse("");
    }

    private String words(Reason reason) {
        if (reason instanceof Reason.Plain plain) {
            return switch (plain) {
                case SHEETS_SPENT -> "all sheets go to wishes worth more";
                case BETTER_CHOSEN -> "wishes worth more were chosen";
                case NO_START -> "no start leaves time for it";
                case TWILIGHT_SHARE -> "no exposure has the share of twilight wanted";
                case OVERCAST -> "the sky will hardly be clear";
            };
        } else if (reason instanceof Reason.Served served) {
            return "served on " + served.on().stream().map(LocalDate::toString).collect(Collectors.joining(" and "));
        } else if (reason instanceof Reason.TimeTaken taken) {
            return String.join(" and ", taken.by()) + (taken.by().size() == 1 ? " uses that time" : " use that time");
        } else if (reason instanceof Reason.Never never) {
            return RequirementWords.never(never.what(), night);
        } else if (reason instanceof Reason.Exclusive exclusive) {
            return exclusive.what().map(RequirementWords::what).orElse("all else") + " only " + spans(exclusive.holds())
                    + ", but " + RequirementWords.what(exclusive.other()) + " only " + spans(exclusive.otherHolds());
        }
        return exposure(reason);
    }

    private String spans(List<Interval> spans) {
        return spans.stream().map(times::span).collect(Collectors.joining(" and "));
    }

    private static String exposure(Reason reason) {
        if (reason instanceof Reason.NothingShows nothing) {
            return nothingShows(nothing);
        } else if (reason instanceof Reason.ToneMissed missed) {
            return "the nearest tone is " + stops(missed.nearest().toneStops()) + " at " + fNumber(missed.nearest().fNumber())
                    + " in " + minutes(missed.nearest().minutes()) + ", too far from " + tone(missed.wanted());
        } else if (reason instanceof Reason.TooFewStars few) {
            return "fewer than " + stars(few.wanted()) + " of the catalogue stand in the frame";
        } else if (reason instanceof Reason.NotRecorded not) {
            String what = not.wanted() instanceof Wish.Records.One one ? one.body().properName()
                    : stars(((Wish.Records.AtLeast) not.wanted()).trails());
            return what + " would not record: " + Wording.number(not.shortfallMag(), 1) + " mag too faint for "
                    + fNumber(not.nearest().fNumber());
        }
        Reason.NoDuration none = (Reason.NoDuration) reason;
        return needs(none) + ", but " + ends(none);
    }

    private static String nothingShows(Reason.NothingShows nothing) {
        Reason.Exposure nearest = nothing.nearest();
        boolean dark = nearest.toneStops() < nothing.boundStops();
        return "nothing would show: no star leaves a trail and the sky stays " + (dark ? "black" : "white") + ", tone "
                + stops(nearest.toneStops()) + " at " + fNumber(nearest.fNumber()) + " in " + minutes(nearest.minutes())
                + ", while a tone shows from " + stops(nothing.boundStops()) + (dark ? " up" : " down")
                + (nothing.atFNumber().isEmpty() ? "; it takes another light"
                : "; it takes " + fNumber(nothing.atFNumber().get()) + (dark ? " or wider" : " or narrower"));
    }

    private static String needs(Reason.NoDuration none) {
        String least = minutes(none.leastMin());
        return switch (none.leastBy()) {
            case TRAIL -> "a trail of " + mm(none.wish().trail().leastMm().orElseThrow()) + " needs " + least;
            case TONE -> "too dark for tone " + bound(none.wish().tone()) + " at " + fNumber(none.fNumber()) + " before " + least;
            case ARC -> "an arc of " + degrees(none.wish().limits().arcDeg().least().orElseThrow()) + " needs " + least;
            case EXPOSURE -> "needs at least " + least;
            default -> named(none.leastBy()) + " needs " + least;
        };
    }

    private static String ends(Reason.NoDuration none) {
        String most = minutes(none.mostMin());
        return switch (none.mostBy()) {
            case TRAIL -> "its trail reaches " + mm(none.wish().trail().mostMm().orElseThrow()) + " after " + most;
            case TONE -> "too light for tone " + bound(none.wish().tone()) + " at " + fNumber(none.fNumber()) + " after " + most;
            case ARC -> "the sky turns by " + degrees(none.wish().limits().arcDeg().most().orElseThrow()) + " in " + most;
            case EXPOSURE -> "the longest exposure wanted is " + most;
            default -> named(none.mostBy()) + " leaves " + most;
        };
    }

    private static String named(DurationLimit limit) {
        return switch (limit) {
            case OPENING -> "opening in dusk";
            case CLOSING -> "closing in dawn";
            case MIDDLE -> "the middle of the exposure";
            case TWILIGHT_SHARE -> "the share of twilight";
            default -> "the span";
        };
    }

    private String words(Remedy remedy) {
        if (remedy instanceof Remedy.Elsewhere elsewhere) {
            boolean tonight = elsewhere.night().date().equals(night.date());
            NightTimes then = NightTimes.of(elsewhere.night());
            return elsewhere.site().map(site -> "at " + site.name() + " ").orElse("") + "from "
                    + (tonight ? then.time(elsewhere.from()) : then.dated(elsewhere.from()));
        }
        Remedy.Changed changed = (Remedy.Changed) remedy;
        String from = "from " + times.time(changed.from());
        return switch (changed.change()) {
            case F_NUMBERS -> "at " + Wording.fNumber(changed.amount()) + " " + from;
            case TRAIL_LENGTH -> "with " + mm(Math.ceil(Math.abs(changed.amount())))
                    + (changed.amount() < 0 ? " less trail " : " more trail ") + from;
            case SHORTEST -> from + ", " + (changed.amount() == 1 ? "one minute" : minutes((int) changed.amount())) + " long";
            case TONE -> "with tone " + stops(changed.amount()) + " " + from;
            case RECORDS -> from + " if less needs to record";
            case SKY -> "under any sky " + from;
        };
    }

    private static String bound(Wish.Tone tone) {
        return tone instanceof Wish.Tone.Near near ? stops(near.stops()) : stops(((Wish.Tone.AtMost) tone).stops());
    }

    private static String tone(Wish.Tone tone) {
        return tone instanceof Wish.Tone.Near near ? "tone " + stops(near.stops())
                : tone instanceof Wish.Tone.AtMost most ? "tone at most " + stops(most.stops()) : "any tone";
    }

    private static String stars(int count) {
        return Wording.count(count, "star");
    }

    private static String stops(double stops) {
        return Wording.signed(stops, 1);
    }

    private static String fNumber(FNumber fNumber) {
        return Wording.fNumber(fNumber.marked());
    }

    private static String mm(double mm) {
        return Wording.number(mm, 0) + " mm";
    }

    private static String degrees(double deg) {
        return Wording.number(deg, 0) + "°";
    }

    private static String minutes(int minutes) {
        return minutes == 0 ? "0 min" : Wording.lasting(Duration.ofMinutes(minutes).toSeconds());
    }
}
