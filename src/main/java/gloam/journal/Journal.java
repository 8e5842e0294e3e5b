package gloam.journal;

import gloam.units.Interval;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A journal as read.
 *
 * @param lastWords every sheet as last corrected, withdrawn or not, in the order in which they were written
 * @param damages   what could not be read or is inconsistent, a line each
 * @param names     every name that a sheet can be called by, with its short name
 * @param packs     the packs noted, each once
 */
public record Journal(List<Entry> lastWords, List<String> damages, Map<String, String> names,
        List<Pack> packs) {

    private static final int LEAST_LETTERS = 4;

    /** Copies the lists. */
    public Journal {
        lastWords = List.copyOf(lastWords);
        damages = List.copyOf(damages);
        names = Map.copyOf(names);
        packs = List.copyOf(packs);
    }

    /** A journal of sheets called by their short names. */
    public static Journal of(List<Entry> sheets, List<String> damages) {
        return new Journal(sheets, damages, sheets.stream().map(Entry::id).distinct()
                .collect(Collectors.toMap(Function.identity(), Function.identity())), List.of());
    }

    /** The sheets that were not withdrawn. */
    public List<Entry> sheets() {
        return lastWords.stream().filter(entry -> !entry.withdrawn()).toList();
    }

    /** The names of the films of these, each once. */
    public List<String> films() {
        return sheets().stream().map(entry -> entry.exposed().film()).distinct().toList();
    }

    /**
     * The sheet of a short name, of a name in the file or of its first letters, withdrawn or not; empty if
     * there is none, or more than one.
     */
    public Optional<Entry> lastWord(String name) {
        List<String> meant = names.containsKey(name) ? List.of(names.get(name))
                : names.keySet().stream().filter(full -> name.length() >= LEAST_LETTERS
                && full.startsWith(name)).map(names::get).distinct().toList();
        return lastWords.stream().filter(sheet -> meant.size() == 1 && sheet.id().equals(meant.get(0)))
                .findFirst();
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
