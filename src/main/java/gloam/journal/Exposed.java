package gloam.journal;

import gloam.ephemeris.Direction;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a sheet was exposed.
 *
 * @param film         the film's name
 * @param batch        the pack or batch, empty if not noted
 * @param place        the site, if noted
 * @param aim          direction of the frame's centre, if noted; the first one of several
 * @param lens         the lens, with the f-number used alone; the first one of several
 * @param openings     when the shutter was open and under what light, in order of time and without overlaps
 * @param measured     whether the light was measured rather than computed
 * @param stars        the stars that crossed the frame's centre
 * @param temperatureC temperature in °C, if noted
 */
public record Exposed(String film, String batch, Optional<Place> place, Optional<Direction> aim, Lens lens,
                      List<Opening> openings, boolean measured, Stars stars, OptionalDouble temperatureC) {

    /** Allowed temperatures in °C. */
    public static final Range TEMPERATURE = new Range("temperature", -60, 60, "°C");
    /** Allowed numbers of openings. */
    public static final Range OPENINGS = new Range("number of openings", 1, 100, "");
    /** Allowed lengths of a pack's name. */
    public static final Range BATCH = new Range("length of the batch's name", 0, 400, "characters");

    /** Copies the list; refuses impossible values with {@link BadInput}. */
    public Exposed {
        openings = List.copyOf(openings);
        temperatureC.ifPresent(TEMPERATURE::check);
        if (film.isBlank()) {
            throw new BadInput("the film has no name; give it one");
        }
        checkOrder(spans(openings), place.map(Place::zone).orElse(ZoneOffset.UTC));
        if (lens.fNumbers().size() != 1) {
            throw new BadInput("a sheet is exposed at one f-number; give one");
        }
    }

    /**
     * Stars that crossed the frame's centre.
     *
     * @param imageSpeedMmS speed of their image on the film, in mm/s
     * @param lossMag       by how many magnitudes the atmosphere dimmed them
     */
    public record Stars(double imageSpeedMmS, double lossMag) {

        /**
         * Allowed speeds: up to that of a star at the equator with the longest lens and bellows, rounded up.
         */
        public static final Range SPEED = new Range("speed of a star's image", 0,
                Math.ceil(PassingStars.speedMmS(Lens.FOCAL_LENGTH.most() * Lens.MOST_EXTENSION, 0)), "mm/s");
        /** Allowed losses: up to that at the horizon in the haziest air, rounded up. */
        public static final Range LOSS = new Range("light lost in the air", 0,
                Math.ceil(Atmosphere.lossMag(Site.EXTINCTION.most(), Angle.ZERO)), "mag");

        /** Refuses numbers outside their ranges with {@link BadInput}. */
        public Stars {
            SPEED.check(imageSpeedMmS);
            LOSS.check(lossMag);
        }
    }

    /** The name of a pack or batch, without spaces about it; refuses, with {@link BadInput}, one too long. */
    public static String batch(String name) {
        BATCH.check(name.length());
        return name.strip();
    }

    /** Refuses, with {@link BadInput}, no openings, too many, and openings out of order or overlapping. */
    public static void checkOrder(List<Interval> openings, ZoneId zone) {
        if (openings.isEmpty()) {
            throw new BadInput("the sheet was never opened; give at least one opening");
        }
        OPENINGS.check(openings.size());
        Interval.overlapping(openings).ifPresent(early -> {
            throw new BadInput("the shutter opens at " + early.start().atZone(zone).toOffsetDateTime()
                    + " before it has closed; give openings in order of time");
        });
    }

    /** The f-number used. */
    public FNumber fNumber() {
        return lens.fNumbers().get(0);
    }

    /** Where the camera pointed in an opening, if noted. */
    public Optional<Direction> aim(Opening opening) {
        return opening.aim().or(() -> aim);
    }

    /** The lens at the f-number of an opening. */
    public Lens lens(Opening opening) {
        return opening.fNumber().map(own -> lens.with(List.of(own))).orElse(lens);
    }

    /** Total exposure time, in seconds. */
    public double openS() {
        return Interval.seconds(spans(openings));
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return Interval.span(spans(openings));
    }

    private static List<Interval> spans(List<Opening> openings) {
        return openings.stream().map(Opening::open).toList();
    }

    /** The longest opening. */
    public Opening longest() {
        return openings.stream().max(Comparator.comparing(opening -> opening.open().lasts())).orElseThrow();
    }

    /** Illuminance on the film half-way through the longest opening, in lx. */
    public double middleLx() {
        return longest().middleLx();
    }
}
