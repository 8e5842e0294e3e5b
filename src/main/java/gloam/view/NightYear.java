package gloam.view;

import gloam.gear.Site;
import gloam.planner.NightRank;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Nights one below the other and the hours of the clocks across: when it is dark and when moonless, the
 * Moon's phases as they stand in the sky, what each night is worth, and the best stays; of several sites the
 * best of each night.
 */
final class NightYear {

    private static final double LEFT = 92;
    private static final double TOP = 58;
    private static final double HOURS_WIDTH = 480;
    private static final double MOON_LEFT = LEFT + HOURS_WIDTH + 18;
    private static final double WORTH_LEFT = MOON_LEFT + 18;
    private static final double WORTH_WIDTH = 70;
    private static final double WIDTH = WORTH_LEFT + WORTH_WIDTH + 70;
    private static final double FOOT = 78;
    private static final double LETTER = 12;
    private static final double ALL_ROWS = 1100;
    private static final double ROW_WITH_DATE = 12;
    private static final double MOON_RADIUS = 5;
    private static final int MOST_SITES = 2;
    private static final int MOST_RANKS = 10;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);

    private final NightsReport report;
    private final Map<LocalDate, Row> byDate = new TreeMap<>();
    private final List<Row> rows;
    private final LocalDate first;
    private final double rowHeight;
    private final double height;
    private final double fromHour;
    private final double toHour;
    private final double mostWorth;
    private final Drawing svg;

    /**
     * A night of the ranking.
     *
     * @param night    its figures
     * @param site     its site
     * @param dark     when the Sun's centre is below -18°
     * @param moonless when the Moon is below the horizon too
     */
    record Row(NightRow night, Site site, List<Interval> dark, List<Interval> moonless) {

        static Row of(NightRank rank) {
            return new Row(NightRow.of(rank), rank.night().site(), rank.night().darkness(),
                    rank.night().moonlessDarkness());
        }

        /** Hours that the site's clocks are past the noon before the night. */
        private double hour(Instant at) {
            return Duration.between(night.night().atTime(LocalTime.NOON),
                    at.atZone(site.zone()).toLocalDateTime()).toSeconds() / 3600.0;
        }

        private double lit() {
            return night.moon().illuminatedFraction().orElseThrow();
        }
    }

    private NightYear(NightsReport report) {
        this.report = report;
        report.all().forEach(row -> byDate.putIfAbsent(row.night().night(), row));
        this.rows = List.copyOf(byDate.values());
        this.first = rows.get(0).night().night();
        long dates = day(rows.get(rows.size() - 1)) + 1;
        this.rowHeight = Math.max(3, Math.min(18, ALL_ROWS / dates));
        this.height = dates * rowHeight;
        this.fromHour = Math.floor(rows.stream().flatMap(row -> row.dark.stream()
                .map(span -> row.hour(span.start()))).min(Double::compare).orElse(6.0));
        this.toHour = Math.max(fromHour + 1, Math.ceil(rows.stream().flatMap(row -> row.dark.stream()
                .map(span -> row.hour(span.endExclusive()))).max(Double::compare).orElse(18.0)));
        this.mostWorth = rows.stream().mapToDouble(row -> row.night.score()).max().orElse(0);
        this.svg = new Drawing(Drawing.Unit.PX, WIDTH, TOP + height + FOOT, LETTER, title(),
                "Hours across, nights down: grey where it is dark, black where it is moonless too.");
    }

    /** The drawing of a ranking. */
    static String of(NightsReport report, String made) {
        return new NightYear(report).drawn(made);
    }

    private String title() {
        List<String> sites = report.all().stream().map(row -> row.site.name()).distinct().toList();
        return "Nights " + first + " to " + rows.get(rows.size() - 1).night().night() + ", "
                + (sites.size() > MOST_SITES ? "the best of " + sites.size() + " sites"
                : String.join(" or ", sites));
    }

    private String drawn(String made) {
        svg.label(LEFT, 20, title(), "class", "bold");
        hours();
        rows.forEach(this::night);
        report.stays().forEach(this::stay);
        ranks();
        for (int i = 0; i < rows.size(); i++) {
            if (rowHeight >= ROW_WITH_DATE || turns(i)) {
                moon(MOON_LEFT, top(rows.get(i)) + rowHeight / 2, i);
            }
        }
        legend();
        return svg.finished(LEFT, made);
    }

    private long day(Row row) {
        return ChronoUnit.DAYS.between(first, row.night().night());
    }

    private double top(Row row) {
        return TOP + day(row) * rowHeight;
    }

    private double x(double hour) {
        return LEFT + HOURS_WIDTH * (Math.max(fromHour, Math.min(toHour, hour)) - fromHour)
                / (toHour - fromHour);
    }

    private void hours() {
        String zones = String.join(", ", report.all().stream().map(row -> row.site.zone().getId())
                .distinct().toList());
        svg.label(LEFT, 36, "hours by the clocks (" + zones + ")");
        svg.label(WORTH_LEFT, 36, "worth");
        svg.empty("rect", "x", LEFT, "y", TOP, "width", HOURS_WIDTH, "height", height, "class", "sheet");
        for (int hour = (int) fromHour; hour <= toHour; hour++) {
            svg.empty("path", "d", "M" + Markup.number(x(hour)) + " " + (TOP - 4) + "v"
                    + Markup.number(height + 4), "class", "grid", "stroke-width", "0.5");
            svg.label(x(hour), TOP - 8, String.format(Locale.ROOT, "%02d", (hour + 12) % 24), "class",
                    "middle");
        }
    }

    private void night(Row row) {
        svg.open("g");
        svg.words("title", Wording.date(row.night.night()) + ", " + row.night.site() + ": "
                + row.night.reason());
        row.dark.forEach(span -> span(row, span, "dark"));
        row.moonless.forEach(span -> span(row, span, "ink"));
        double worth = mostWorth > 0 ? row.night.score() / mostWorth : 0;
        svg.empty("rect", "x", WORTH_LEFT, "y", top(row) + rowHeight * 0.15, "width", WORTH_WIDTH * worth,
                "height", rowHeight * 0.7, "class", "entry");
        boolean month = row.night.night().getDayOfMonth() == 1;
        if (rowHeight >= ROW_WITH_DATE) {
            svg.label(LEFT - 8, top(row) + rowHeight / 2 + 4, DAY.format(row.night.night()), "class", "end");
        } else if (month || row == rows.get(0) && row.night.night().getDayOfMonth() <= 20) {
            svg.empty("path", "d", "M" + (LEFT - 8) + " " + Markup.number(top(row)) + "h"
                    + Markup.number(HOURS_WIDTH + 8), "class", "grid", "stroke-width", "0.5");
            svg.label(LEFT - 10, top(row) + LETTER, MONTH.format(row.night.night()), "class", "end");
        }
        svg.close("g");
    }

    private void span(Row row, Interval span, String style) {
        double left = x(row.hour(span.start()));
        svg.empty("rect", "x", left, "y", top(row), "width",
                Math.max(0, x(row.hour(span.endExclusive())) - left), "height", rowHeight * 0.92, "class",
                style);
    }

    private void stay(NightsReport.StayRow stay) {
        double top = TOP + ChronoUnit.DAYS.between(first, stay.from()) * rowHeight;
        svg.open("g").words("title", "stay " + stay.from() + " to " + stay.to() + ", " + stay.site());
        svg.empty("rect", "x", LEFT - 3, "y", top - 1, "width", HOURS_WIDTH + 6, "height",
                (ChronoUnit.DAYS.between(stay.from(), stay.to()) + 1) * rowHeight + 2, "class", "stay",
                "stroke-width", 2);
        svg.close("g");
    }

    /** Ranks of the best stays, else nights, as far as they stand clear of each other. */
    private void ranks() {
        List<Double> taken = new ArrayList<>();
        int rank = 0;
        List<Double> tops = report.stays().isEmpty() ? report.all().stream()
                .filter(row -> byDate.get(row.night.night()) == row).limit(MOST_RANKS)
                .map(row -> top(row) + rowHeight / 2).toList()
                : report.stays().stream().map(stay -> TOP + rowHeight * ChronoUnit.DAYS.between(first,
                        stay.from()) + LETTER / 2).toList();
        for (double y : tops) {
            rank++;
            if (taken.stream().allMatch(other -> Math.abs(other - y) >= LETTER)) {
                taken.add(y);
                svg.label(WORTH_LEFT + WORTH_WIDTH + 6, y + 4, (report.stays().isEmpty() ? "no. " : "stay ")
                        + rank, "class", "bold");
            }
        }
    }

    /** Whether the Moon is nearest to new, full or half on a night. */
    private boolean turns(int i) {
        if (i == 0 || i == rows.size() - 1) {
            return false;
        }
        double before = rows.get(i - 1).lit();
        double lit = rows.get(i).lit();
        double after = rows.get(i + 1).lit();
        boolean half = (lit - 0.5) * (after - 0.5) <= 0 && Math.abs(lit - 0.5) <= Math.abs(after - 0.5)
                || (before - 0.5) * (lit - 0.5) < 0 && Math.abs(lit - 0.5) < Math.abs(before - 0.5);
        return lit < before && lit <= after || lit > before && lit >= after || half;
    }

    /** The Moon as it stands in the sky: waxing lit on the right in the north, on the left in the south. */
    private void moon(double x, double y, int i) {
        double lit = rows.get(i).lit();
        boolean waxing = i + 1 < rows.size() ? rows.get(i + 1).lit() > lit
                : i > 0 && rows.get(i - 1).lit() < lit;
        boolean right = waxing == rows.get(i).site.latitude().degrees() >= 0;
        svg.empty("circle", "cx", x, "cy", y, "r", MOON_RADIUS, "class", "night");
        svg.empty("path", "d", "M0 " + -MOON_RADIUS + "A" + MOON_RADIUS + " " + MOON_RADIUS + " 0 0 1 0 "
                + MOON_RADIUS + "A" + Markup.number(MOON_RADIUS * Math.abs(1 - 2 * lit)) + " " + MOON_RADIUS
                + " 0 0 " + (lit > 0.5 ? 1 : 0) + " 0 " + -MOON_RADIUS + "Z", "class", "lit", "transform",
                "translate(" + Markup.number(x) + " " + Markup.number(y) + ") scale(" + (right ? 1 : -1)
                + " 1)");
    }

    private void legend() {
        double y = TOP + height + 24;
        swatch(LEFT, y, "dark", "dark: Sun below −18°");
        swatch(LEFT + 170, y, "ink", "and the Moon down");
        swatch(LEFT + 330, y, "entry", "worth; the longest is " + Wording.number(mostWorth, 2));
        if (!report.stays().isEmpty()) {
            swatch(LEFT + 530, y, "stay", "best stays");
        }
        svg.label(LEFT, y + 20, "Moon on the right: as it stands in the sky, waxing or waning"
                + (rowHeight >= ROW_WITH_DATE ? "" : "; new, half and full"));
    }

    private void swatch(double x, double y, String style, String words) {
        svg.empty("rect", "x", x, "y", y - 9, "width", 14, "height", 10, "class", style, "stroke-width", 2);
        svg.label(x + 20, y, words);
    }
}
