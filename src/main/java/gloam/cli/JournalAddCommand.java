package gloam.cli;

import gloam.ephemeris.OutsideCoverage;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Outcome;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.store.PageFile;
import gloam.store.PlanFile.PlannedSheet;
import gloam.units.BadInput;
import gloam.view.JournalAddedReport;
import gloam.view.JournalPageReport;
import gloam.view.JournalPageReport.HandedRow;
import gloam.view.JournalPageReport.LeftRow;
import gloam.view.Report;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import picocli.CommandLine.ITypeConverter;

/** Adds a sheet to the journal, or a later word on one. */
final class JournalAddCommand extends ReportingCommand {

    private static final Outcome UNKNOWN =
            new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of());

    private final JournalOptions journal = group(new JournalOptions());

    private final Option<String> corrects = option("--corrects", "ENTRY", String.class,
            "The entry to correct; what is not given is kept.");

    private final Option<Boolean> withdraw = flag("--withdraw",
            "Remove the corrected sheet from the journal.");

    private final Option<List<Clearable>> cleared = repeated("--clear", "WHAT", Clearable.class,
            "Remove what the entry says: " + String.join(", ", Clearable.words()) + ".")
            .readBy(new What()).completedBy(Clearable.words()).withCommas();

    private final Option<Input> fromPage = input("--from-page", "FILE",
            "What the page of a timetable hands over: its sheets; needs --trip.");

    private final Option<LocalDate> night = option("--night", "DATE", LocalDate.class,
            "With --plan alone: evening of the night (default: the last begun).");

    private final SheetOptions sheet = group(new SheetOptions());

    private final OutcomeOptions outcome = group(new OutcomeOptions());

    private final RemarkOptions remarks = group(new RemarkOptions());

    JournalAddCommand(Session session) {
        super(session, "add",
                "Add a sheet to the journal, or correct one. On a terminal it asks for what is "
                + "missing.",
                "gloam journal add --journal journal.jsonl --trip trip.yaml --plan plan.json --sheet 3 "
                + "--tone dark");
    }

    @Override
    Report report(Session session) {
        refuseWithoutCorrects();
        if (fromPage.given()) {
            return handedOver(session, FromOption.of("--from-page", () -> PageFile.read(fromPage.get())));
        }
        if (sheet.ofANight() && !corrects.given()) {
            return walked(session);
        }
        if (night.given()) {
            throw new BadInput("--night is for all sheets of a night; give --plan FILE without --sheet");
        }
        if (sheet.given() || corrects.given()) {
            return added(session);
        }
        Questions questions = new Questions(session.terminal().orElseThrow(() -> new BadInput(
                "no exposure given; use --open INSTANT/DURATION, or --plan FILE and --sheet N, or "
                + "--corrects ENTRY")), this);
        JournalQuestions.ask(questions, sheet, outcome);
        return questions.result(() -> {
            try {
                return added(session);
            } catch (OutsideCoverage beyond) {
                throw new BadInput(beyond.getMessage() + " (--open)");
            }
        });
    }

    /** Adds the sheets that a page hands over; those that the journal has already stay as they are. */
    private Report handedOver(Session session, PageFile.HandedOver page) {
        sheet.refuseOneSheet("--from-page");
        if (corrects.given() || anyGiven("--note") || outcome.given()) {
            throw new BadInput("--from-page adds several sheets; say afterwards with --corrects ENTRY what "
                    + "holds of one");
        }
        List<Entry> entries = page.exposed().stream().map(done -> new Entry("", "",
                session.now().truncatedTo(ChronoUnit.SECONDS), false, sheet.exposed(session,
                Optional.empty(), Optional.of(done.sheet()), this::note), UNKNOWN, done.note(),
                Optional.of(done.sheet().wish()), done.sheet().toneStops(), Optional.empty())).toList();
        refuseFormats(pageReport(session, page, entries.stream()
                .map(entry -> new JournalFile.Added(entry, false, Optional.empty())).toList()));
        Optional<Journal> before = Optional.of(journal.file()).filter(Files::exists)
                .map(file -> journal.read(this::note));
        return pageReport(session, page, entries.stream().map(entry -> before
                .flatMap(known -> known.exposedFor(entry.wish().orElseThrow(),
                        entry.exposed().whole()))
                .map(there -> new JournalFile.Added(there, true, Optional.of(entry)))
                .orElseGet(() -> add(entry))).toList());
    }

    /** Adds the sheets of a planned night as they are answered; those in the journal are not asked for. */
    private Report walked(Session session) {
        Terminal terminal = session.answers().orElseThrow(() -> new BadInput(
                "--plan FILE and --sheet N go together; give both, or answer on a terminal"));
        if (!sheet.anyGiven("--trip")) {
            new Questions(terminal, this).ask(JournalQuestions.trip(sheet));
        }
        sheet.trip();
        List<PlannedSheet> all = NightWalk.night(sheet.nights(), night.value(), session.now());
        refuseFormats(JournalPageReport.of(journal.file().toString(), List.of(), List.of(), session.now()));
        Map<PlannedSheet, Entry> there = new LinkedHashMap<>();
        if (Files.exists(journal.file())) {
            Journal known = journal.read(this::note);
            all.forEach(planned -> known.exposedFor(planned.wish(), planned.open())
                    .ifPresent(entry -> there.put(planned, entry)));
        }
        there.forEach((planned, entry) -> note("sheet " + planned.sheet() + ", " + planned.wish()
                + ", is in the journal as entry " + entry.id()));
        NightWalk.Walked<JournalFile.Added> walked = new NightWalk(terminal, this, sheet).through(
                all.stream().filter(planned -> !there.containsKey(planned)).toList(),
                () -> add(entry(session, Optional.empty(), this::note)));
        if (walked.added().isEmpty() && !walked.problems().isEmpty()) {
            throw new BadInput(walked.problems());
        }
        walked.problems().forEach(this::note);
        return JournalPageReport.of(journal.file().toString(), walked.added().entrySet().stream()
                .map(one -> HandedRow.of(one.getKey().sheet(), one.getKey().wish(), one.getValue().entry(),
                        one.getValue().already(), Optional.empty())).toList(), walked.left().stream()
                .map(planned -> new LeftRow(planned.sheet(), planned.wish(), "not exposed", "")).toList(),
                session.now());
    }

    private JournalFile.Added add(Entry entry) {
        return FromOption.of("--journal", () -> JournalFile.add(journal.file(), entry));
    }

    private Report pageReport(Session session, PageFile.HandedOver page, List<JournalFile.Added> added) {
        return JournalPageReport.of(journal.file().toString(), IntStream.range(0, added.size())
                .mapToObj(i -> HandedRow.of(page.exposed().get(i).sheet().sheet(),
                        page.exposed().get(i).sheet().wish(), added.get(i).entry(), added.get(i).already(),
                        added.get(i).before()))
                        .toList(),
                page.left().stream().map(left -> new LeftRow(left.sheet(), left.wish(),
                        left.why(), left.note().orElse(""))).toList(), session.now());
    }

    private Report added(Session session) {
        remarks.check();
        Optional<Entry> before = corrects.value().map(this::corrected);
        Entry entry = entry(session, before, this::note);
        refuseFormats(report(session, new JournalFile.Added(entry, false, before)));
        return report(session, FromOption.of("--journal", () -> before.isEmpty()
                ? JournalFile.add(journal.file(), entry)
                : JournalFile.correct(journal.file(), before.get().identity(),
                last -> entry(session, Optional.of(last), doubt -> { }))));
    }

    /** The new entry; in a correction what is neither given nor cleared is that of the last word. */
    private Entry entry(Session session, Optional<Entry> before, Consumer<String> notes) {
        Optional<Correction> correction = before.map(last -> new Correction(last, cleared.get()));
        Optional<Entry> kept = correction.map(Correction::kept);
        if (kept.filter(Entry::withdrawn).isPresent() && !withdraw.given()) {
            throw new BadInput("that sheet was withdrawn; bring it back with --clear withdraw (--corrects)");
        }
        Entry said = new Entry(before.map(Entry::id).orElse(""), before.map(Entry::identity).orElse(""),
                session.now().truncatedTo(ChronoUnit.SECONDS), withdraw.given(),
                sheet.exposed(session, correction, sheet.planned(), notes),
                outcome.outcome(kept.map(Entry::outcome).orElse(UNKNOWN)),
                kept.map(Entry::note).orElse(""), kept.flatMap(Entry::wish), plannedTone(before),
                kept.flatMap(Entry::picture));
        return remarks.remarked(said, sheet.planned().map(PlannedSheet::wish), journal.file());
    }

    private OptionalDouble plannedTone(Optional<Entry> before) {
        return sheet.planned().map(PlannedSheet::toneStops)
                .or(() -> before.map(Entry::plannedToneStops)).orElse(OptionalDouble.empty());
    }

    private Report report(Session session, JournalFile.Added added) {
        return JournalAddedReport.of(journal.file().toString(), added.entry(), added.already(),
                added.before(), session.now());
    }

    private Entry corrected(String id) {
        return journal.read(this::note).lastWord(id).orElseThrow(() ->
                new BadInput("the journal has no entry \"" + id + "\" to correct (--corrects)"));
    }

    private void refuseWithoutCorrects() {
        if (withdraw.given() && !corrects.given()) {
            throw new BadInput("--withdraw takes out a sheet; say which with --corrects ENTRY");
        }
        if (cleared.given() && !corrects.given()) {
            throw new BadInput("--clear takes back what an entry says; say which with --corrects ENTRY");
        }
        for (Clearable what : cleared.get()) {
            what.options().stream().filter(this::anyGiven).findFirst().ifPresent(option -> {
                throw new BadInput(option + " gives what --clear takes back; leave out one of the two");
            });
        }
    }

    /** A word for what can be taken back. */
    private static final class What implements ITypeConverter<Clearable> {

        @Override
        public Clearable convert(String text) {
            return Clearable.all().stream().filter(what -> what.word().equalsIgnoreCase(text.strip()))
                    .findFirst().orElseThrow(() -> OutcomeOptions.unknown(text, Clearable.words()));
        }
    }
}
