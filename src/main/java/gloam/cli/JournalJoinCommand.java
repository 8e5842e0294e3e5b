package gloam.cli;

import gloam.store.JournalCopies;
import gloam.units.BadInput;
import gloam.units.PlainText;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Puts journals together into a new one. */
final class JournalJoinCommand extends Command {

    private final Cell<List<Path>> files = new Cell<>();

    private final NewJournal out = group(new NewJournal());

    JournalJoinCommand() {
        super("join", "Put journals that were added to in different places together into a new one.",
                "gloam journal join journal.jsonl laptop.jsonl --out joined.jsonl");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("FILE").arity("1..*")
                .type(List.class).auxiliaryTypes(Path.class)
                .converters(Converters.of(Path.class).orElseThrow()).getter(files).setter(files)
                .required(true).description("The journals; short names are those of the first.").build()));
    }

    @Override
    public Integer call() {
        out.check();
        if (files.value().orElseThrow().size() < 2) {
            throw new BadInput("one journal has nothing to be joined with; name two or more (FILE)");
        }
        JournalCopies.Copy copy = JournalCopies.join(files.value().orElseThrow());
        out.write(copy);
        copy.journal().damages().forEach(damage -> err().println("note: " + PlainText.of(damage)));
        out().println("Joined into " + out.file() + ": sheets " + copy.journal().sheets().size() + ".");
        copy.done().forEach(line -> out().println("  " + PlainText.of(line)));
        return App.DONE;
    }
}
