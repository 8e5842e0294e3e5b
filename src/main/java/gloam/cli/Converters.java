package gloam.cli;

import gloam.ephemeris.Star;
import gloam.film.FilmStock;
import gloam.gear.Coordinates;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.units.Nearest;
import gloam.view.OutputFormat;
import gloam.store.FileName;
import gloam.store.Input;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Label;
import gloam.units.Quantity;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;

/** Turns the text of options into values. */
final class Converters {

    /** Years of four digits only, so that every date can be computed with. */
    private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d\\d)-(\\d\\d)");

    private Converters() {
    }

    /** What reads an option's text as a value of a type; empty where picocli's own converter does. */
    static Optional<ITypeConverter<?>> of(Class<?> type) {
        Function<String, ?> reading = type == Double.class ? Quantity::number
                : type == Quantity.class ? Quantity::new
                : type == Duration.class ? Quantity::duration
                : type == Coordinates.class ? Coordinates::of
                : type == LocalDate.class ? Converters::date
                : type == ZoneId.class ? Converters::zone
                : type == Moment.class ? Moment::parse
                : type == TimedOpening.class ? TimedOpening::parse
                : type == Frame.class ? Frame::of
                : type == Framing.Point.class ? Converters::point
                : type == Projection.class ? Converters::projection
                : type == FilmStock.Kind.class ? Converters::filmKind
                : type == Star.class ? Star::parse
                : type == Path.class ? FileName::path
                : type == Input.class ? Input::of
                : type == OutputFormat.class ? OutputFormat::named : null;
        return reading == null ? Optional.empty() : Optional.of(new Reading<>(reading));
    }

    /** The value of a type that picocli reads from the command line by itself, from text of elsewhere. */
    static Object plain(Class<?> type, String text) {
        if (type == Boolean.class) {
            return yes(text);
        }
        try {
            return type == Path.class ? Path.of(text) : type == Integer.class ? (Object) Integer.valueOf(text)
                    : text;
        } catch (InvalidPathException strange) {
            throw new BadInput("expected the name of a file, found \"" + text + "\"");
        } catch (NumberFormatException wrong) {
            throw new BadInput("expected a whole number, found \"" + text + "\"");
        }
    }

    private static boolean yes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y" -> true;
            case "no", "n" -> false;
            default -> throw new BadInput("expected yes or no, found \"" + text + "\"");
        };
    }

    /**
     * Reads text by a function. A lambda in its place would keep picocli's old class files out of the
     * class-data archive.
     */
    private record Reading<T>(Function<String, T> function) implements ITypeConverter<T> {

        @Override
        public T convert(String text) {
            return function.apply(text);
        }
    }

    /** A date such as 2027-02-06. */
    static LocalDate date(String text) {
        Matcher date = DATE.matcher(text);
        if (!date.matches()) {
            throw noDate(text);
        }
        try {
            return LocalDate.of(Integer.parseInt(date.group(1)), Integer.parseInt(date.group(2)),
                    Integer.parseInt(date.group(3)));
        } catch (DateTimeException noSuchDay) {
            throw noDate(text);
        }
    }

    private static BadInput noDate(String text) {
        return new BadInput("expected a date such as 2027-02-06, found \"" + text + "\"");
    }

    /** A zone such as Europe/Madrid or +01:00. */
    static ZoneId zone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException unknown) {
            throw new BadInput("zone \"" + text + "\" is unknown; "
                    + Nearest.question(text, ZoneId.getAvailableZoneIds())
                    .orElse("give a name such as Europe/Madrid or UTC"));
        }
    }

    /** A place on the sheet such as 10,-25 in mm. */
    static Framing.Point point(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2) {
            throw new BadInput("expected mm to the right and up such as 10,-25, found \"" + text + "\"");
        }
        return new Framing.Point(Quantity.number(parts[0]), Quantity.number(parts[1]));
    }

    /** A projection by its name. */
    static Projection projection(String text) {
        List<Projection> known = List.of(Projection.values());
        List<String> names = Label.all(known);
        return Label.named(text, known)
                .orElseThrow(() -> new BadInput("projection \"" + text + "\" is unknown; "
                + Nearest.question(text, names).orElse("it is one of " + String.join(", ", names))));
    }

    private static FilmStock.Kind filmKind(String text) {
        return OutcomeOptions.constant(text, FilmStock.Kind.values());
    }

    /** The transmittance of a lens by an f-number and the T-number there, such as 11/12.3. */
    static final class TStop implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            String[] parts = text.split("/", -1);
            if (parts.length != 2) {
                throw new BadInput("expected an f-number and its T-number such as 11/12.3, found \"" + text
                        + "\"");
            }
            return Lens.transmittanceOf(FNumber.of(parts[0]),
                    FNumber.exactOf(Lens.T_NUMBER.check(Quantity.number(parts[1]))));
        }
    }

    /** A latitude. */
    static final class Latitude implements ITypeConverter<Angle> {

        @Override
        public Angle convert(String text) {
            return Coordinates.latitude(text);
        }
    }

    /** A longitude. */
    static final class Longitude implements ITypeConverter<Angle> {

        @Override
        public Angle convert(String text) {
            return Coordinates.longitude(text);
        }
    }
}
