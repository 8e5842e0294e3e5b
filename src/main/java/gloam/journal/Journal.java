package gloam.journal;

import gloam.units.Interval;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A journal as read.
 *
 * @param lastWords the last entry about every sheet, withdrawn or not, under the name of its first entry and
 *                   in the order of those
 * @param damages   what could not be read or is inconsistent, a line each
 * @param firstIds  the name of every entry, with that of the first entry about the same sheet
 */
public record Journal(List<Entry> lastWords, List<String> damages, Map<String, String> firstIds) {

    /** Copies the lists. */
    public Journal {
        lastWords = List.copyOf(lastWords);
        damages = List.copyOf(damages);
        firstIds = Map.copyOf(firstIds);
    }

    /** A journal of entries, given in the order written. */
    public static Journal of(List<Entry> entries, List<String> damages) {
        Map<String, String> firstIds = new LinkedHashMap<>();
        Map<String, Entry> last = new LinkedHashMap<>();
        List<String> misfits = new ArrayList<>(damages);
        for (Entry entry : entries) {
            String first = entry.corrects().map(firstIds::get).orElse(entry.id());
            boolean unknown = entry.corrects().isPresent() && !firstIds.containsKey(entry.corrects().get());
            if (unknown) {
                misfits.add("entry " + entry.id() + " corrects entry " + entry.corrects().get()
                        + ", which is not before it; it is left out");
            } else if (firstIds.putIfAbsent(entry.id(), first) != null) {
                misfits.add("entry " + entry.id() + " comes a second time; the second is left out");
            } else {
                last.put(first, entry.named(first));
            }
        }
        return new Journal(List.copyOf(last.values()), misfits, firstIds);
    }

    /** The sheets that were not withdrawn. */
    public List<Entry> sheets() {
        return lastWords.stream().filter(entry -> !entry.withdrawn()).toList();
    }

    /** The last entry about the sheet of an entry, withdrawn or not; empty if there is no such entry. */
    public Optional<Entry> lastWord(String id) {
        return lastWords.stream().filter(sheet -> sheet.id().equals(firstIds.get(id))).findFirst();
    }

    /**
     * The last entry about the sheet that was open for a wish at some moment of a span, withdrawn or not: a
     * camera exposes one sheet at a time, whatever was written of it since.
     */
    public Optional<Entry> exposedFor(String wish, Interval open) {
        return lastWords.stream().filter(sheet -> sheet.wish().filter(wish::equals).isPresent())
                .filter(sheet -> sheet.exposed().openings().stream()
                        .anyMatch(opening -> opening.open().intersect(open).isPresent()))
                .findFirst();
    }

    /** The sheets of a film, of one batch of it unless that is empty. */
    public List<Entry> of(String film, String batch) {
        return sheets().stream().filter(entry -> entry.exposed().film().equalsIgnoreCase(film))
                .filter(entry -> batch.isEmpty() || entry.exposed().batch().equalsIgnoreCase(batch)).toList();
    }
}
