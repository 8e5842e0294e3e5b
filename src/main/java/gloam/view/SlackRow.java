package gloam.view;

import gloam.planner.Plan;
import gloam.planner.Slack;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How exactly the times of a window are to be kept, with the meanings of {@link Slack}.
 *
 * @param openToTheMinute  whether it matters by the minute when it is opened
 * @param closeToTheMinute whether it matters by the minute when it is closed
 * @param twoMinEarlyStops by how much the tone changes if it is opened two minutes early
 * @param twoMinLateStops  the same if it is closed two minutes late
 * @param openedLate       when to close where it is opened late
 */
public record SlackRow(OffsetDateTime openEarliestAt, OffsetDateTime openLatestAt,
        OffsetDateTime closeEarliestAt, OffsetDateTime closeLatestAt, boolean openToTheMinute,
        boolean closeToTheMinute, OptionalDouble twoMinEarlyStops, OptionalDouble twoMinLateStops,
        List<LateRow> openedLate) {

    private static final String TOO_LATE = "too late";

    /**
     * A window that is opened late.
     *
     * @param lateMin      by how many minutes
     * @param closeAt      when to close it then; none where no closing keeps the limits
     * @param skyToneStops the tone that makes
     * @param azimuthDeg   where the frame's centre has to look, for the planned aim where that is fixed
     */
    public record LateRow(int lateMin, OffsetDateTime openAt, Optional<OffsetDateTime> closeAt,
            OptionalDouble skyToneStops, OptionalDouble azimuthDeg, OptionalDouble altitudeDeg) {

        static LateRow of(Slack.LateOpening late, OffsetDateTime planned, SiteClock clock) {
            return new LateRow(late.lateMin(), planned.plusMinutes(late.lateMin()),
                    late.close().map(close -> clock.at(close.at())),
                    number(late.close().map(Slack.Close::skyToneStops)),
                    number(late.close().map(close -> close.aim().azimuth().degrees())),
                    number(late.close().map(close -> close.aim().altitude().degrees())));
        }

        private static OptionalDouble number(Optional<Double> number) {
            return number.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
    }

    static SlackRow of(Plan.Window window, SiteClock clock) {
        Slack slack = window.slack();
        return new SlackRow(clock.at(slack.openEarliest()), clock.at(slack.openLatest()),
                clock.at(slack.closeEarliest()), clock.at(slack.closeLatest()), slack.opensToTheMinute(),
                slack.closesToTheMinute(), slack.openedEarlyStops(), slack.closedLateStops(),
                slack.late().stream()
                .map(late -> LateRow.of(late, clock.at(window.open().start()), clock)).toList());
    }

    /** Such as "may open 20:40–21:05; may close 21:40–22:10". */
    String words(NightTimes times) {
        if (!openToTheMinute && !closeToTheMinute && openEarliestAt.isEqual(openLatestAt)
                && closeEarliestAt.isEqual(closeLatestAt)) {
            return "keep both times: no other keeps the limits";
        }
        return Stream.of(openToTheMinute
                ? "opens to the minute: two minutes early is " + stops(twoMinEarlyStops)
                : span("open", openEarliestAt, openLatestAt, times), closeToTheMinute
                ? "closes to the minute: two minutes late is " + stops(twoMinLateStops)
                : span("close", closeEarliestAt, closeLatestAt, times)).collect(Collectors.joining("; "));
    }

    private static String span(String what, OffsetDateTime from, OffsetDateTime to, NightTimes times) {
        return from.isEqual(to) ? what + " neither earlier nor later"
                : "may " + what + " " + times.within(from.toInstant(), to.toInstant());
    }

    private static String stops(OptionalDouble stops) {
        return Wording.signed(stops.getAsDouble(), 1) + " stop";
    }

    /** Such as "opened late: 5 min, close 21:58; 10 min, close 22:03; 20 min or more, too late". */
    String lateWords(NightTimes times) {
        int closed = IntStream.range(0, openedLate.size())
                .filter(number -> openedLate.get(number).closeAt.isPresent()).max().orElse(-1) + 1;
        Stream<String> kept = openedLate.subList(0, closed).stream().map(late -> late.lateMin + " min, "
                + late.closeAt.map(at -> "close " + times.closes(at.toInstant())).orElse(TOO_LATE));
        Stream<String> lost = openedLate.stream().skip(closed).limit(1)
                .map(late -> late.lateMin + " min or more, " + TOO_LATE);
        return "opened late: " + Stream.concat(kept, lost).collect(Collectors.joining("; "))
                + (follows() ? "; aim anew" : "");
    }

    /** Whether the camera has to look elsewhere for an opening that is late. */
    private boolean follows() {
        return openedLate.stream().map(LateRow::azimuthDeg).filter(OptionalDouble::isPresent)
                .map(azimuth -> String.format(Locale.ROOT, "%.3f", azimuth.getAsDouble())).distinct()
                .count() > 1;
    }

    /** The same as a table, for who is late. */
    Table lateTable(NightTimes times) {
        boolean follows = follows();
        Table table = follows ? new Table(Table.words("late by"), Table.words("close"),
                Table.numbers("az", "°"), Table.numbers("alt", "°"))
                : new Table(Table.words("late by"), Table.words("close"));
        for (LateRow late : openedLate) {
            String by = late.lateMin + " min";
            String close = late.closeAt.map(at -> times.closes(at.toInstant())).orElse(TOO_LATE);
            if (follows) {
                table.row(by, close, late.azimuthDeg.isEmpty() ? ""
                        : Wording.direction(late.azimuthDeg.getAsDouble()), late.altitudeDeg.isEmpty() ? ""
                        : Wording.number(late.altitudeDeg.getAsDouble(), 1));
            } else {
                table.row(by, close);
            }
        }
        return table;
    }
}
