package gloam.store;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import gloam.units.BadInput;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A process that adds numbered entries to a journal and says of each when it is in; it is there to be killed.
 */
final class JournalWriter {

    private JournalWriter() {
    }

    /**
     * Arguments: the journal, the writer's name, the first number and the last; and a field, if the first
     * sheet is to be corrected in that field and no sheet added.
     */
    public static void main(String[] args) {
        Entry entry = Sheets.steady("", Films.print(640, Reciprocity.none()), 300, 600,
                Sheets.judged(ToneWord.DARK));
        for (int number = Integer.parseInt(args[2]); number <= Integer.parseInt(args[3]); number++) {
            try {
                String word = args[1] + " " + number;
                if (args.length > 4) {
                    JournalFile.correct(Path.of(args[0]), "1", last -> corrected(last, args[4], word));
                } else {
                    JournalFile.add(Path.of(args[0]), new Entry(Instant.EPOCH, entry.exposed(),
                            entry.outcome(), word, Optional.empty()));
                }
            } catch (BadInput refused) {
                System.out.println(refused.getMessage());
                System.exit(2);
            }
            System.out.println(number);
        }
    }

    private static Entry corrected(Entry last, String field, String word) {
        return new Entry(last.id(), last.identity(), Instant.EPOCH, false, last.exposed(), last.outcome(),
                field.equals("note") ? word : last.note(),
                field.equals("wish") ? Optional.of(word) : last.wish(), last.plannedToneStops(),
                field.equals("picture") ? Optional.of(word) : last.picture());
    }
}
