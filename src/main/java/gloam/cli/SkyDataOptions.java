package gloam.cli;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.store.Input;

/** The user's own data of the sky in place of those in the jar. */
final class SkyDataOptions extends OptionGroup {

    private final Option<Input> planets = input("--ephemeris", "FILE",
            "Sun, Moon and planets from a file in JPL's binary form (default: the data in the jar).");

    private final Option<Input> orientation = input("--earth-orientation", "FILE",
            "UT1 and the pole's wandering from a finals2000A file of the IERS (default: UT1 as UTC).");

    /** The session on the files given; the session itself where there are none. */
    Session applied(Session session) {
        return !planets.given() && !orientation.given() ? session : session.with(this);
    }

    /** An ephemeris with the files given in place of its own data. */
    Ephemeris over(OrekitEphemeris ephemeris) {
        OrekitEphemeris withPlanets = planets.value().map(file -> FromOption.of("--ephemeris",
                () -> ephemeris.withPlanets(file.file()))).orElse(ephemeris);
        return orientation.value().map(file -> FromOption.of("--earth-orientation",
                () -> withPlanets.withEarthOrientation(file.file()))).orElse(withPlanets);
    }
}
