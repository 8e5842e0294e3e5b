package gloam.cli;

import gloam.view.Origin;
import gloam.view.OutputFormat;
import gloam.view.Report;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** What commands answer, worked out once and printed in every format and width. */
final class Answers {

    private static final Path GOLDEN = Path.of("src/test/resources/golden");
    private static final Origin ORIGIN = new Origin("gloam 1", List.of("trip.yaml"));
    private static final String JOURNAL = "--journal demo-data/journal.jsonl";
    private static final String TRIP = "--trip demo-data/trip.yaml";
    /** What no golden case asks. */
    private static final List<String> MORE = List.of("plan --trip demo-data/trip-south.yaml",
            "nights --stay 2 " + TRIP,
            "journal export " + JOURNAL, "proof " + TRIP
            + " --film instant-colour-125 --azimuth 0 --altitude 41 "
            + "--from 2027-02-08T21:00 --lasts 1h --f-number 8 --size 64");

    private Answers() {
    }

    /** An answer and the command line that asked for it. */
    record Answer(String asked, Report report) {

        String text(int columns) {
            return printed(OutputFormat.TEXT, columns);
        }

        String printed(OutputFormat format, int columns) {
            StringBuilder printed = new StringBuilder();
            try {
                format.render(report, ORIGIN, columns, printed);
            } catch (IOException cannotHappen) {
                throw new UncheckedIOException(cannotHappen);
            }
            return printed.toString();
        }

        @Override
        public String toString() {
            return asked;
        }
    }

    /** The answers to every golden command that has one, and to what those do not ask. */
    static List<Answer> all() throws IOException {
        List<Answer> answers = new ArrayList<>();
        try (Stream<Path> cases = Files.list(GOLDEN)) {
            for (Path folder : cases.sorted().toList()) {
                if (Files.readString(folder.resolve("exit")).equals("0\n")) {
                    add(answers, Files.readAllLines(folder.resolve("args")));
                }
            }
        }
        MORE.forEach(line -> add(answers, List.of(line.split(" "))));
        return answers;
    }

    /** Adds the answer to a command line, if it asks for one. */
    static void add(List<Answer> answers, List<String> line) {
        String[] args = line.toArray(String[]::new);
        CommandLine gloam = App.commandLine(Run.session(), args).setErr(new PrintWriter(Writer.nullWriter()));
        ParseResult asked = gloam.parseArgs(args);
        while (asked.hasSubcommand()) {
            asked = asked.subcommand();
        }
        if (asked.commandSpec().userObject() instanceof ReportingCommand command
                && !asked.isUsageHelpRequested()) {
            answers.add(new Answer(String.join(" ", line), command.report(Run.session())));
        }
    }
}
