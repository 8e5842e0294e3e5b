package gloam.gear;

import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import gloam.units.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place on the Earth as people and receivers write it.
 *
 * @param latitude  north positive
 * @param longitude east positive
 * @param heightM   height in metres, where it was said
 */
public record Coordinates(Angle latitude, Angle longitude, OptionalDouble heightM) {

    private static final String FORMS =
            "Write a place such as 40.41, -1.23, 1320 or 40°24′36″N 1°13′48″W or +40.41-001.23+1320/.";

    /**
     * ISO 6709 in one string: latitude, longitude, height, reference system, each led by its sign or name.
     */
    private static final Pattern ISO_6709 = Pattern.compile("([+-])(\\d{2}|\\d{4}|\\d{6})([.,]\\d+)?"
            + "([+-])(\\d{3}|\\d{5}|\\d{7})([.,]\\d+)?([+-]\\d+(?:[.,]\\d+)?)?(CRS[^/]*)?/?");
    private static final Pattern SIGNED_RUN = Pattern.compile("[+-]\\d+([.,]\\d+)?[+-]\\d.*");
    private static final Pattern LETTERS_BEHIND =
            Pattern.compile("([^NSEW,;]+[NS])\\s*([^NSEW,;]+[EW])\\s*([^NSEW]*)");
    private static final Pattern LETTERS_BEFORE = Pattern.compile("([NS][^NSEW,;]+)([EW][^NSEW,;]+)()");
    private static final Pattern SPACED =
            Pattern.compile("[+-]?\\d{1,3}\\s+\\d{1,2}(\\.\\d+|\\s+\\d{1,2}(\\.\\d+)?)?");
    private static final String WORLD_GEODETIC_SYSTEM = "CRSWGS_84";

    /**
     * The place a text means: latitude, longitude and if wanted height with commas between, each part in any
     * form that {@link #latitude} takes; the same without commas where N, S, E and W part them; or ISO 6709,
     * such as {@code +40.41-001.23+1320/}.
     *
     * @throws BadInput when it is in none of these forms or out of range
     */
    public static Coordinates of(String text) {
        String place = text.strip().replace('\u2212', '-');
        Matcher iso = ISO_6709.matcher(place);
        if (iso.matches()) {
            return iso6709(iso);
        }
        if (SIGNED_RUN.matcher(place).matches()) {
            throw new BadInput("place \"" + place
                    + "\" is not in the form of ISO 6709: latitude ±DD.D, ±DDMM.M or "
                    + "±DDMMSS.S, longitude the same with DDD, height in metres, a solidus. " + FORMS);
        }
        List<String> parts = parts(place);
        return new Coordinates(latitude(parts.get(0)), longitude(parts.get(1)), parts.size() < 3
                ? OptionalDouble.empty() : OptionalDouble.of(new Quantity(parts.get(2)).in(Site.HEIGHT)));
    }

    /** A latitude: degrees in decimals, or with minutes and seconds, north as + or N. */
    public static Angle latitude(String text) {
        return Axis.LATITUDE.read(text);
    }

    /** A longitude: degrees in decimals, or with minutes and seconds, east as + or E. */
    public static Angle longitude(String text) {
        return Axis.LONGITUDE.read(text);
    }

    /** Latitude and longitude to 0.0001°, such as {@code 40.4100° N 1.2300° W}. */
    @Override
    public String toString() {
        return Axis.LATITUDE.write(latitude) + " " + Axis.LONGITUDE.write(longitude);
    }

    private static List<String> parts(String place) {
        for (Pattern letters : List.of(LETTERS_BEHIND, LETTERS_BEFORE)) {
            Matcher matcher = letters.matcher(place);
            if (matcher.matches()) {
                return matcher.group(3).isBlank() ? List.of(matcher.group(1), matcher.group(2))
                        : List.of(matcher.group(1), matcher.group(2), matcher.group(3));
            }
        }
        List<String> parts = List.of(place.split("[,;]", -1));
        if (parts.size() < 2 || parts.size() > 3) {
            throw new BadInput("place \"" + place + "\" is not latitude, longitude and height. " + FORMS);
        }
        return parts;
    }

    private static Coordinates iso6709(Matcher iso) {
        Optional<String> system = Optional.ofNullable(iso.group(8));
        if (system.isPresent() && !system.get().equals(WORLD_GEODETIC_SYSTEM)) {
            throw new BadInput("the place is given in " + system.get() + ". Give it in WGS 84, "
                    + WORLD_GEODETIC_SYSTEM);
        }
        Optional<String> height = Optional.ofNullable(iso.group(7));
        return new Coordinates(latitude(iso.group(1) + withColons(iso.group(2), 2, iso.group(3))),
                longitude(iso.group(4) + withColons(iso.group(5), 3, iso.group(6))),
                height.map(metres -> OptionalDouble.of(new Quantity(metres.replace(',', '.'))
                .in(Site.HEIGHT)))
                        .orElse(OptionalDouble.empty()));
    }

    /** The digits of degrees, minutes and seconds with colons between, and their decimals. */
    private static String withColons(String digits, int ofDegrees, String decimals) {
        String tail = digits.substring(ofDegrees).replaceAll("(\\d\\d)", ":$1");
        return digits.substring(0, ofDegrees) + tail + (decimals == null ? "" : decimals.replace(',', '.'));
    }

    private enum Axis {
        LATITUDE(Site.LATITUDE, "N", "S", "40.41, 40°24′36″N or 40:24:36"),
        LONGITUDE(Site.LONGITUDE, "E", "W", "-1.23, 1°13′48″W or -1:13:48");

        private final Range range;
        private final String positive;
        private final String negative;
        private final String examples;

        Axis(Range range, String positive, String negative, String examples) {
            this.range = range;
            this.positive = positive;
            this.negative = negative;
            this.examples = examples;
        }

        Angle read(String text) {
            String given = text.strip().replace('\u2212', '-');
            String number = given.replaceFirst("^[NSEW]", "");
            String letter = number.equals(given) ? given.replaceFirst("^.*?([NSEW]?)$", "$1")
                    : given.substring(0, 1);
            number = number.equals(given) ? given.substring(0, given.length() - letter.length()) : number;
            if (!letter.isEmpty() && (!letter.equals(positive) && !letter.equals(negative)
                    || number.strip().matches("(?s)[+-].*|.*[NSEW]"))) {
                throw refused(given, "Give a sign or one of the letters " + positive + " and " + negative);
            }
            return Angle.ofDegrees(range.check((letter.equals(negative) ? -1 : 1)
                    * degrees(given, number.strip())));
        }

        /** Without a format of Java, which takes longer to load than a night to compute. */
        String write(Angle angle) {
            double deg = angle.degrees();
            return BigDecimal.valueOf(Math.abs(deg)).setScale(4, RoundingMode.HALF_UP).toPlainString()
                    + "° " + (deg < 0 ? negative : positive);
        }

        private double degrees(String given, String number) {
            String joined = SPACED.matcher(number).matches() ? number.replaceAll("\\s+", ":") : number;
            try {
                return new Quantity(joined).in(new Range(range.what(), -360, 360, range.unit()));
            } catch (BadInput strange) {
                throw refused(given, given.contains(",") ? "Write a point before the decimals"
                        : "Write degrees");
            }
        }

        private BadInput refused(String given, String remedy) {
            return new BadInput(range.what() + " \"" + given + "\" is not understood. " + remedy
                    + ", such as " + examples);
        }
    }
}
