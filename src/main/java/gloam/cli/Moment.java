package gloam.cli;

import gloam.units.BadInput;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A moment as an option gives it: with an offset, or by the clocks at the site.
 *
 * @param local  date and time of day
 * @param offset how far that is from UTC, where it was said
 */
record Moment(LocalDateTime local, Optional<ZoneOffset> offset) {

    /** ISO 8601 with years of four digits; seconds and offset may be left out. */
    private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder().appendValue(ChronoField.YEAR, 4)
            .appendPattern("-MM-dd'T'HH:mm[:ss[.SSS][.SS][.S]][XXX][X]").toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    /** The moment of a text such as 2027-02-06T22:30 or 2027-02-06T21:30:00Z; a blank may stand for the T. */
    static Moment parse(String text) {
        try {
            TemporalAccessor parsed = FORM.parseBest(text.strip().replace(' ', 'T'),
                    OffsetDateTime::from, LocalDateTime::from);
            return parsed instanceof OffsetDateTime moment
                    ? new Moment(moment.toLocalDateTime(), Optional.of(moment.getOffset()))
                    : new Moment(LocalDateTime.from(parsed), Optional.empty());
        } catch (DateTimeException strange) {
            throw new BadInput("expected a moment such as 2027-02-06T22:30 or 2027-02-06T21:30:00Z, found \"" + text
                    + "\"");
        }
    }

    /**
     * The instant meant at a site whose clocks keep that zone.
     *
     * @throws BadInput when those clocks skip that time or show it twice
     */
    Instant in(ZoneId zone) {
        if (offset.isPresent()) {
            return local.toInstant(offset.get());
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.size() != 1) {
            throw new BadInput(local + (offsets.isEmpty() ? " does not exist in " : " comes twice in ") + zone
                    + ", where the clocks change then; add the offset, such as " + local
                    + zone.getRules().getTransition(local).getOffsetBefore());
        }
        return local.toInstant(offsets.get(0));
    }
}
