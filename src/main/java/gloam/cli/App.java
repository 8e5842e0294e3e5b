package gloam.cli;

import gloam.ephemeris.OutsideCoverage;
import gloam.units.BadInput;
import gloam.units.Nearest;
import gloam.units.PlainText;
import gloam.view.OutputFormat;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as a function: arguments in, text and an exit code out. */
public final class App {

    /** Done, also if the answer is that there is nothing. */
    public static final int DONE = 0;
    /** A bug; the stack trace is on the error stream. */
    public static final int BUG = 1;
    /** Some option, file or answer cannot be used. */
    public static final int BAD_INPUT = 2;
    /** Data are missing, or do not cover a date. */
    public static final int NO_DATA = 3;
    /** Nothing was found, and {@code --fail-if-empty} was given. */
    public static final int EMPTY = 4;

    /** Help needs this many. */
    private static final int LEAST_HELP_WIDTH = 55;

    /** Commands that hardly ever do without Sun and Moon. */
    private static final List<String> OF_THE_SKY = List.of("nights", "sky", "measure", "trail",
            "proof", "plan");
    /** Those of them that look at all stars. */
    private static final List<String> OF_THE_STARS = List.of("measure", "trail", "proof", "plan");
    private static final List<String> COMMANDS =
            List.of("init", "nights", "sky", "measure", "expose", "trail", "proof", "plan", "journal",
            "check", "schema", "help", "completion");

    private App() {
    }

    /**
     * Runs one command and returns its exit code; the report goes to {@code out}, all else to {@code err}.
     */
    public static int run(Session session, PrintWriter out, PrintWriter err, String... args) {
        if (args.length > 0 && OF_THE_SKY.contains(args[0])) {
            session.readAhead(OF_THE_STARS.contains(args[0]));
        }
        return run(commandLine(session, args), out, err, args);
    }

    /** The same on a command line that was made before. */
    static int run(CommandLine gloam, PrintWriter out, PrintWriter err, String... args) {
        int exit = gloam.setOut(out).setErr(err).execute(args);
        out.flush();
        err.flush();
        return exit;
    }

    /** The program's name and version, read from its jar. */
    public static String version() {
        return "gloam " + Optional.ofNullable(App.class.getPackage().getImplementationVersion())
                .orElse("(unpackaged build)");
    }

    /**
     * The program, of its commands only the one named first, if any: declaring all of them takes longer than
     * starting Java.
     */
    static CommandLine commandLine(Session session, String... args) {
        List<String> named = args.length > 0 && COMMANDS.contains(args[0]) ? List.of(args[0]) : COMMANDS;
        CommandLine gloam = new GloamCommand().commandLine();
        named.forEach(name -> gloam.addSubcommand(name, command(name, session)));
        OptionSections.shorten(gloam);
        return gloam.setUsageHelpWidth(Math.max(LEAST_HELP_WIDTH,
                Math.min(OutputFormat.WIDTH, session.columns()))).setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(session.coloured() ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler(new Refusal())
                .setExecutionExceptionHandler(new Refusal());
    }

    private static CommandLine command(String name, Session session) {
        return switch (name) {
            case "init" -> new InitCommand(session).commandLine();
            case "nights" -> new NightsCommand(session).commandLine();
            case "sky" -> new SkyCommand(session).commandLine();
            case "measure" -> new MeasureCommand(session).commandLine();
            case "expose" -> new ExposeCommand(session).commandLine();
            case "trail" -> new TrailCommand(session).commandLine();
            case "proof" -> new ProofCommand(session).commandLine();
            case "plan" -> new PlanCommand(session).commandLine();
            case "journal" -> JournalCommand.with(session);
            case "check" -> new CheckCommand(session).commandLine();
            case "schema" -> new SchemaCommand().commandLine();
            case "help" -> new HelpCommand(session).commandLine();
            case "completion" -> new CompletionCommand(session).commandLine();
            default -> throw new IllegalArgumentException("no command is named " + name);
        };
    }

    private static int refuse(CommandLine command, BadInput bad) {
        PrintWriter err = command.getErr();
        bad.problems().forEach(problem -> err.println(PlainText.isolated(problem)));
        err.println("See " + command.getCommandSpec().qualifiedName() + " --help.");
        return BAD_INPUT;
    }

    private static BadInput problems(ParameterException problem) {
        if (problem.getCause() instanceof BadInput bad) {
            return bad.from(label(problem.getArgSpec()));
        }
        if (problem instanceof UnmatchedArgumentException unmatched) {
            return new BadInput(unknown(unmatched));
        }
        String message = problem.getMessage();
        return new BadInput(message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1));
    }

    private static String label(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String unknown(UnmatchedArgumentException problem) {
        String word = problem.getUnmatched().get(0).replaceFirst("=.*", "");
        CommandLine command = problem.getCommandLine();
        boolean option = word.startsWith("-");
        Stream<String> known = option
                ? command.getCommandSpec().optionsMap().keySet().stream()
                : command.getSubcommands().keySet().stream();
        String kind = option ? "option " : command.getSubcommands().isEmpty() ? "argument " : "command ";
        return "unknown " + kind + "\"" + word + "\"" + Nearest.question(word, known.toList())
                .map("; "::concat).orElse("");
    }

    /** What a command that could not be done says. */
    private static final class Refusal implements IParameterExceptionHandler, IExecutionExceptionHandler {

        @Override
        public int handleParseException(ParameterException problem, String[] args) {
            return refuse(problem.getCommandLine(), problems(problem));
        }

        @Override
        public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) {
            if (problem instanceof BadInput bad) {
                return refuse(command, bad);
            }
            if (problem instanceof OutsideCoverage) {
                command.getErr().println(problem.getMessage());
                return NO_DATA;
            }
            problem.printStackTrace(command.getErr());
            return BUG;
        }
    }
}
