package gloam.cli;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.orekit.OrekitEphemeris;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The user's own data of the sky in place of those in the jar. */
final class SkyDataOptions {

    @Option(names = "--ephemeris", paramLabel = "FILE",
            description = "Sun, Moon and planets from a file in JPL's binary form (default: the data in the jar).")
    private Optional<Path> planets;

    @Option(names = "--earth-orientation", paramLabel = "FILE",
            description = "UT1 and the pole's wandering from a finals2000A file of the IERS (default: UT1 as UTC).")
    private Optional<Path> orientation;

    /** The session on the files given; the session itself where there are none. */
    Session applied(Session session) {
        return planets.isEmpty() && orientation.isEmpty() ? session : session.with(this);
    }

    /** An ephemeris with the files given in place of its own data. */
    Ephemeris over(OrekitEphemeris ephemeris) {
        OrekitEphemeris withPlanets = planets.map(file -> FromOption.of("--ephemeris",
                () -> ephemeris.withPlanets(file))).orElse(ephemeris);
        return orientation.map(file -> FromOption.of("--earth-orientation",
                () -> withPlanets.withEarthOrientation(file))).orElse(withPlanets);
    }
}
