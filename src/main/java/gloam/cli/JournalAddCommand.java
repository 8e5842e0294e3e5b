package gloam.cli;

import gloam.journal.Entry;
import gloam.journal.Outcome;
import gloam.report.JournalAddedReport;
import gloam.report.Report;
import gloam.store.JournalFile;
import gloam.units.BadInput;
import gloam.units.Range;
import java.io.Console;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Adds a sheet to the journal, or a later word on one. */
@Command(name = "add", description = "Add a sheet to the journal, or a later word on one. Asks, on a terminal, where "
        + "nothing is said.",
        footer = "gloam journal add --journal journal.jsonl --trip trip.yaml --plan plan.json --sheet 3 --tone dark --kept")
final class JournalAddCommand extends ReportingCommand {

    private static final Outcome UNKNOWN =
            new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of());
    private static final Range NOTE = new Range("length of the note", 0, 400, "characters");

    @Spec
    private CommandSpec spec;

    @Mixin
    private JournalOptions journal;

    @Option(names = "--corrects", paramLabel = "ENTRY",
            description = "The entry this one takes the place of; what is not given stays.")
    private Optional<String> corrects;

    @Option(names = "--withdraw", description = "Take the corrected sheet out altogether.")
    private boolean withdraw;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private OutcomeOptions outcome;

    @Option(names = "--note", paramLabel = "TEXT", description = "Whatever else is worth knowing.")
    private Optional<String> note;

    JournalAddCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        if (!sheet.given() && corrects.isEmpty()) {
            askedOnTerminal(System.console());
        }
        Optional<Entry> before = corrects.map(this::corrected);
        if (withdraw && before.isEmpty()) {
            throw new BadInput("--withdraw takes out a sheet; say which with --corrects ENTRY");
        }
        note.ifPresent(text -> FromOption.checked("--note", NOTE, text.length()));
        Entry entry = new Entry("", session.now().truncatedTo(ChronoUnit.SECONDS), corrects, withdraw,
                before.filter(known -> !sheet.given()).map(Entry::exposed).orElseGet(() -> sheet.exposed(session)),
                outcome.outcome(before.map(Entry::outcome).orElse(UNKNOWN)),
                note.map(String::strip).orElse(before.map(Entry::note).orElse("")));
        refuseFormats(report(session, new JournalFile.Added(entry, false)));
        return report(session, FromOption.of("--journal", () -> JournalFile.add(journal.file(), entry)));
    }

    private Report report(Session session, JournalFile.Added added) {
        return JournalAddedReport.of(journal.file().toString(), added.entry(), added.already(), session.now());
    }

    private Entry corrected(String id) {
        return journal.read(this::note).sheet(id).orElseThrow(() ->
                new BadInput("the journal has no entry \"" + id + "\" to correct (--corrects)"));
    }

    /** Takes the answers as if they had been given as options. */
    private void askedOnTerminal(Console console) {
        if (console == null) {
            throw new BadInput("when the sheet was open is not said; give --open INSTANT/DURATION, or --plan FILE and "
                    + "--sheet N, or --corrects ENTRY");
        }
        List<String> options = new ArrayList<>();
        spec.commandLine().getParseResult().matchedOptions().forEach(option -> option.originalStringValues()
                .forEach(value -> options.add(option.longestName() + "=" + value)));
        options.addAll(new JournalQuestions(console::readLine).asked());
        spec.commandLine().parseArgs(options.toArray(String[]::new));
    }
}
