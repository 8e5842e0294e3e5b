package gloam.gear;

import gloam.units.Angle;
import gloam.units.Range;

/**
 * The glow of a town over the horizon.
 *
 * @param azimuth where the town lies, from north through east
 * @param known   how strong its glow is
 * @param colourK colour temperature of its lamps in K, 1800 to 6500
 * @param spreadStops standard deviation of its strength in stops
 */
public record LightDome(Angle azimuth, Known known, double colourK, double spreadStops) {

    private static final double BY_PEOPLE_STOPS = 0.7;
    private static final double MEASURED_STOPS = 0.2;

    /** Allowed colour temperatures of lamps, from sodium to cold white. */
    public static final Range COLOUR = new Range("colour of lamps", 1800, 6500, "K");
    /** Lamps of a town of which nothing is said: old and new ones mixed; common practice, no source. */
    public static final double USUAL_COLOUR_K = 3000;

    /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
    public LightDome {
        Skyline.AZIMUTH.check(azimuth.degrees());
        COLOUR.check(colourK);
    }

    /** A glow known as well as one of its kind is. */
    public LightDome(Angle azimuth, Known known, double colourK) {
        this(azimuth, known, colourK, known instanceof Town ? BY_PEOPLE_STOPS : MEASURED_STOPS);
    }

    /** The same known to that many stops. */
    public LightDome knownTo(double stops) {
        return new LightDome(azimuth, known, colourK, stops);
    }

    /** How the strength of a glow is known. */
    public sealed interface Known {
    }

    /**
     * By the town itself.
     *
     * @param people     people who live there, 100 to 50 million
     * @param distanceKm to its centre, 1 km to 150 km
     */
    public record Town(double people, double distanceKm) implements Known {

        /** Allowed numbers of people. */
        public static final Range PEOPLE = new Range("people", 100, 5e7, "");
        /** Allowed distances. */
        public static final Range DISTANCE = new Range("distance of a town", 1, 150, "km");

        /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
        public Town {
            PEOPLE.check(people);
            DISTANCE.check(distanceKm);
        }
    }

    /**
     * By a measurement of the moonless sky over the town.
     *
     * @param altitude   how high it was measured, 5° to 60°
     * @param magArcsec2 what was measured, the night sky itself included, V mag/arcsec²
     */
    public record Measured(Angle altitude, double magArcsec2) implements Known {

        /** Allowed altitudes: below them haze decides, above them little is left of a town. */
        public static final Range ALTITUDE = new Range("altitude of the measured glow", 5, 60, "deg");
        /** Allowed brightness. */
        public static final Range BRIGHTNESS = new Range("sky over a town", 12, 22.5, "mag/arcsec2");

        /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
        public Measured {
            ALTITUDE.check(altitude.degrees());
            BRIGHTNESS.check(magArcsec2);
        }
    }
}
