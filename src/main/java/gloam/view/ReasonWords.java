package gloam.view;

import gloam.ephemeris.Night;
import gloam.gear.FNumber;
import gloam.planner.DurationLimit;
import gloam.planner.Plan;
import gloam.planner.Reason;
import gloam.planner.Remedy;
import gloam.planner.SkyKind;
import gloam.planner.Wish;
import gloam.units.Interval;
import gloam.units.Label;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts into one line why a wish is not served on a night, and what would serve it. */
final class ReasonWords {

    private final Night night;
    private final NightTimes times;
    private final Optional<String> camera;

    /** The reasons of a night. */
    ReasonWords(Night night) {
        this(night, Optional.empty());
    }

    private ReasonWords(Night night, Optional<String> camera) {
        this.night = night;
        this.camera = camera;
        this.times = NightTimes.of(night);
    }

    /** Such as "moonlight all night; possible from Tue 2027-02-09 01:44". */
    String of(Plan.Refusal refusal) {
        return words(refusal.reason(), refusal.wish()) + refusal.remedy()
                .map(remedy -> "; possible " + words(remedy)).orElse("");
    }

    private String words(Reason reason, Wish wish) {
        if (reason instanceof Reason.Plain plain) {
            return switch (plain) {
                case SHEETS_SPENT -> "all sheets go to wishes worth more";
                case NIGHT_FULL -> "the sheets of this night go to wishes worth more";
                case TRAVEL -> "no time to travel here and on to where the other sheets are";
                case BETTER_CHOSEN -> "wishes worth more were chosen";
                case NO_START -> "no start leaves time for it";
            };
        } else if (reason instanceof Reason.Served served) {
            return "served on " + served.on().stream().map(LocalDate::toString)
                    .collect(Collectors.joining(" and "));
        } else if (reason instanceof Reason.TimeTaken taken) {
            return String.join(" and ", taken.by())
                    + (taken.by().size() == 1 ? " uses that time" : " use that time");
        } else if (reason instanceof Reason.Never never) {
            return RequirementWords.never(never.what(), night);
        } else if (reason instanceof Reason.There there) {
            return "at " + there.night().site().name() + ": "
                    + new ReasonWords(there.night()).words(there.reason(), wish);
        } else if (reason instanceof Reason.With with) {
            return "with " + with.camera() + ": "
                    + new ReasonWords(night, Optional.of(with.camera())).words(with.reason(), wish);
        } else if (reason instanceof Reason.LaterClosed later) {
            return "opening " + later.opening() + ": " + words(later.reason(), wish);
        } else if (reason instanceof Reason.Overcast overcast) {
            return overcast(overcast);
        } else if (reason instanceof Reason.Exclusive exclusive) {
            return exclusive.what().map(RequirementWords::what).orElse("all else") + " only "
                    + spans(exclusive.holds())
                    + ", but " + RequirementWords.what(exclusive.other()) + " only "
                    + spans(exclusive.otherHolds());
        }
        return exposure(reason, wish);
    }

    private String overcast(Reason.Overcast overcast) {
        return Math.round(100 * overcast.cloud().clearChance()) == 0 ? "overcast by the forecast"
                : times.span(overcast.open()) + " " + WindowWords.cloud(overcast.cloud())
                + " at best, sheets stay at home below " + Wording.plain(overcast.leastPercent()) + " %";
    }

    private String spans(List<Interval> spans) {
        return spans.stream().map(times::span).collect(Collectors.joining(" and "));
    }

    private String exposure(Reason reason, Wish wish) {
        if (reason instanceof Reason.NothingShows nothing) {
            return nothingShows(nothing, wish);
        } else if (reason instanceof Reason.ToneMissed missed) {
            return nearest(missed.nearest(), missed.wanted()) + command("expose", missed.nearest(), wish);
        } else if (reason instanceof Reason.ToneAndTrailsMissed both) {
            return nearest(both.nearest(), both.wanted()) + ", and "
                    + both.faintest().map(target -> RequirementWords.name(target) + " would be "
                    + Wording.number(both.shortfallMag(), 1) + " mag too faint")
                    .orElse("too few stars would record") + command("trail", both.nearest(), wish);
        } else if (reason instanceof Reason.TwilightMissed twilight) {
            return "twilight makes " + Wording.number(twilight.percent(), 0)
                    + " % of the tone at the nearest, in "
                    + minutes(twilight.minutes()) + " of twilight, " + how(twilight.nearest())
                    + command("expose", twilight.nearest(), wish);
        } else if (reason instanceof Reason.TooFewStars few) {
            return few.recorded() + " of the " + stars(few.wanted()) + " wanted would record at most, "
                    + how(few.nearest()) + command("trail", few.nearest(), wish);
        } else if (reason instanceof Reason.TooFaint faint) {
            return RequirementWords.name(faint.target()) + " would not record: "
                    + Wording.number(faint.shortfallMag(), 1)
                    + " mag too faint " + how(faint.nearest()) + command("trail", faint.nearest(), wish);
        }
        Reason.NoDuration none = (Reason.NoDuration) reason;
        return needs(none) + ", but " + ends(none);
    }

    private static String nearest(Reason.Exposure nearest, Wish.Tone wanted) {
        return "the nearest tone is " + stops(nearest.toneStops()) + " " + how(nearest)
                + (wanted instanceof Wish.Tone.AtMost ? ", lighter than " : ", too far from ") + tone(wanted);
    }

    /** Such as "at f/8 in 45 min". */
    private static String how(Reason.Exposure exposure) {
        return "at " + fNumber(exposure.fNumber()) + " in " + minutes(exposure.minutes());
    }

    /** How to see the figures of an exposure: the command, put behind a sentence. */
    private String command(String name, Reason.Exposure exposure, Wish wish) {
        return !wish.later().isEmpty() ? "" : String.format(Locale.ROOT,
                " (gloam %s --trip FILE%s --site \"%s\"%s --azimuth %.2f --altitude %.2f"
                + " --f-number %s --from %s --lasts %dm)", name,
                camera.map(own -> " --camera \"" + own + "\"").orElse(""), night.site().name(),
                wish.film().map(film -> " --film \"" + film.name() + "\"").orElse(""),
                exposure.aim().azimuth().positive().degrees(), exposure.aim().altitude().degrees(),
                Wording.plain(exposure.fNumber().marked()),
                exposure.openAt().atZone(night.site().zone()).toLocalDateTime(), exposure.minutes());
    }

    private String nothingShows(Reason.NothingShows nothing, Wish wish) {
        Reason.Exposure nearest = nothing.nearest();
        boolean dark = nearest.toneStops() < nothing.boundStops();
        return "nothing would show: no star leaves a trail and the sky stays " + (dark ? "black" : "white")
                + ", tone "
                + stops(nearest.toneStops()) + " at " + fNumber(nearest.fNumber()) + " in "
                + minutes(nearest.minutes())
                + ", while a tone shows from " + stops(nothing.boundStops()) + (dark ? " up" : " down")
                + (nothing.atFNumber().isEmpty() ? "; it takes another light"
                : "; it takes " + fNumber(nothing.atFNumber().get()) + (dark ? " or wider" : " or narrower"))
                + command("trail", nearest, wish);
    }

    private static String needs(Reason.NoDuration none) {
        String least = minutes(none.leastMin());
        return switch (none.leastBy()) {
            case TRAIL -> "a trail of " + mm(none.wish().trail().leastMm().orElseThrow()) + " needs " + least;
            case TONE -> "too dark for tone " + bound(none.wish().tone()) + " at " + fNumber(none.fNumber())
                    + " before " + least;
            case ARC -> "an arc of " + degrees(none.wish().limits().arcDeg().least().orElseThrow())
                    + " needs " + least;
            case EXPOSURE -> "needs at least " + least;
            default -> named(none.leastBy(), none.wish().sky()) + " needs " + least;
        };
    }

    private static String ends(Reason.NoDuration none) {
        String most = minutes(none.mostMin());
        return switch (none.mostBy()) {
            case TRAIL -> "its trail reaches " + mm(none.wish().trail().mostMm().orElseThrow()) + " after "
                    + most;
            case TONE -> "too light for tone " + bound(none.wish().tone()) + " at " + fNumber(none.fNumber())
                    + " after " + most;
            case ARC -> "the sky turns by " + degrees(none.wish().limits().arcDeg().most().orElseThrow())
                    + " in " + most;
            case EXPOSURE -> "the longest exposure wanted is " + most;
            default -> named(none.mostBy(), none.wish().sky()) + " leaves " + most;
        };
    }

    private static String named(DurationLimit limit, SkyKind sky) {
        return switch (limit) {
            case OPENING -> sky.limits(limit) ? "opening in " + Label.of(sky) : "the time to open";
            case CLOSING -> sky.limits(limit) ? "closing in " + Label.of(sky) : "the time to close";
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
            case SHORTEST -> from + ", "
                    + (changed.amount() == 1 ? "one minute" : minutes((int) changed.amount())) + " long";
            case TONE -> "with tone " + stops(changed.amount()) + " " + from;
            case RECORDS -> from + " if less needs to record";
            case SKY -> "under any sky " + from;
            case CLEAR -> "with least-clear-percent " + Wording.plain(changed.amount()) + " " + from;
        };
    }

    private static String bound(Wish.Tone tone) {
        return tone instanceof Wish.Tone.Near near ? stops(near.stops())
                : stops(((Wish.Tone.AtMost) tone).stops());
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
