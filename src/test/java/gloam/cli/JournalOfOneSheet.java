package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A journal of one sheet, to which later words are added. */
abstract class JournalOfOneSheet {

    static final String[] SHEET = {"--film", "instant-mono-640", "--sky-mag-arcsec2", "21.4", "--f-number",
            "11",
        "--focal-length", "120", "--azimuth", "180", "--altitude", "45", "--batch", "A", "--temperature", "9",
        "--open", "2027-01-10T20:00Z/2h"};
    static final String[] COMPUTED = {"--film", "instant-mono-640", "--place", "41,-2,1000", "--zone", "UTC",
        "--f-number", "8", "--azimuth", "0", "--altitude", "41", "--open", "2027-01-10T20:00Z/2h"};

    @TempDir
    Path folder;

    @BeforeEach
    void aSheet() {
        ok(add(SHEET));
    }

    Run add(String... options) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", file().toString()));
        args.addAll(Arrays.stream(options).map(option -> option.replace('_', ' ')).toList());
        return Run.of(args);
    }

    Run correct(String... options) {
        return corrects("1", options);
    }

    Run correctSecond(String... options) {
        return corrects("2", options);
    }

    Run corrects(String entry, String... options) {
        List<String> args = new ArrayList<>(List.of("--corrects", entry));
        args.addAll(Arrays.asList(options));
        return add(args.toArray(String[]::new));
    }

    Path file() {
        return folder.resolve("journal.jsonl");
    }

    List<String> lines() throws IOException {
        return Files.readAllLines(file());
    }

    JsonNode sheets() throws IOException {
        return new ObjectMapper().readTree(ok(Run.of("journal", "list", "--journal", file().toString(),
                "--format",
                "json"))).get("sheets");
    }

    JsonNode sheet() throws IOException {
        return sheets().get(0);
    }

    static String ok(Run run) {
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    static void assertRefused(String part, Run run) {
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(part), run.err());
    }
}
