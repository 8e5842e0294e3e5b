package gloam.cli;

import gloam.ephemeris.Star;
import gloam.gear.FNumbers;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.report.OutputFormat;
import gloam.store.Nearest;
import gloam.trail.Framing;
import gloam.units.BadInput;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;

/** Turns the text of options into values. */
final class Converters {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern DURATION =
            Pattern.compile("(?:(\\d+(?:\\.\\d+)?)h)?(?:(\\d+(?:\\.\\d+)?)m)?(?:(\\d+(?:\\.\\d+)?)s)?");
    /** Years of four digits only, so that no date is beyond what clocks can reckon. */
    private static final DateTimeFormatter DATE = new DateTimeFormatterBuilder().appendValue(ChronoField.YEAR, 4)
            .appendPattern("-MM-dd").toFormatter(Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern FRAME = Pattern.compile("([\\d.]+)\\s*[xX×]\\s*([\\d.]+)");

    private Converters() {
    }

    /** Makes a command line and its commands use these. */
    static void register(CommandLine commandLine) {
        commandLine.registerConverter(Double.class, new Reading<>(Converters::number))
                .registerConverter(Duration.class, new Reading<>(Converters::duration))
                .registerConverter(LocalDate.class, new Reading<>(Converters::date))
                .registerConverter(ZoneId.class, new Reading<>(Converters::zone))
                .registerConverter(Moment.class, new Reading<>(Moment::parse))
                .registerConverter(PastOpening.class, new Reading<>(PastOpening::parse))
                .registerConverter(Frame.class, new Reading<>(Converters::frame))
                .registerConverter(Framing.Point.class, new Reading<>(Converters::point))
                .registerConverter(Projection.class, new Reading<>(Converters::projection))
                .registerConverter(Star.class, new Reading<>(Converters::star))
                .registerConverter(OutputFormat.class, new Reading<>(OutputFormat::named));
    }

    /**
     * Reads text by a function. A lambda in its place would keep picocli's old class files out of the class-data
     * archive.
     */
    private record Reading<T>(Function<String, T> function) implements ITypeConverter<T> {

        @Override
        public T convert(String text) {
            return function.apply(text);
        }
    }

    /** A plain decimal number. */
    static double number(String text) {
        if (!NUMBER.matcher(text.strip()).matches()) {
            throw new BadInput("expected a number, found \"" + text + "\"");
        }
        return Double.parseDouble(text.strip());
    }

    /** A length of time such as 30s, 18m, 1h50m or PT18M, more than nothing. */
    static Duration duration(String text) {
        Duration duration = text.toUpperCase(Locale.ROOT).startsWith("P") ? iso(text) : inParts(text);
        if (duration.isZero() || duration.isNegative() || duration.compareTo(Duration.ofDays(10)) > 0) {
            throw new BadInput("duration " + text + " is outside 1 ms … 240 h");
        }
        return duration;
    }

    private static Duration iso(String text) {
        try {
            return Duration.parse(text);
        } catch (DateTimeParseException strange) {
            throw notADuration(text);
        }
    }

    private static Duration inParts(String text) {
        Matcher parts = DURATION.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (text.isBlank() || !parts.matches()) {
            throw notADuration(text);
        }
        double seconds = part(parts.group(1)) * 3600 + part(parts.group(2)) * 60 + part(parts.group(3));
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static double part(String digits) {
        return digits == null ? 0 : Double.parseDouble(digits);
    }

    private static BadInput notADuration(String text) {
        return new BadInput("expected a duration such as 30s, 18m, 1h50m or PT18M, found \"" + text + "\"");
    }

    /** A date such as 2027-02-06. */
    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text, DATE);
        } catch (DateTimeParseException strange) {
            throw new BadInput("expected a date such as 2027-02-06, found \"" + text + "\"");
        }
    }

    /** A zone such as Europe/Madrid or +01:00. */
    static ZoneId zone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException unknown) {
            throw new BadInput("zone \"" + text + "\" is unknown; " + Nearest.to(text, ZoneId.getAvailableZoneIds())
                    .map(near -> "did you mean " + near + "?").orElse("give a name such as Europe/Madrid or UTC"));
        }
    }

    /** A frame such as 80x80 in mm. */
    static Frame frame(String text) {
        Matcher sides = FRAME.matcher(text.strip());
        if (!sides.matches()) {
            throw new BadInput("expected width and height in mm such as 80x80, found \"" + text + "\"");
        }
        return new Frame(number(sides.group(1)), number(sides.group(2)));
    }

    /** A place on the sheet such as 10,-25 in mm. */
    static Framing.Point point(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2) {
            throw new BadInput("expected mm to the right and up such as 10,-25, found \"" + text + "\"");
        }
        return new Framing.Point(number(parts[0]), number(parts[1]));
    }

    /** A projection by its name. */
    static Projection projection(String text) {
        List<String> names = Arrays.stream(Projection.values())
                .map(known -> known.name().toLowerCase(Locale.ROOT)).toList();
        if (!names.contains(text.toLowerCase(Locale.ROOT))) {
            throw new BadInput("projection \"" + text + "\" is unknown; " + Nearest.to(text, names)
                    .map(near -> "did you mean " + near + "?").orElse("it is one of " + String.join(", ", names)));
        }
        return Projection.valueOf(text.toUpperCase(Locale.ROOT));
    }

    /**
     * A star as right ascension and declination in degrees, if wanted with its proper motion in mas a year and its
     * parallax in mas.
     */
    static Star star(String text) {
        List<String> parts = Arrays.asList(text.split(",", -1));
        if (parts.size() != 2 && parts.size() != 4 && parts.size() != 5) {
            throw new BadInput("expected RA,DEC, RA,DEC,PMRA,PMDEC or RA,DEC,PMRA,PMDEC,PARALLAX, found \"" + text + "\"");
        }
        List<Double> numbers = parts.stream().map(Converters::number).toList();
        boolean moves = numbers.size() == 4;
        return new Star(text, numbers.get(0), numbers.get(1), moves ? numbers.get(2) : 0, moves ? numbers.get(3) : 0,
                numbers.size() == 5 ? numbers.get(4) : 0, Double.NaN, Double.NaN);
    }

    /** The transmittance of a lens by an f-number and the T-number there, such as 11/12.3. */
    static final class TStop implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            String[] parts = text.split("/", -1);
            if (parts.length != 2) {
                throw new BadInput("expected an f-number and its T-number such as 11/12.3, found \"" + text + "\"");
            }
            return Lens.transmittanceOf(FNumbers.exact(Lens.F_NUMBER.check(number(parts[0]))),
                    FNumbers.exact(Lens.T_NUMBER.check(number(parts[1]))));
        }
    }

    /** An f-number such as 12 or f/12; a marking stands for its exact value. */
    static final class FNumber implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            double number = number(text.strip().toLowerCase(Locale.ROOT).replaceFirst("^f/?", ""));
            return FNumbers.exact(Lens.F_NUMBER.check(number));
        }
    }
}
