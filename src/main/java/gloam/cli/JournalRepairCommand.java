package gloam.cli;

import gloam.store.JournalCopies;
import gloam.units.PlainText;
import java.nio.file.Path;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Makes a new journal of one that cannot be read whole. */
final class JournalRepairCommand extends Command {

    private final Cell<Path> file = new Cell<>();

    private final NewJournal out = group(new NewJournal());

    JournalRepairCommand() {
        super("repair", "Write a journal anew without damage, and say what was repaired.",
                "gloam journal repair journal.jsonl --out repaired.jsonl");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("FILE").arity("1")
                .type(Path.class).converters(Converters.of(Path.class).orElseThrow())
                .getter(file).setter(file).required(true).description("The journal; it stays as it is.")
                .build()));
    }

    @Override
    public Integer call() {
        out.check();
        JournalCopies.Copy copy = JournalCopies.repair(file.value().orElseThrow());
        if (copy.done().isEmpty()) {
            out().println("Nothing to repair; nothing was written.");
            return App.DONE;
        }
        out.write(copy);
        copy.journal().damages().forEach(damage -> err().println("note: " + PlainText.of(damage)));
        out().println("Wrote " + out.file() + ": sheets " + copy.journal().sheets().size() + ".");
        copy.done().forEach(line -> out().println("  " + PlainText.of(line)));
        return App.DONE;
    }
}
