package gloam.cli;

import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.store.JournalFile;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine.Option;

/** The journal that is looked at. */
final class JournalOptions {

    @Option(names = "--journal", paramLabel = "FILE", required = true,
            description = "The journal; its name ends in .jsonl.")
    private Path file;

    /** Its file. */
    Path file() {
        return file;
    }

    /** The journal itself; what in it is damaged goes to the notes. */
    Journal read(Consumer<String> notes) {
        Journal journal = FromOption.of("--journal", () -> JournalFile.read(file));
        journal.damages().forEach(notes);
        return journal;
    }

    /** Which of its sheets are meant. */
    static final class Choice {

        @Option(names = "--film", paramLabel = "NAME", defaultValue = "", description = "Only sheets of that film.")
        private String film;

        @Option(names = "--batch", paramLabel = "NAME", defaultValue = "",
                description = "Only sheets of that pack or batch.")
        private String batch;

        List<Entry> of(Journal journal) {
            return journal.sheets().stream()
                    .filter(entry -> film.isEmpty() || entry.exposed().film().equalsIgnoreCase(film))
                    .filter(entry -> batch.isEmpty() || entry.exposed().batch().equalsIgnoreCase(batch)).toList();
        }
    }
}
