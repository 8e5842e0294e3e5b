package gloam.store;

import gloam.journal.Journal;
import gloam.units.BadInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The journal that a trip names. It is read when it is wanted, so that what needs none of it stays quick.
 *
 * @param where where the trip names it, such as {@code trip.yaml:12:10 journal}
 * @param file  the file, which counts as read by the option that named the trip
 */
public record TripJournal(String where, Path file) {

    /** The journal named at an item. */
    static TripJournal named(Item item) {
        Source source = Source.named(item);
        JournalFile.checkName(source.path());
        return new TripJournal(item.where().toString(), source.file());
    }

    /** Whether there is a file of that name yet; the first sheet added makes it. */
    public boolean begun() {
        return Files.exists(file);
    }

    /**
     * The journal; empty before the first sheet.
     *
     * @throws BadInput naming the place in the trip when the file cannot be read
     */
    public Optional<Journal> read() {
        try {
            return begun() ? Optional.of(JournalFile.read(file)) : Optional.empty();
        } catch (BadInput unreadable) {
            throw new BadInput(unreadable.problems().stream().map(problem -> where + ": " + problem)
                    .toList());
        }
    }
}
