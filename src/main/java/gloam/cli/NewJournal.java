package gloam.cli;

import gloam.store.JournalCopies;
import gloam.units.BadInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A journal to be made, which is not there yet. */
final class NewJournal extends OptionGroup {

    private final Option<Path> file = option("--out", "FILE", Path.class,
            "The new journal; its name ends in .jsonl.").required();

    Path file() {
        return file.get();
    }

    /** Refuses a name that cannot be had, before anything is read. */
    void check() {
        FromOption.run("--out", () -> JournalCopies.checkName(file()));
        if (Files.exists(file(), LinkOption.NOFOLLOW_LINKS)) {
            throw new BadInput("file \"" + file() + "\" already exists; give another name (--out)");
        }
    }

    void write(JournalCopies.Copy copy) {
        FromOption.run("--out", () ->
                OutputFile.write(file(), copy.content().getBytes(StandardCharsets.UTF_8), false));
    }
}
