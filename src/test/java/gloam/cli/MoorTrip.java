package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A trip of a week with two wishes and four sheets, and the journal kept on it.
 *
 * @param folder where both are
 */
record MoorTrip(Path folder) {

    /** The trip's film as fitted to one sheet. */
    static final String FITTED = "instant-mono-640 (fitted to 1 sheet)";

    String file() throws IOException {
        return file("");
    }

    /** The trip with lines more; the file is another for each. */
    String file(String more) throws IOException {
        String name = more.isEmpty() ? "trip.yaml" : "trip" + Integer.toHexString(more.hashCode()) + ".yaml";
        return Files.writeString(folder.resolve(name), """
                title: A week on the moor
                sites:
                  - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-11}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80},
                  f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 4
                wishes:
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
                  - {name: South, point: {azimuth-deg: 180, altitude-deg: 40}, tone-at-most-stops: -1,
                     exposure-min: {shortest: 60, longest: 90}}
                """ + more + "\n").toString();
    }

    String journal() {
        return journal("journal.jsonl");
    }

    String journal(String name) {
        return folder.resolve(name).toString();
    }

    /** Adds a sheet of the trip at f/8, towards the pole. */
    void add(String open, String... more) throws IOException {
        addWith(file(), open, more);
    }

    /** The same with one of its files. */
    void addWith(String file, String open, String... more) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", journal(), "--trip", file,
                "--f-number", "8", "--azimuth", "0", "--altitude", "54", "--open", open));
        args.addAll(List.of(more));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
    }

    /** What a command makes of one of its files. */
    static Run ok(String command, String file, List<String> more) {
        List<String> args = new ArrayList<>(List.of(command, "--trip", file));
        args.addAll(more);
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return run;
    }
}
