package gloam.cli;

import gloam.units.BadInput;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A moment as an option gives it: with an offset or a zone, or by the clocks at the site.
 *
 * @param local date and time of day, of 24 hours
 * @param zone  whose clocks show it, where that was said
 */
record Moment(LocalDateTime local, Optional<ZoneId> zone) {

    /** ISO 8601 with years of four digits; seconds and offset may be left out. */
    private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
            .appendValue(ChronoField.YEAR, 4)
            .appendPattern("-MM-dd'T'HH:mm[:ss[.SSS][.SS][.S]][XXX][X]").toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern ZONED = Pattern.compile("(.*\\d)(?: *\\[([^\\]]+)\\]| +([A-Za-z][^ ]*))");
    private static final Pattern TWELVE_HOURS =
            Pattern.compile("(?i)(.*?)(\\d{1,2})([:.]\\d\\d)?(:\\d\\d)? ?([ap])\\.?m\\.?");
    private static final Pattern ONE_DIGIT = Pattern.compile("(.*[T ])(\\d:.*)");

    /**
     * The moment of a text such as 2027-02-06T22:30, 2027-02-06T21:30:00Z or 2027-02-06 22:30 Europe/Madrid;
     * a blank may stand for the T.
     */
    static Moment parse(String text) {
        String stripped = text.strip();
        refuseHalfDays(stripped);
        Matcher zoned = ZONED.matcher(stripped);
        Optional<ZoneId> named = zoned.matches() ? Optional.of(Converters.zone(
                Optional.ofNullable(zoned.group(2)).orElseGet(() -> zoned.group(3)))) : Optional.empty();
        try {
            TemporalAccessor parsed =
                    FORM.parse((zoned.matches() ? zoned.group(1) : stripped).replace(' ', 'T'));
            Optional<ZoneId> offset = Optional.ofNullable(parsed.query(TemporalQueries.offset()));
            if (named.isPresent() && offset.isPresent()) {
                throw new BadInput("\"" + text + "\" gives an offset and a zone. Give one of the two");
            }
            return new Moment(LocalDateTime.from(parsed), named.or(() -> offset));
        } catch (DateTimeException strange) {
            throw unreadable(text);
        }
    }

    /**
     * The instant meant at a site whose clocks keep that zone.
     *
     * @throws BadInput when those clocks skip that time or show it twice
     */
    Instant in(ZoneId site) {
        ZoneId clocks = zone.orElse(site);
        List<ZoneOffset> offsets = clocks.getRules().getValidOffsets(local);
        if (offsets.size() != 1) {
            throw atChange(clocks, clocks.getRules().getTransition(local));
        }
        return local.toInstant(offsets.get(0));
    }

    private BadInput atChange(ZoneId clocks, ZoneOffsetTransition change) {
        boolean day = change.isGap() && change.getDuration().compareTo(Duration.ofDays(1)) >= 0;
        return new BadInput(change.isGap()
                ? local + " does not exist in " + clocks + ": the clocks " + (day ? "skip that day"
                        : "go from " + change.getDateTimeBefore().toLocalTime() + " on to "
                        + change.getDateTimeAfter().toLocalTime()) + ". Give a time before or after that"
                : local + " comes twice in " + clocks + ": the clocks go back from "
                        + change.getDateTimeBefore().toLocalTime() + " to " + change.getDateTimeAfter()
                        .toLocalTime()
                        + ". Give " + local + change.getOffsetBefore() + " for the first time or " + local
                        + change.getOffsetAfter() + " for the second");
    }

    /** Nine may be morning or evening, and what 12 a.m. is nobody agrees on: days have 24 hours here. */
    private static void refuseHalfDays(String text) {
        Matcher half = TWELVE_HOURS.matcher(text);
        if (half.matches()) {
            int hour = Integer.parseInt(half.group(2));
            boolean evening = half.group(5).equalsIgnoreCase("p");
            throw new BadInput("\"" + text + "\" is 12-hour time; use 24-hour time" + (hour > 11 ? ""
                    : String.format(Locale.ROOT, ", %02d%s", evening ? hour + 12 : hour,
                            Optional.ofNullable(half.group(3)).orElse(":00").replace('.', ':'))));
        }
    }

    private static BadInput unreadable(String text) {
        Matcher oneDigit = ONE_DIGIT.matcher(text.strip());
        return new BadInput("expected a moment such as 2027-02-06T22:30 by the clocks at the site, "
                + "2027-02-06T21:30Z or "
                + "2027-02-06T22:30+01:00, found \"" + text + "\"" + (oneDigit.matches()
                ? ". Write the hour with two digits of 24, " + oneDigit.group(1) + "0" + oneDigit.group(2)
                : ""));
    }
}
