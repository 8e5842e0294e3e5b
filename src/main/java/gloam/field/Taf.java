package gloam.field;

import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an aerodrome forecast in the WMO's code FM 51 TAF (Manual on Codes, WMO-No. 306, Volume I.1) as far
 * as cloud goes.
 *
 * <p>Understood are validity, FM, BECMG, TEMPO, PROB and the cloud groups; oktas become the middle of what a
 * group stands for. What is forecast for a time as temporary counts half, what is forecast with a probability
 * by that, and both only where they bring more cloud. NSC, NCD and CAVOK speak only of cloud that matters to
 * aircraft, so they count as an eighth; common sense, no source.
 */
public final class Taf {

    private static final Pattern WORD = Pattern.compile("[^\\s=]+");
    private static final Pattern PERIOD = Pattern.compile("(\\d{2})(\\d{2})/(\\d{2})(\\d{2})");
    private static final Pattern FROM = Pattern.compile("FM(\\d{2})(\\d{2})(\\d{2})");
    private static final Pattern PROBABILITY = Pattern.compile("PROB(\\d{2})");
    private static final Pattern CLOUD = Pattern.compile("(FEW|SCT|BKN|OVC|VV)(\\d{3}|///)(CB|TCU|///)?");
    private static final Map<String, Double> AMOUNT = Map.of("FEW", 1.5 / 8, "SCT", 3.5 / 8, "BKN", 6.0 / 8,
            "OVC", 1.0, "VV", 1.0, "SKC", 0.0, "CLR", 0.0, "NSC", 1.0 / 8, "NCD", 1.0 / 8, "CAVOK", 1.0 / 8);
    private static final double TEMPORARY_SHARE = 0.5;
    private static final Duration STEP = Duration.ofMinutes(10);
    /** No TAF is valid for longer (ICAO, Annex 3, 6.2). */
    private static final Duration LONGEST = Duration.ofHours(30);
    private static final int MOST_GROUPS = 500;
    private static final int MOST_TOLD = 20;
    private static final Range HOUR = new Range("hour", 0, 24, "h");
    private static final Range MINUTE = new Range("minute", 0, 59, "min");

    private final LocalDate near;
    private final Problems problems;
    private final List<Group> groups = new ArrayList<>();
    private int told = 0;

    /** Is told what is wrong at which place of a message, counted in characters from 0. */
    @FunctionalInterface
    public interface Problems {

        /** One problem. */
        void at(int place, String problem);
    }

    private enum Kind { FROM, BECOMING, PERHAPS }

    /** What the words before a period make of it. */
    private record Change(Kind kind, double weight) {

        private static final Change NONE = new Change(Kind.FROM, 1);
    }

    /** A change group: from when to when, how much it counts, and the cloud it names, negative for none. */
    private record Group(Kind kind, Interval span, double weight, double cloud) {

        Group with(double named) {
            return new Group(kind, span, weight, Math.max(cloud, named));
        }
    }

    private Taf(LocalDate near, Problems problems) {
        this.near = near;
        this.problems = problems;
    }

    /**
     * The forecast in a message, empty when there is a problem with it, such as no validity or a group that
     * cannot be.
     *
     * @param near     a date at most a fortnight from the message's, which tells its days' month
     * @param problems is told every problem
     */
    public static Optional<Forecast> read(String message, LocalDate near, Problems problems) {
        Taf taf = new Taf(near, problems);
        taf.groups(message);
        return taf.told == 0 ? Optional.of(taf.forecast()) : Optional.empty();
    }

    private Forecast forecast() {
        Interval valid = groups.get(0).span;
        List<Forecast.Row> rows = new ArrayList<>();
        for (Instant at = valid.start(); !at.isAfter(valid.endExclusive()); at = at.plus(STEP)) {
            rows.add(new Forecast.Row(at, cloudAt(at), OptionalDouble.empty(), OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return new Forecast(rows);
    }

    private void groups(String message) {
        Matcher word = WORD.matcher(message);
        Change change = Change.NONE;
        while (told < MOST_TOLD && word.find()) {
            try {
                change = read(word.group().toUpperCase(Locale.ROOT), change);
            } catch (BadInput wrong) {
                tell(word.start(), wrong.getMessage());
            }
            if (groups.size() > MOST_GROUPS) {
                tell(word.start(), "the TAF has more than " + MOST_GROUPS + " groups. Is it the right file?");
                return;
            }
        }
        if (groups.isEmpty()) {
            tell(0, "the TAF names no validity such as 0818/0924; paste it whole");
        }
    }

    private void tell(int place, String problem) {
        problems.at(place, problem);
        told++;
    }

    /** Takes in a word; what the next period is for. */
    private Change read(String word, Change change) {
        Matcher probability = PROBABILITY.matcher(word);
        Matcher from = FROM.matcher(word);
        Matcher period = PERIOD.matcher(word);
        if (probability.matches()) {
            return new Change(Kind.PERHAPS, Integer.parseInt(probability.group(1)) / 100.0);
        }
        if (word.equals("TEMPO")) {
            return new Change(Kind.PERHAPS, change.weight * TEMPORARY_SHARE);
        }
        if (word.equals("BECMG")) {
            return new Change(Kind.BECOMING, 1);
        }
        if (period.matches()) {
            groups.add(new Group(change.kind, period(period), change.weight, -1));
            return Change.NONE;
        }
        if (from.matches()) {
            from(from);
        } else {
            cloud(word);
        }
        return change;
    }

    private void from(Matcher from) {
        Instant at = at(from.group(1), from.group(2))
                .plus(Duration.ofMinutes((long) MINUTE.check(Integer.parseInt(from.group(3)))));
        if (groups.isEmpty()) {
            throw new BadInput(from.group()
                    + " stands before the TAF's validity, such as 0818/0924; paste it whole");
        }
        Instant end = groups.get(0).span.endExclusive();
        if (at.isBefore(end)) {
            groups.add(new Group(Kind.FROM, new Interval(at, end), 1, -1));
        }
    }

    private Interval period(Matcher period) {
        Instant start = at(period.group(1), period.group(2));
        Instant end = at(period.group(3), period.group(4));
        if (!start.isBefore(end)) {
            throw new BadInput("the TAF's period " + period.group()
                    + " ends before it begins; take the group out or correct it");
        }
        if (Duration.between(start, end).compareTo(LONGEST) > 0) {
            throw new BadInput("the TAF's period " + period.group() + " is longer than " + LONGEST.toHours()
                    + " h; correct its days and hours");
        }
        return new Interval(start, end);
    }

    private void cloud(String word) {
        Matcher cloud = CLOUD.matcher(word);
        Double amount = AMOUNT.get(cloud.matches() ? cloud.group(1) : word);
        if (amount != null && !groups.isEmpty()) {
            int last = groups.size() - 1;
            groups.set(last, groups.get(last).with(amount));
        }
    }

    /**
     * The instant of a day of the month and an hour, 24 included, in the month that brings it nearest to the
     * date.
     */
    private Instant at(String day, String hour) {
        int dayOfMonth = Integer.parseInt(day);
        return List.of(near.minusMonths(1), near, near.plusMonths(1)).stream()
                .filter(date -> dayOfMonth >= 1 && dayOfMonth <= date.lengthOfMonth())
                .map(date -> date.withDayOfMonth(dayOfMonth))
                .min((some, other) -> Long.compare(Math.abs(some.toEpochDay() - near.toEpochDay()),
                        Math.abs(other.toEpochDay() - near.toEpochDay())))
                .orElseThrow(() -> new BadInput("the TAF names day " + day
                + ", which no month has; paste it anew"))
                .atStartOfDay(ZoneOffset.UTC).toInstant()
                .plus(Duration.ofHours((long) HOUR.check(Integer.parseInt(hour))));
    }

    private double cloudAt(Instant at) {
        double lasting = 0;
        double more = 0;
        for (Group group : groups) {
            if (group.cloud >= 0 && !at.isBefore(group.span.start())) {
                switch (group.kind) {
                    case FROM -> lasting = group.cloud;
                    case BECOMING -> lasting += (group.cloud - lasting) * share(group.span, at);
                    case PERHAPS -> more = group.span.contains(at)
                            ? Math.max(more, group.weight * (group.cloud - lasting)) : more;
                }
            }
        }
        return Math.min(1, lasting + more);
    }

    private static double share(Interval span, Instant at) {
        return Math.min(1, Duration.between(span.start(), at).toSeconds() / span.seconds());
    }
}
