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

/** The surroundings of one run: clock, data of the sky, environment and terminal. */
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
    private final Supplier<Optional<Terminal>> answers;
    private Optional<CompletableFuture<Ephemeris>> reading = Optional.empty();

    /**
     * A session without a terminal. Ephemeris and stars are loaded only if a command needs them.
     */
    public Session(Clock clock, Supplier<Ephemeris> ephemeris, Supplier<StarCatalogue> stars,
                   Map<String, String> environment) {
        this(clock, ephemeris, stars, environment, Optional::empty, Optional::empty);
    }

    private Session(Clock clock, Supplier<Ephemeris> ephemeris, Supplier<StarCatalogue> stars,
                    Map<String, String> environment, Supplier<Optional<Terminal>> terminal,
                    Supplier<Optional<Terminal>> answers) {
        this.terminal = terminal;
        this.answers = answers;
        this.clock = clock;
        this.ephemeris = ephemeris;
        this.stars = stars;
        this.environment = Map.copyOf(environment);
    }

    /** A session with the data in the jar, and with the terminal if there is one. */
    public static Session real(Clock clock, Map<String, String> environment) {
        return new Session(clock, OrekitEphemeris::builtIn, StarCatalogue::builtIn, environment,
                Session::console, () -> console().or(() -> Optional.of(UserConsole::piped)));
    }

    /** The same session with a terminal that answers questions. */
    Session at(Terminal answering) {
        return new Session(clock, ephemeris, stars, environment, () -> Optional.of(answering),
                () -> Optional.of(answering));
    }

    private static Optional<Terminal> console() {
        return UserConsole.there() ? Optional.of(UserConsole::line) : Optional.empty();
    }

    /** The same session with the user's own data in place of those in the jar. */
    Session with(SkyDataOptions own) {
        Ephemeris given = own.over(OrekitEphemeris.builtIn());
        return new Session(clock, () -> given, stars, environment, terminal, answers);
    }

    Instant now() {
        return clock.instant();
    }

    /**
     * Begins to read the sky's data and the zones beside other work, the stars' too where they will be
     * wanted.
     */
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

    /** The terminal to ask questions on, if there is one. */
    Optional<Terminal> terminal() {
        return terminal.get();
    }

    /** Who answers questions: the terminal, else what is piped to standard input. */
    Optional<Terminal> answers() {
        return answers.get();
    }

    /** Shows the progress of a computation on the terminal, if there is one. */
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
