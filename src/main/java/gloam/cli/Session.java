package gloam.cli;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.StarCatalogue;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.planner.Progress;
import gloam.view.OutputFormat;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.zone.ZoneRulesProvider;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/** What one run of the program has around it: a clock, the sky's data and the environment. */
public final class Session {

    /** On a terminal narrower than that lines run on as it folds them. */
    private static final int LEAST_COLUMNS = 40;

    /** Wider tables are hard to follow. */
    private static final int MOST_COLUMNS = 200;

    private final Clock clock;
    private final Supplier<Ephemeris> ephemeris;
    private final Supplier<StarCatalogue> stars;
    private final Map<String, String> environment;
    private final Supplier<Optional<Terminal>> terminal;
    private Optional<CompletableFuture<Ephemeris>> reading = Optional.empty();

    /**
     * A session on given parts, where nobody answers questions; ephemeris and stars are asked for only when a command
     * needs them.
     */
    public Session(Clock clock, Supplier<Ephemeris> ephemeris, Supplier<StarCatalogue> stars,
                   Map<String, String> environment) {
        this(clock, ephemeris, stars, environment, Optional::empty);
    }

    private Session(Clock clock, Supplier<Ephemeris> ephemeris, Supplier<StarCatalogue> stars,
                    Map<String, String> environment, Supplier<Optional<Terminal>> terminal) {
        this.terminal = terminal;
        this.clock = clock;
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.environment = Map.copyOf(environment);
    }

    /** A session on the data in the jar and at the terminal that the program was started from, if any. */
    public static Session real(Clock clock, Map<String, String> environment) {
        return new Session(clock, OrekitEphemeris::builtIn, StarCatalogue::builtIn, environment, Session::console);
    }

    /** The same session with somebody who answers questions. */
    Session at(Terminal answering) {
        return new Session(clock, ephemeris, stars, environment, () -> Optional.of(answering));
    }

    private static Optional<Terminal> console() {
        return UserConsole.there() ? Optional.of(UserConsole::line) : Optional.empty();
    }

    /** The same session on the data in the jar with the user's own in their place. */
    Session with(SkyDataOptions own) {
        Ephemeris given = own.over(OrekitEphemeris.builtIn());
        return new Session(clock, () -> given, stars, environment, terminal);
    }

    Instant now() {
        return clock.instant();
    }

    /** Begins to read the sky's data and the zones beside other work, the stars' too where they will be wanted. */
    void readAhead(boolean starsToo) {
        CompletableFuture<Ephemeris> sky = CompletableFuture.supplyAsync(ephemeris);
        reading = Optional.of(sky);
        CompletableFuture<Void> zones = sky.thenRun(ZoneRulesProvider::getAvailableZoneIds);
        if (starsToo) {
            zones.thenRun(stars::get);
        }
    }

    Ephemeris ephemeris() {
        if (reading.isEmpty()) {
            reading = Optional.of(CompletableFuture.completedFuture(ephemeris.get()));
        }
        return reading.get().join();
    }

    StarCatalogue stars() {
        return stars.get();
    }

    /** Who answers questions, if anybody does. */
    Optional<Terminal> terminal() {
        return terminal.get();
    }

    /** Who is told how far a computation has come: whoever sits at the terminal, if anybody does. */
    Progress progress(String what, PrintWriter err) {
        return !UserConsole.there() ? Progress.NONE : new ProgressLine(what, err, clock);
    }

    /** Whether text may be coloured: on a terminal that can, unless {@code NO_COLOR} is set. */
    boolean coloured() {
        return coloured(UserConsole.there(), environment);
    }

    static boolean coloured(boolean terminal, Map<String, String> environment) {
        return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "dumb").equals("dumb");
    }

    /** Columns for which text is laid out: those of the terminal, else as many as in a pipe or a file. */
    int columns() {
        return columns(UserConsole.there(), environment);
    }

    static int columns(boolean terminal, Map<String, String> environment) {
        String said = environment.getOrDefault("COLUMNS", "");
        int columns = terminal && said.matches("[1-9]\\d{1,3}") ? Integer.parseInt(said) : OutputFormat.WIDTH;
        return Math.max(LEAST_COLUMNS, Math.min(MOST_COLUMNS, columns));
    }
}
