package gloam.ephemeris.orekit;

/**
 * One day of UTC.
 *
 * @param startTtS when it begins, in seconds of terrestrial time from J2000.0
 * @param turning  the Earth rotation angle, counted on, and where the pole stands in the Earth (x, y), in
 *                 radians, by the seconds of the day
 */
record EarthDay(double startTtS, Interpolant turning) {
}
