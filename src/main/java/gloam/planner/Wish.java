package gloam.planner;

import gloam.ephemeris.Body;
import gloam.ephemeris.Target;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.units.Range;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A picture wanted.
 *
 * @param name     its name, unique in the trip
 * @param aim      where the camera points
 * @param sky      the kind of sky wanted
 * @param tone     the tone of the sky wanted
 * @param records  the trails that must show
 * @param trail    the trail length wanted at the frame's centre
 * @param shortest least time the shutter is open
 * @param longest  most time the shutter is open
 * @param fNumbers the f-numbers to choose from; empty for all of the lens
 * @param worth    what the picture is worth against the others, more than 0
 * @param repeat   how many sheets of it are wanted at most, one a night
 * @param film     its film where it is not the trip's
 * @param limits   what narrows it further
 * @param later    what is exposed on the same sheet after that, in order; the tone is that of all of it, all
 *                 else is wanted of the first opening
 */
public record Wish(String name, Aim aim, SkyKind sky, Tone tone, Records records, TrailLength trail,
                   Duration shortest, Duration longest, List<FNumber> fNumbers, double worth, int repeat,
                   Optional<FilmStock> film, Limits limits, List<LaterOpening> later) {

    /** Allowed tones. */
    public static final Range TONE = new Range("tone", -12, 6, "stops");
    /** Allowed exposure times. */
    public static final Range EXPOSURE = new Range("exposure", 1 / 60.0, 1440, "min");
    /** Allowed worths. */
    public static final Range WORTH = new Range("worth", 0.01, 1000, "");
    /** Allowed repeats. */
    public static final Range REPEAT = new Range("repeat", 1, 100, "");
    /** Allowed steps of a bracket: less is not told apart by what is known of a tone. */
    public static final Range BRACKET = new Range("bracket", 1, 6, "stops");
    /** Allowed tolerances of a level trail. */
    public static final Range LEVEL_WITHIN = new Range("level-within", 0.1, 45, "deg");
    /** Allowed numbers of trails. */
    public static final Range RECORDS = new Range("records-at-least", 1, 6000, "trails");

    /** Allowed numbers of bodies and stars that must record. */
    public static final Range TARGETS = new Range("number of bodies and stars", 1, 20, "");

    private static final double LEAST_APART_STOPS = 0.5;

    /** Copies the list; refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
    public Wish {
        EXPOSURE.check(shortest.toMillis() / 60_000.0);
        EXPOSURE.check(longest.toMillis() / 60_000.0);
        WORTH.check(worth);
        REPEAT.check(repeat);
        fNumbers = List.copyOf(fNumbers);
        later = List.copyOf(later);
    }

    /** A wish of a single opening. */
    public Wish(String name, Aim aim, SkyKind sky, Tone tone, Records records, TrailLength trail,
            Duration shortest, Duration longest, List<FNumber> fNumbers, double worth, int repeat,
            Optional<FilmStock> film, Limits limits) {
        this(name, aim, sky, tone, records, trail, shortest, longest, fNumbers, worth, repeat, film, limits,
                List.of());
    }

    /** A wish that nothing narrows further. */
    public Wish(String name, Aim aim, SkyKind sky, Tone tone, Records records, TrailLength trail,
            Duration shortest, Duration longest, List<FNumber> fNumbers, double worth, int repeat,
            Optional<FilmStock> film) {
        this(name, aim, sky, tone, records, trail, shortest, longest, fNumbers, worth, repeat, film,
                Limits.NONE);
    }

    /**
     * The sheets of a bracket about the tone that it aims at, in place of its repeats: the tone itself, then
     * by turns one step lighter, one darker, two lighter and so on. Each comes so near to its own tone that
     * two differ by half a stop at least.
     *
     * @param stepStops from one tone to the next, 1 to 6
     */
    public List<Wish> bracketed(double stepStops) {
        BRACKET.check(stepStops);
        double aimStops = ((Tone.Near) tone).stops();
        double withinStops = Math.min(Chance.MOST_MISS_STOPS, (stepStops - LEAST_APART_STOPS) / 2);
        return IntStream.range(0, repeat).mapToObj(sheet -> {
            double offStops = (sheet + 1) / 2 * (sheet % 2 == 0 ? -stepStops : stepStops);
            String own = offStops == 0 ? name : name + " " + (offStops > 0 ? "+" : "-")
                    + BigDecimal.valueOf(Math.abs(offStops)).stripTrailingZeros().toPlainString();
            return new Wish(own, aim, sky, new Tone.Near(aimStops + offStops, withinStops), records, trail,
                    shortest, longest, fNumbers, worth, 1, film, limits, later);
        }).toList();
    }

    /** The same wish with its own film, if it has one, changed. */
    Wish withFilm(UnaryOperator<FilmStock> change) {
        return new Wish(name, aim, sky, tone, records, trail, shortest, longest, fNumbers, worth, repeat,
                film.map(change), limits, later);
    }

    /** The bodies that it follows, and the bodies and stars that must record, each once. */
    List<Target> targets() {
        Stream<Target> followed = aim instanceof Aim.Follow follow && follow.target() instanceof Body body
                ? Stream.of(body) : Stream.of();
        return Stream.concat(followed, mustRecord().stream()).distinct().toList();
    }

    /** The bodies among these. */
    List<Body> bodies() {
        return targets().stream().filter(Body.class::isInstance).map(Body.class::cast).toList();
    }

    /** The bodies and stars that must record, by their names. */
    public List<Target> mustRecord() {
        return records instanceof Records.These these ? these.targets() : List.of();
    }

    /** Whether the picture is of the dark sky, and nothing says what must record in it. */
    boolean ofStarsUnasked() {
        return sky == SkyKind.DARK && records instanceof Records.Nothing && !(tone instanceof Tone.Near)
                && bodies().isEmpty();
    }

    /** Whether the picture is of the Moon, which it follows or which must record. */
    public boolean ofMoon() {
        return bodies().contains(Body.MOON);
    }

    /** Whether the Moon may come into the frame: it was asked for there, or the picture is of the Moon. */
    public boolean letsMoonIn() {
        return limits.moonFrame().map(frame -> frame == Limits.MoonFrame.IN_FRAME).orElseGet(this::ofMoon);
    }

    /** What is wanted of it after some sheets; empty when they are all there are wanted. */
    Optional<Wish> after(int served) {
        return served >= repeat ? Optional.empty() : Optional.of(new Wish(name, aim, sky, tone, records,
                trail, shortest, longest, fNumbers, worth, repeat - served, film, limits, later));
    }

    /** The same with other f-numbers to choose from. */
    Wish through(List<FNumber> others) {
        return new Wish(name, aim, sky, tone, records, trail, shortest, longest,
                others, worth, repeat, film, limits, later);
    }

    /** The same with another trail length. */
    Wish drawing(TrailLength other) {
        return new Wish(name, aim, sky, tone, records, other, shortest, longest,
                fNumbers, worth, repeat, film, limits, later);
    }

    /** The same with another tone. */
    Wish toned(Tone other) {
        return new Wish(name, aim, sky, other, records, trail, shortest, longest,
                fNumbers, worth, repeat, film, limits, later);
    }

    /** The same with another sky. */
    Wish under(SkyKind other) {
        return new Wish(name, aim, other, tone, records, trail, shortest, longest,
                fNumbers, worth, repeat, film, limits, later);
    }

    /** The same with other trails that must show. */
    Wish recording(Records other) {
        return new Wish(name, aim, sky, tone, other, trail, shortest, longest,
                fNumbers, worth, repeat, film, limits, later);
    }

    /** The same with another least exposure. */
    Wish from(Duration other) {
        return new Wish(name, aim, sky, tone, records, trail, other, longest,
                fNumbers, worth, repeat, film, limits, later);
    }

    /** The tone of the sky wanted, in stops from the film's mid-tone, + = lighter. */
    public sealed interface Tone {

        /** No matter which. */
        record Free() implements Tone { }

        /**
         * As near as can be.
         *
         * @param stops       the tone
         * @param withinStops by how much it is missed at most
         */
        record Near(double stops, double withinStops) implements Tone {
            /** Refuses a tone outside its range with {@link gloam.units.BadInput}. */
            public Near {
                TONE.check(stops);
            }

            /** The same as near as a single sheet has to come. */
            public Near(double stops) {
                this(stops, Chance.MOST_MISS_STOPS);
            }
        }

        /** No lighter than this. */
        record AtMost(double stops) implements Tone {
            /** Refuses a tone outside its range with {@link gloam.units.BadInput}. */
            public AtMost {
                TONE.check(stops);
            }
        }
    }

    /** What must leave a trail. */
    public sealed interface Records {

        /** Nothing must. */
        record Nothing() implements Records { }

        /** At least so many stars. */
        record AtLeast(int trails) implements Records {
            /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
            public AtLeast {
                RECORDS.check(trails);
            }
        }

        /** Each of some planets, the Moon or stars of known magnitude. */
        record These(List<Target> targets) implements Records {
            /** Copies the list; refuses one that is too short or long with {@link gloam.units.BadInput}. */
            public These {
                TARGETS.check(targets.size());
                targets = List.copyOf(targets);
            }
        }
    }
}
