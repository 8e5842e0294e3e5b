package gloam.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what a user probably meant by a word that is not known. */
public final class Nearest {

    private static final int LONGEST_COMPARED = 64;
    private static final int SHORTEST_BEGINNING = 3;

    private Nearest() {
    }

    /**
     * The nearest known word, if it is near enough to be meant: a beginning, or a few slips of the keyboard.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String asked = word.toLowerCase(Locale.ROOT);
        if (asked.length() > LONGEST_COMPARED) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> slips(asked, candidate) <= allowedSlips(asked))
                .min(Comparator.<String>comparingInt(candidate -> slips(asked, candidate))
                        .thenComparing(Comparator.naturalOrder()))
                .or(() -> beginning(asked, known));
    }

    /** The question whether the nearest known word was meant, to stand after a semicolon. */
    public static Optional<String> question(String word, Collection<String> known) {
        return to(word, known).map(nearest -> "did you mean " + nearest + "?");
    }

    /** The same as a sentence of its own. */
    public static Optional<String> sentence(String word, Collection<String> known) {
        return to(word, known).map(nearest -> "Did you mean " + nearest + "?");
    }

    /** The sentence that offers the nearest known word, or else lists all of them. */
    public static String hint(String word, Collection<String> known) {
        return sentence(word, known).orElseGet(() -> "Known here: " + String.join(", ", known) + ".");
    }

    private static Optional<String> beginning(String asked, Collection<String> known) {
        return known.stream().filter(candidate -> asked.length() >= SHORTEST_BEGINNING
                && candidate.toLowerCase(Locale.ROOT).startsWith(asked)).sorted().findFirst();
    }

    private static int allowedSlips(String asked) {
        return Math.max(1, asked.length() / 3);
    }

    private static int slips(String asked, String candidate) {
        return distance(asked, candidate.toLowerCase(Locale.ROOT));
    }

    /** Insertions, deletions, substitutions and swaps of neighbours that lead from one word to the other. */
    static int distance(String from, String to) {
        int[] beforeLast = new int[to.length() + 1];
        int[] last = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], row[j - 1]));
                if (swapped(from, i, to, j)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[to.length()];
    }

    private static boolean swapped(String from, int i, String to, int j) {
        return i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
    }
}
