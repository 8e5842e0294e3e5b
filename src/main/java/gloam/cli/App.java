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

    /** The commands, in the order of the help. */
    private static final List<Known> COMMANDS = List.of(
            new Known("init", Sky.NONE),
            new Known("nights", Sky.BODIES),
            new Known("sky", Sky.BODIES),
            new Known("measure", Sky.STARS),
            new Known("expose", Sky.NONE),
            new Known("trail", Sky.STARS),
            new Known("proof", Sky.STARS),
            new Known("plan", Sky.STARS),
            new Known("journal", Sky.NONE),
            new Known("check", Sky.NONE),
            new Known("schema", Sky.NONE),
            new Known("help", Sky.NONE),
            new Known("completion", Sky.NONE));

    /** What of the sky a command hardly ever does without: nothing, Sun and Moon, or all stars besides. */
    private enum Sky { NONE, BODIES, STARS }

    /** A command by its name. */
    private record Known(String name, Sky sky) {

        /**
         * The command. A switch: lambdas in the list, all linked at the start, took {@code --version} from 83
         * to 130 ms of CPU (classes in a folder, no class-data archive).
         */
        Command with(Session session) {
            return switch (name) {
                case "init" -> new InitCommand(session);
                case "nights" -> new NightsCommand(session);
                case "sky" -> new SkyCommand(session);
                case "measure" -> new MeasureCommand(session);
                case "expose" -> new ExposeCommand(session);
                case "trail" -> new TrailCommand(session);
                case "proof" -> new ProofCommand(session);
                case "plan" -> new PlanCommand(session);
                case "journal" -> new JournalCommand(session);
                case "check" -> new CheckCommand(session);
                case "schema" -> new SchemaCommand();
                case "help" -> new HelpCommand(session);
                case "completion" -> new CompletionCommand(session);
                default -> throw new IllegalArgumentException("no command is named " + name);
            };
        }
    }

    private App() {
    }

    /**
     * Runs one command and returns its exit code; the report goes to {@code out}, all else to {@code err}.
     */
    public static int run(Session session, PrintWriter out, PrintWriter err, String... args) {
        named(args).filter(known -> known.sky != Sky.NONE)
                .ifPresent(known -> session.readAhead(known.sky == Sky.STARS));
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
        CommandLine gloam = new GloamCommand().commandLine();
        named(args).map(List::of).orElse(COMMANDS)
                .forEach(known -> gloam.addSubcommand(known.name, known.with(session).commandLine()));
        OptionSections.shorten(gloam);
        return gloam.setUsageHelpWidth(Math.max(LEAST_HELP_WIDTH,
                Math.min(OutputFormat.WIDTH, session.columns()))).setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(session.coloured() ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler(new Refusal())
                .setExecutionExceptionHandler(new Refusal());
    }

    private static Optional<Known> named(String... args) {
        return COMMANDS.stream().filter(known -> args.length > 0 && known.name.equals(args[0])).findFirst();
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
