package gloam.cli;

import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Pack;
import gloam.store.Input;
import gloam.store.JournalFile;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** The journal that is looked at. */
final class JournalOptions extends OptionGroup {

    private final Option<Input> file = input("--journal", "FILE", "The journal; its name ends in .jsonl.")
            .required();

    /** Its file. */
    Path file() {
        return file.get().file();
    }

    /** The journal itself; what in it is damaged goes to the notes. */
    Journal read(Consumer<String> notes) {
        Journal journal = FromOption.of("--journal", () -> JournalFile.read(file.get().file()));
        journal.damages().forEach(notes);
        return journal;
    }

    /** Which of its sheets are meant. */
    static final class Choice extends OptionGroup {

        private final Option<String> film = option("--film", "NAME", String.class,
                "Only sheets of that film.")
                .byDefault("");

        private final Option<String> batch = option("--batch", "NAME", String.class,
                "Only sheets of that pack or batch.")
                .byDefault("");

        private final Option<String> wish = option("--wish", "NAME", String.class,
                "Only sheets that serve that wish.")
                .byDefault("");

        /** The packs noted that may be meant. */
        List<Pack> packs(Journal journal) {
            return journal.packs().stream()
                    .filter(pack -> film.get().isEmpty() || pack.film().equalsIgnoreCase(film.get()))
                    .filter(pack -> batch.get().isEmpty() || pack.batch().equalsIgnoreCase(batch.get()))
                    .toList();
        }

        List<Entry> of(Journal journal) {
            return journal.sheets().stream()
                    .filter(entry -> film.get().isEmpty() || entry.exposed().film()
                    .equalsIgnoreCase(film.get()))
                    .filter(entry -> batch.get().isEmpty() || entry.exposed().batch()
                    .equalsIgnoreCase(batch.get()))
                    .filter(entry -> wish.get().isEmpty()
                    || entry.wish().filter(wish.get()::equalsIgnoreCase).isPresent()).toList();
        }
    }
}
