package gloam.view;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A range of nights drawn as a calendar, a row a week: how long it is dark, how much of that is moonless, how
 * much of the Moon is lit, and the rank; of several sites the best of each night.
 */
final class NightCalendar {

    private static final double CELL_WIDTH = 140;
    private static final double CELL_HEIGHT = 92;
    private static final double HEAD = 30;
    private static final double FULL_HOURS = 16;
    private static final double BAR = 120;
    private static final int DAYS = 7;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final Markup svg = new Markup();
    private final Map<LocalDate, Ranked> byDate = new TreeMap<>();

    /** A night and its place among the dates, from 1. */
    private record Ranked(int rank, NightRow night) {
    }

    private NightCalendar(List<NightRow> bestFirst) {
        for (NightRow night : bestFirst) {
            byDate.putIfAbsent(night.night(), new Ranked(byDate.size() + 1, night));
        }
    }

    /** The calendar of a ranking. */
    static String of(NightsReport report) {
        return new NightCalendar(report.all()).drawn();
    }

    private String drawn() {
        LocalDate first = byDate.keySet().iterator().next().with(DayOfWeek.MONDAY);
        LocalDate last = byDate.keySet().stream().reduce(first, (some, later) -> later);
        long weeks = ChronoUnit.WEEKS.between(first, last) + 1;
        for (int day = 0; day < DAYS; day++) {
            svg.label(day * CELL_WIDTH + 10, 20, Wording.date(first.plusDays(day)).substring(0, 3));
        }
        byDate.forEach((date, ranked) -> cell(ranked, ChronoUnit.DAYS.between(first, date)));
        Drawing calendar = new Drawing(DAYS * CELL_WIDTH, HEAD + weeks * CELL_HEIGHT, 13,
                "Nights: dark hours (grey), moonless ones (black), lit part of the Moon, rank", "");
        calendar.add(svg.toString());
        return calendar.finished();
    }

    private void cell(Ranked ranked, long day) {
        NightRow night = ranked.night;
        double x = day % DAYS * CELL_WIDTH;
        double y = HEAD + day / DAYS * CELL_HEIGHT;
        svg.open("g");
        svg.words("title", night.night() + " " + night.site() + ": " + night.reason());
        svg.empty("rect", "x", x + 2, "y", y + 2, "width", CELL_WIDTH - 4, "height", CELL_HEIGHT - 4,
                "class", "box",
                "stroke-width", ranked.rank == 1 ? "2.5" : "0.5");
        svg.label(x + 10, y + 20, DAY.format(night.night()));
        svg.label(x + 62, y + 20, "no. " + ranked.rank, "class", "bold");
        moon(x + 122, y + 16, night.moon().illuminatedFraction().orElseThrow());
        bar(x + 10, y + 30, night.darkHours(), "dark");
        bar(x + 10, y + 30, night.moonlessDarkHours(), "ink");
        svg.label(x + 10, y + 62, Wording.number(night.darkHours(), 1) + " h dark,");
        svg.label(x + 10, y + 79, Wording.number(night.moonlessDarkHours(), 1) + " h moonless");
        svg.close("g");
    }

    /** A disc whose pale part grows from below with the lit part of the Moon. */
    private void moon(double x, double y, double lit) {
        double radius = 9;
        double depth = radius - 2 * radius * lit;
        double half = Math.sqrt(Math.max(0, radius * radius - depth * depth));
        svg.empty("circle", "cx", x, "cy", y, "r", radius, "class", "night");
        svg.empty("path", "d", "M" + Markup.number(x - half) + " " + Markup.number(y + depth) + "A" + radius
                + " " + radius
                + " 0 " + (lit > 0.5 ? 1 : 0) + " 0 " + Markup.number(x + half) + " "
                + Markup.number(y + depth) + "Z", "class", "lit");
    }

    private void bar(double x, double y, double hours, String style) {
        svg.empty("rect", "x", x, "y", y, "width", BAR * Math.min(1, hours / FULL_HOURS), "height", 12,
                "class", style);
    }
}
