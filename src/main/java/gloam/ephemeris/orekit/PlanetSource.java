package gloam.ephemeris.orekit;

import gloam.units.Interval;
import org.orekit.bodies.CelestialBodies;
import org.orekit.time.AbsoluteDate;

/** Where Orekit finds Sun, Moon and planets. */
interface PlanetSource {

    /** The dates for which it may be asked. */
    Interval covers();

    /** When one of its records begins, in seconds from J2000.0: no interpolant is to lie across its ends. */
    double originS();

    /** The bodies that hold for a date. */
    CelestialBodies at(AbsoluteDate date);

    /** What to throw where it has no sound place of a body for a date. */
    RuntimeException lacking(String body, AbsoluteDate date);
}
