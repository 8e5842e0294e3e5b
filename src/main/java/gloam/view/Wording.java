package gloam.view;

import gloam.exposure.Exposure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How reports put times, angles and amounts into text. */
final class Wording {

    private static final String MINUS = "\u2212";
    private static final List<String> COMPASS = List.of("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
            "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW");

    /** Less than this, in lx or cd/m², is nothing beside the darkest sky. */
    private static final double LEAST_LIGHT = 1e-7;

    private static final double LEAST_PLAIN = 1e-4;

    private static final double SHORTEST_S = 1e-3;

    private Wording() {
    }

    /** A number with so many decimals. */
    static String number(double value, int decimals) {
        String size = Double.isFinite(value)
                ? BigDecimal.valueOf(Math.abs(value)).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
                : String.valueOf(Math.abs(value));
        return value < 0 && !isZero(size) ? MINUS + size : size;
    }

    /** A number where there is one, else other words. */
    static String number(OptionalDouble value, int decimals, String otherwise) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : otherwise;
    }

    /** A number with its sign and so many decimals, zero without. */
    static String signed(double value, int decimals) {
        String text = number(value, decimals);
        return text.startsWith(MINUS) || isZero(text) ? text : "+" + text;
    }

    private static boolean isZero(String number) {
        return number.matches("0(\\.0*)?");
    }

    /** A distance in km in nine digits, none of them a fraction. */
    static String kilometres(double km) {
        return number(BigDecimal.valueOf(km).round(new MathContext(9, RoundingMode.HALF_EVEN)).doubleValue(),
                0);
    }

    /** An f-number such as f/11. */
    static String fNumber(double fNumber) {
        return "f/" + plain(fNumber);
    }

    /** A number without needless zeros, at most three decimals. */
    static String plain(double value) {
        return number(value, 3).replaceFirst("\\.?0+$", "");
    }

    /** So many things, such as 1 star or 12 stars. */
    static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    /** A share of 0 to 1 in whole per cent. */
    static String percent(double share) {
        return number(100 * share, 0) + " %";
    }

    /** A tone in stops from the mid-tone and its spread, such as +1.0 ± 0.6. */
    static String tone(double stops, double spreadStops) {
        return signed(stops, 1) + " ± " + number(spreadStops, 1);
    }

    /** Yes or no. */
    static String yes(boolean so) {
        return so ? "yes" : "no";
    }

    /** What a lens is focused at, in m or at infinity. */
    static String focus(OptionalDouble metres) {
        return metres.isPresent() ? plain(metres.getAsDouble()) + " m" : "infinity";
    }

    /** The size of something flat in mm. */
    static String size(double widthMm, double heightMm) {
        return plain(widthMm) + " × " + plain(heightMm) + " mm";
    }

    /** A word capitalized. */
    static String title(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    /** A name in the sky as it heads a row: stars keep their Greek letters small. */
    static String skyName(boolean star, String name) {
        return star ? name : title(name);
    }

    /** A date with its day of the week. */
    static String date(LocalDate date) {
        return NightTimes.date(date);
    }

    /** A time to the second. */
    static String second(OffsetDateTime at) {
        OffsetDateTime nearest = at.plusNanos(500_000_000);
        return clock(nearest) + ":" + twoPlaces(nearest.getSecond());
    }

    /** The date of a time to the second. */
    static LocalDate secondDate(OffsetDateTime at) {
        return at.plusNanos(500_000_000).toLocalDate();
    }

    /** How far the clocks are from UTC, such as UTC+01:00. */
    static String offset(OffsetDateTime at) {
        return at.getOffset().getTotalSeconds() == 0 ? "UTC" : "UTC" + at.getOffset().getId();
    }

    /** A time to the nearest minute. */
    static String minute(OffsetDateTime at) {
        return clock(at.plusSeconds(30));
    }

    /** The first whole minute at or after a time. */
    static String minuteAfter(OffsetDateTime at) {
        OffsetDateTime whole = at.truncatedTo(ChronoUnit.MINUTES);
        return clock(whole.equals(at) ? whole : whole.plusMinutes(1));
    }

    /** The last whole minute at or before a time. */
    static String minuteBefore(OffsetDateTime at) {
        return clock(at);
    }

    private static String clock(OffsetDateTime at) {
        return twoPlaces(at.getHour()) + ":" + twoPlaces(at.getMinute());
    }

    private static String twoPlaces(int number) {
        return number < 10 ? "0" + number : String.valueOf(number);
    }

    /** A direction in degrees to 0.1°, from 0.0 to 359.9. */
    static String direction(double deg) {
        String text = number(deg, 1);
        return text.equals("360.0") ? "0.0" : text;
    }

    /** A bearing such as WNW for an azimuth. */
    static String bearing(double azimuthDeg) {
        return COMPASS.get((int) Math.round(azimuthDeg / 22.5) % 16);
    }

    /**
     * An exposure time in s, 0 to infinity, in two digits that people can set: 45 s, 5 min 50 s, 18 min,
     * 1 h 50 min, 14 h, 12 d; what no shutter does or no one waits for by its bound alone.
     */
    static String exposure(double seconds) {
        if (seconds > Exposure.LONGEST_S) {
            return "more than a year";
        }
        if (seconds < SHORTEST_S) {
            return seconds > 0 ? "under 1 ms" : "0 s";
        }
        if (seconds < 99.5) {
            return twoDigits(seconds).toPlainString() + " s";
        }
        if (seconds < 600) {
            return parts(twoDigits(seconds).intValue(), 60, "min", "s");
        }
        if (seconds < 36_000) {
            return parts(twoDigits(seconds / 60).intValue(), 60, "h", "min");
        }
        double hours = seconds / 3600;
        return hours < 99.5 ? twoDigits(hours).toPlainString() + " h"
                : twoDigits(hours / 24).toPlainString() + " d";
    }

    /** A length of time to the second, such as 1 h 50 min; less than ten seconds to the millisecond. */
    static String lasting(double seconds) {
        if (seconds < 10) {
            return plain(seconds) + " s";
        }
        long whole = Math.round(seconds);
        return Stream.of(whole / 3600 + " h", whole / 60 % 60 + " min", whole % 60 + " s")
                .filter(part -> !part.startsWith("0 ")).collect(Collectors.joining(" "));
    }

    /** Hours and minutes such as 9 h 05 min. */
    static String hours(double hours) {
        long minutes = Math.round(hours * 60);
        return String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }

    /** An illuminance in lx or a luminance in cd/m² in two digits. */
    static String light(double light) {
        if (light < LEAST_LIGHT) {
            return "0";
        }
        return light < LEAST_PLAIN ? String.format(Locale.ROOT, "%.1e", light) : twoDigits(light)
                .toPlainString();
    }

    private static String parts(int amount, int inOne, String large, String small) {
        if (amount < inOne) {
            return amount + " " + small;
        }
        String rest = amount % inOne == 0 ? "" : " " + amount % inOne + " " + small;
        return amount / inOne + " " + large + rest;
    }

    private static BigDecimal twoDigits(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(2, RoundingMode.HALF_EVEN));
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
