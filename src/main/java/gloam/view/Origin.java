package gloam.view;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What an answer comes from, as pages and drawings name it.
 *
 * @param program the program's name and version
 * @param files   names of the files it was asked with
 */
public record Origin(String program, List<String> files) {

    /** Letters of file names that have room on a drawing. */
    private static final int LETTERS = 36;

    /** Copies the list. */
    public Origin {
        files = List.copyOf(files);
    }

    /** The line under pages and drawings: Gloam 1.0, trip.yaml, made Fri 2027-01-15 11:00 (UTC+01:00). */
    String made(OffsetDateTime at) {
        List<String> names = TextWidth.wrapped(String.join(", ", files), LETTERS);
        return Wording.title(program) + (files.isEmpty() ? "" : ", " + names.get(0)
                + (names.size() > 1 ? "…" : "")) + ", made " + Wording.date(at.toLocalDate()) + " "
                + Wording.minuteBefore(at) + " (" + Wording.offset(at) + ")";
    }
}
