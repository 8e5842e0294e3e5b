package gloam.cli;

import gloam.journal.Entry;
import gloam.journal.Outcome;
import gloam.report.JournalAddedReport;
import gloam.report.Report;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.units.BadInput;
import gloam.units.Range;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Adds a sheet to the journal, or a later word on one. */
final class JournalAddCommand extends ReportingCommand {

    private static final Outcome UNKNOWN =
            new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of());
    private static final Range NOTE = new Range("length of the note", 0, 400, "characters");

    private final JournalOptions journal = group(new JournalOptions());

    private final Option<String> corrects = option("--corrects", "ENTRY", String.class,
            "The entry this one takes the place of; what is not given stays.");

    private final Option<Boolean> withdraw = flag("--withdraw", "Take the corrected sheet out altogether.");

    private final SheetOptions sheet = group(new SheetOptions());

    private final OutcomeOptions outcome = group(new OutcomeOptions());

    private final Option<String> note = option("--note", "TEXT", String.class, "Whatever else is worth knowing.");

    JournalAddCommand(Session session) {
        super(session, "add",
                "Add a sheet to the journal, or a later word on one. Asks, on a terminal, where "
                + "nothing is said.",
                "gloam journal add --journal journal.jsonl --trip trip.yaml --plan plan.json --sheet 3 --tone dark --kept");
    }

    @Override
    Report report(Session session) {
        if (!sheet.given() && !corrects.given()) {
            askedOnTerminal();
        }
        Optional<Entry> before = corrects.value().map(this::corrected);
        if (withdraw.given() && before.isEmpty()) {
            throw new BadInput("--withdraw takes out a sheet; say which with --corrects ENTRY");
        }
        note.value().ifPresent(text -> FromOption.checked("--note", NOTE, text.length()));
        Entry entry = new Entry("", session.now().truncatedTo(ChronoUnit.SECONDS), corrects.value(), withdraw.given(),
                before.filter(known -> !sheet.given()).map(Entry::exposed).orElseGet(() -> sheet.exposed(session)),
                outcome.outcome(before.map(Entry::outcome).orElse(UNKNOWN)),
                note.value().map(String::strip).orElse(before.map(Entry::note).orElse("")));
        refuseFormats(report(session, new JournalFile.Added(entry, false)));
        List<Input> others = inputs();
        others.remove(journal.input());
        FromOption.run("--journal", () -> OutputFile.refuseOver(journal.file(), others));
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
    private void askedOnTerminal() {
        if (!UserConsole.there()) {
            throw new BadInput("when the sheet was open is not said; give --open INSTANT/DURATION, or --plan FILE and "
                    + "--sheet N, or --corrects ENTRY");
        }
        List<String> options = new ArrayList<>();
        line().getParseResult().matchedOptions().forEach(option -> option.originalStringValues()
                .forEach(value -> options.add(option.longestName() + "=" + value)));
        options.addAll(new JournalQuestions(UserConsole::line).asked());
        line().parseArgs(options.toArray(String[]::new));
    }
}
