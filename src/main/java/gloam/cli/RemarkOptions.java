package gloam.cli;

import gloam.journal.Entry;
import gloam.store.JournalFile;
import gloam.units.Range;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What else an entry says of a sheet. */
final class RemarkOptions extends OptionGroup {

    /** What of it can be taken back. */
    static final List<Clearable> CLEARABLE = List.of(
            Clearable.ofEntry("note", was -> was.remarked("", was.wish(), was.picture()), "--note"),
            Clearable.ofEntry("wish", was -> was.remarked(was.note(), Optional.empty(), was.picture()),
                    "--wish"),
            Clearable.ofEntry("picture", was -> was.remarked(was.note(), was.wish(), Optional.empty()),
                    "--picture"));

    private static final Range NOTE = new Range("length of the note", 0, 400, "characters");
    private static final Range WISH = new Range("length of the wish's name", 1, 500, "characters");

    private final Option<String> wish = option("--wish", "NAME", String.class,
            "The trip's wish that it serves (default: the plan's).");

    private final Option<Path> picture = option("--picture", "FILE", Path.class,
            "A photo of the sheet; its path is kept from the journal's folder.");

    private final Option<String> note = option("--note", "TEXT", String.class,
            "Anything else worth knowing.");

    /** Refuses a note or a name of a wish that is too long. */
    void check() {
        wish.value().ifPresent(name -> FromOption.checked("--wish", WISH, name.strip().length()));
        note.value().ifPresent(text -> FromOption.checked("--note", NOTE, text.length()));
    }

    /** An entry with what is given; the rest as it says, but for a wish of the plan. */
    Entry remarked(Entry entry, Optional<String> planned, Path journal) {
        return entry.remarked(note.value().map(String::strip).orElse(entry.note()),
                wish.value().map(String::strip).or(() -> planned).or(entry::wish),
                picture.value().map(file -> FromOption.of("--picture", () ->
                        JournalFile.picture(journal, file))).or(entry::picture));
    }
}
