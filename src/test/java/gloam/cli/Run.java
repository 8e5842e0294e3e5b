package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.StarCatalogue;
import gloam.support.AnalyticEphemeris;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One run of the program in this process, with a clock that stands still and the low-precision ephemeris.
 *
 * @param exit the exit code
 * @param out  standard output
 * @param err  standard error
 */
record Run(int exit, String out, String err) {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-01-15T10:00:00Z"), ZoneOffset.UTC);

    static Run of(String... args) {
        return on(session(), args);
    }

    /** The same on the data in the jar. */
    static Run real(List<String> args) {
        return on(Session.real(CLOCK, Map.of()), args.toArray(String[]::new));
    }

    /**
     * The same at a terminal where these answers are given, and then the input ends; what it shows is part of
     * err.
     */
    static Run answering(List<String> answers, String... args) {
        Deque<String> left = new ArrayDeque<>(answers);
        StringBuilder shown = new StringBuilder();
        Run run = on(session().at(question -> {
            shown.append(question.replace(System.lineSeparator(), "\n")).append('\n');
            return Optional.ofNullable(left.poll());
        }), args);
        return new Run(run.exit, run.out, shown + run.err);
    }

    private static Run on(Session session, String... args) {
        return on(App.commandLine(session), args);
    }

    /** What a question prints that is answered; a no-break space in it parts no words. */
    static String printed(String question) {
        Run run = of(Arrays.stream(question.trim().split(" +")).map(word -> word.replace('\u00a0', ' '))
                .toList());
        assertEquals(0, run.exit, run.err);
        return run.out;
    }

    /** The same as JSON. */
    static JsonNode json(String question) {
        return JsonMapper.shared().readTree(printed(question + " --format json"));
    }

    /** One on a command line that may be used again, which saves making it. */
    static Run on(CommandLine commandLine, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = App.run(commandLine, new PrintWriter(out), new PrintWriter(err), args);
        return new Run(exit, lines(out), lines(err));
    }

    static Run of(List<String> args) {
        return of(args.toArray(String[]::new));
    }

    static Session session() {
        return new Session(CLOCK, AnalyticEphemeris::new, StarCatalogue::builtIn, Map.of());
    }

    /** With plain line ends, so that the golden files are the same on every machine. */
    private static String lines(StringWriter text) {
        return text.toString().replace(System.lineSeparator(), "\n");
    }
}
