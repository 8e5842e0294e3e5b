package gloam.planner;

import gloam.units.BadInput;
import gloam.units.Nearest;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Evenings on which one is free: those of some days of the week, and some by their dates.
 *
 * @param days  the days of the week
 * @param dates the dates beside
 */
public record Evenings(Set<DayOfWeek> days, Set<LocalDate> dates) {

    /** Every evening. */
    public static final Evenings ALL = new Evenings(EnumSet.allOf(DayOfWeek.class), Set.of());

    private static final String WEEKENDS = "weekends";
    private static final Set<DayOfWeek> BEFORE_FREE_DAYS = EnumSet.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY);

    /** Copies the sets. */
    public Evenings {
        days = Set.copyOf(days);
        dates = Set.copyOf(dates);
    }

    /**
     * The evenings of a word: {@code weekends}, those of Friday and Saturday; a day such as {@code fri}; or a
     * date.
     *
     * @throws BadInput when it is none of these
     */
    public static Evenings of(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        if (wanted.equals(WEEKENDS)) {
            return new Evenings(BEFORE_FREE_DAYS, Set.of());
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            if (wanted.equals(word(day))) {
                return new Evenings(EnumSet.of(day), Set.of());
            }
        }
        try {
            return new Evenings(Set.of(), Set.of(LocalDate.parse(wanted)));
        } catch (DateTimeParseException none) {
            throw new BadInput("expected weekends, a day such as fri, or a date such as 2027-02-12, found \""
                    + word + "\"" + Nearest.sentence(word, words()).map(". "::concat).orElse(""));
        }
    }

    /** Those and others. */
    public Evenings and(Evenings others) {
        Set<DayOfWeek> bothDays = new TreeSet<>(days);
        Set<LocalDate> bothDates = new TreeSet<>(dates);
        bothDays.addAll(others.days);
        bothDates.addAll(others.dates);
        return new Evenings(bothDays, bothDates);
    }

    /** Whether the evening of a date is among them. */
    public boolean hold(LocalDate date) {
        return days.contains(date.getDayOfWeek()) || dates.contains(date);
    }

    /**
     * Those of some dates that are among them, in their order.
     *
     * @throws BadInput when none is
     */
    public List<LocalDate> among(List<LocalDate> some) {
        List<LocalDate> among = some.stream().filter(this::hold).toList();
        if (among.isEmpty()) {
            throw new BadInput("none of the nights from " + some.get(0) + " to " + some.get(some.size() - 1)
                    + " is one of the evenings " + this + "; give others");
        }
        return among;
    }

    /** As written: {@code weekends}, or days and dates in order; {@code all} of every evening. */
    @Override
    public String toString() {
        String named = days.equals(ALL.days) ? "all" : days.equals(BEFORE_FREE_DAYS) ? WEEKENDS
                : days.stream().sorted().map(Evenings::word).collect(Collectors.joining(", "));
        List<String> parts = new ArrayList<>(named.isEmpty() ? List.of() : List.of(named));
        dates.stream().sorted().map(LocalDate::toString).forEach(parts::add);
        return String.join(", ", parts);
    }

    private static String word(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH).toLowerCase(Locale.ROOT);
    }

    private static List<String> words() {
        List<String> words = new ArrayList<>(List.of(WEEKENDS));
        Arrays.stream(DayOfWeek.values()).map(Evenings::word).forEach(words::add);
        return words;
    }
}
