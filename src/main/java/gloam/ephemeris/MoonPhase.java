package gloam.ephemeris;

import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.units.Angle;
import gloam.units.Crossings;
import gloam.units.FunctionOfTime;
import gloam.units.Interval;
import gloam.units.Label;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far the Moon has gone from the Sun.
 *
 * @param elongation apparent geocentric ecliptic longitude of the Moon less that of the Sun, 0 (new) to 360°
 */
public record MoonPhase(Angle elongation) {

    /** Names of the phases, in order from new moon on. */
    public enum Name {
        NEW_MOON, WAXING_CRESCENT, FIRST_QUARTER, WAXING_GIBBOUS,
        FULL_MOON, WANING_GIBBOUS, LAST_QUARTER, WANING_CRESCENT;

        /** The name as reports write it, such as {@code waxing crescent}. */
        public String label() {
            return Label.words(this);
        }
    }

    /**
     * One of the four quarters.
     *
     * @param at   when the longitudes differ by 0, 90, 180 or 270°
     * @param name new moon, first quarter, full moon or last quarter
     */
    public record Quarter(Instant at, Name name) {
    }

    /** This near to a quarter, half a day's motion, a night is called by it: common practice, no source. */
    private static final double QUARTER_REACH_DEG = 6;
    private static final double SECTOR_DEG = 90;
    private static final Duration SEARCH_STEP = Duration.ofDays(1);
    /** Longer than any time from new moon to new moon. */
    private static final Duration LONGEST_MONTH = Duration.ofDays(30);
    /**
     * Where neither the Earth's rotation nor its place on the equator enter: the Earth's centre is straight
     * below.
     */
    private static final Site POLE =
            new Site("north pole", Angle.ofDegrees(90), Angle.ZERO, 0, ZoneOffset.UTC, 22, 0.2,
            Skyline.FLAT);

    /** The phase at an instant. */
    public static MoonPhase at(Ephemeris ephemeris, Instant at) {
        Ecliptic ecliptic = Ecliptic.of(at);
        double moonRad = ecliptic.longitudeRad(ephemeris.position(Body.MOON, POLE, at));
        double sunRad = ecliptic.longitudeRad(ephemeris.position(Body.SUN, POLE, at));
        return new MoonPhase(Angle.ofRadians(moonRad - sunRad).positive());
    }

    /** Every quarter in a span, in order of time. */
    public static List<Quarter> quarters(Ephemeris ephemeris, Interval span) {
        Crossings sine = FunctionOfTime.of(span, SEARCH_STEP, at -> at(ephemeris, at).elongation.sin())
                .crossings(0);
        Crossings cosine = FunctionOfTime.of(span, SEARCH_STEP, at -> at(ephemeris, at).elongation.cos())
                .crossings(0);
        return Stream.concat(quarters(sine, Name.NEW_MOON, Name.FULL_MOON),
                        quarters(cosine, Name.LAST_QUARTER, Name.FIRST_QUARTER))
                .sorted((one, other) -> one.at.compareTo(other.at)).toList();
    }

    /** The time since the last new moon; empty where the ephemeris does not reach back to it. */
    public static Optional<Duration> age(Ephemeris ephemeris, Instant at) {
        return covered(ephemeris, new Interval(at.minus(LONGEST_MONTH), at))
                .filter(quarter -> quarter.name == Name.NEW_MOON)
                .reduce((first, second) -> second).map(quarter -> Duration.between(quarter.at, at));
    }

    /** The next four quarters, in order of time; fewer where the ephemeris ends before them. */
    public static List<Quarter> next(Ephemeris ephemeris, Instant at) {
        return covered(ephemeris, new Interval(at, at.plus(LONGEST_MONTH))).limit(4).toList();
    }

    private static Stream<Quarter> covered(Ephemeris ephemeris, Interval span) {
        Interval all = ephemeris.covers();
        Interval withItsEnd = new Interval(all.start(), all.endExclusive().minusNanos(1));
        return withItsEnd.intersect(span).stream().flatMap(covered -> quarters(ephemeris, covered).stream());
    }

    /** The name of the phase: a quarter within 6° of it, else what lies between. */
    public Name name() {
        long quarter = Math.round(elongation.degrees() / SECTOR_DEG);
        double pastDeg = elongation.degrees() - quarter * SECTOR_DEG;
        long eighth = 2 * quarter
                + (Math.abs(pastDeg) <= QUARTER_REACH_DEG ? 0 : (long) Math.signum(pastDeg));
        return Name.values()[Math.floorMod(eighth, Name.values().length)];
    }

    /** Whether the lit part is growing. */
    public boolean waxing() {
        return elongation.degrees() < 180;
    }

    private static Stream<Quarter> quarters(Crossings crossings, Name rising, Name falling) {
        return crossings.all().stream()
                .map(crossing -> new Quarter(crossing.at(), crossing.rising() ? rising : falling));
    }

    /**
     * The ecliptic of date.
     *
     * <p><b>Model.</b> Mean obliquity of IAU 2006, the two greatest terms of the nutation in obliquity (Meeus
     * 1998, Astronomical Algorithms, ch. 22). <b>Valid.</b> 1900 to 2100. <b>Error.</b> 0.1″.
     * <b>Departures.</b> None.
     */
    private record Ecliptic(double obliquityRad) {

        private static final Instant J2000 = Instant.parse("2000-01-01T12:00:00Z");
        private static final double CENTURY_S = 36525 * 86400.0;
        private static final double POLAR_RADIUS_KM = 6356.752;

        static Ecliptic of(Instant at) {
            double t = (at.getEpochSecond() - J2000.getEpochSecond()) / CENTURY_S;
            double nodeRad = Math.toRadians(125.04452 - 1934.136261 * t);
            double sunRad = Math.toRadians(280.4665 + 36000.7698 * t);
            double arcsec = 84381.406 - 46.836769 * t + 9.20 * Math.cos(nodeRad)
                    + 0.57 * Math.cos(2 * sunRad);
            return new Ecliptic(Math.toRadians(arcsec / 3600));
        }

        /** Longitude from the Earth's centre of what is seen from the pole. */
        double longitudeRad(SkyPosition position) {
            double level = position.distanceKm() * position.declination().cos();
            double x = level * position.rightAscension().cos();
            double y = level * position.rightAscension().sin();
            double z = position.distanceKm() * position.declination().sin() + POLAR_RADIUS_KM;
            return Math.atan2(y * Math.cos(obliquityRad) + z * Math.sin(obliquityRad), x);
        }
    }
}
