package gloam.field;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an aerodrome forecast in the WMO's code FM 51 TAF (Manual on Codes, WMO-No. 306, Volume I.1) as far as cloud goes.
 *
 * <p>Understood are validity, FM, BECMG, TEMPO, PROB and the cloud groups; oktas become the middle of what a group stands
 * for. What is forecast for a time as temporary counts half, what is forecast with a probability by that, and both only
 * where they bring more cloud. NSC, NCD and CAVOK speak only of cloud that matters to aircraft, so they count as an
 * eighth; common sense, no source.
 */
public final class Taf {

    private static final Pattern PERIOD = Pattern.compile("(\\d{2})(\\d{2})/(\\d{2})(\\d{2})");
    private static final Pattern FROM = Pattern.compile("FM(\\d{2})(\\d{2})(\\d{2})");
    private static final Pattern PROBABILITY = Pattern.compile("PROB(\\d{2})");
    private static final Pattern CLOUD = Pattern.compile("(FEW|SCT|BKN|OVC|VV)(\\d{3}|///)(CB|TCU|///)?");
    private static final Map<String, Double> AMOUNT = Map.of("FEW", 1.5 / 8, "SCT", 3.5 / 8, "BKN", 6.0 / 8, "OVC", 1.0,
            "VV", 1.0, "SKC", 0.0, "CLR", 0.0, "NSC", 1.0 / 8, "NCD", 1.0 / 8, "CAVOK", 1.0 / 8);
    private static final double TEMPORARY_SHARE = 0.5;
    private static final Duration STEP = Duration.ofMinutes(10);

    private final LocalDate near;
    private final List<Group> groups = new ArrayList<>();

    private enum Kind { FROM, BECOMING, PERHAPS }

    /** A change group: from when to when, how much it counts, and the cloud it names, negative for none. */
    private record Group(Kind kind, Interval span, double weight, double cloud) {

        Group with(double named) {
            return new Group(kind, span, weight, Math.max(cloud, named));
        }
    }

    private Taf(LocalDate near) {
        this.near = near;
    }

    /**
     * The forecast in a message.
     *
     * @param near a date at most a fortnight from the message's, which tells its days' month
     * @throws BadInput when it has no validity or a group that cannot be
     */
    public static Forecast read(String message, LocalDate near) {
        Taf taf = new Taf(near);
        taf.groups(Arrays.stream(message.toUpperCase(Locale.ROOT).replace("=", " ").trim().split("\\s+")).toList());
        Interval valid = taf.groups.get(0).span;
        List<Forecast.Row> rows = new ArrayList<>();
        for (Instant at = valid.start(); !at.isAfter(valid.endExclusive()); at = at.plus(STEP)) {
            rows.add(new Forecast.Row(at, taf.cloudAt(at), OptionalDouble.empty(), OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return new Forecast(rows);
    }

    private void groups(List<String> words) {
        double weight = 1;
        Kind next = Kind.FROM;
        for (String word : words) {
            Matcher probability = PROBABILITY.matcher(word);
            Matcher from = FROM.matcher(word);
            Matcher period = PERIOD.matcher(word);
            if (probability.matches()) {
                weight = Integer.parseInt(probability.group(1)) / 100.0;
                next = Kind.PERHAPS;
            } else if (word.equals("TEMPO")) {
                weight = (next == Kind.PERHAPS ? weight : 1) * TEMPORARY_SHARE;
                next = Kind.PERHAPS;
            } else if (word.equals("BECMG")) {
                next = Kind.BECOMING;
            } else if (from.matches()) {
                Instant at = at(from.group(1), from.group(2)).plus(Duration.ofMinutes(Integer.parseInt(from.group(3))));
                if (at.isBefore(validity().endExclusive())) {
                    groups.add(new Group(Kind.FROM, new Interval(at, validity().endExclusive()), 1, -1));
                }
            } else if (period.matches()) {
                groups.add(new Group(next, period(period), weight, -1));
                next = Kind.FROM;
                weight = 1;
            } else {
                cloud(word);
            }
        }
        validity();
    }

    private Interval period(Matcher period) {
        Instant start = at(period.group(1), period.group(2));
        Instant end = at(period.group(3), period.group(4));
        if (!start.isBefore(end)) {
            throw new BadInput("the TAF's period " + period.group() + " ends before it begins; take the group out or mend it");
        }
        return new Interval(start, end);
    }

    private Interval validity() {
        if (groups.isEmpty()) {
            throw new BadInput("the TAF names no validity such as 0818/0924; paste it whole");
        }
        return groups.get(0).span;
    }

    private void cloud(String word) {
        Matcher cloud = CLOUD.matcher(word);
        Double amount = AMOUNT.get(cloud.matches() ? cloud.group(1) : word);
        if (amount != null && !groups.isEmpty()) {
            int last = groups.size() - 1;
            groups.set(last, groups.get(last).with(amount));
        }
    }

    /** The instant of a day of the month and an hour, 24 included, in the month that brings it nearest to the date. */
    private Instant at(String day, String hour) {
        int dayOfMonth = Integer.parseInt(day);
        return List.of(near.minusMonths(1), near, near.plusMonths(1)).stream()
                .filter(date -> dayOfMonth >= 1 && dayOfMonth <= date.lengthOfMonth())
                .map(date -> date.withDayOfMonth(dayOfMonth))
                .min((some, other) -> Long.compare(Math.abs(some.toEpochDay() - near.toEpochDay()),
                        Math.abs(other.toEpochDay() - near.toEpochDay())))
                .orElseThrow(() -> new BadInput("the TAF names day " + day + ", which no month has; paste it anew"))
                .atStartOfDay(ZoneOffset.UTC).toInstant().plus(Duration.ofHours(Integer.parseInt(hour)));
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
