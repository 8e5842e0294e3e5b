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

    static final String[] SECOND = {"--film", "instant-mono-640", "--sky-mag-arcsec2", "21",
        "--f-number", "8", "--open", "2027-01-11T20:00Z/1h"};
    static final String[] THIRD = {"--film", "instant-mono-640", "--sky-mag-arcsec2", "20",
        "--f-number", "8", "--open", "2027-01-12T20:00Z/1h"};

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

    static String[] with(String[] options, String... more) {
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    Path journal(String name, String... lines) throws IOException {
        return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
    }

    static List<String> opened(Path file) throws IOException {
        List<String> opened = new ArrayList<>();
        sheets(file).forEach(sheet -> opened.add(opened(sheet)));
        return opened;
    }

    static String opened(JsonNode sheet) {
        return sheet.get("openAt").asString().substring(0, 16);
    }

    static JsonNode sheets(Path file) throws IOException {
        return new ObjectMapper().readTree(ok(Run.of("journal", "list", "--journal", file.toString(),
                "--format", "json"))).get("sheets");
    }

    static String join(Path joined, Path... files) {
        List<String> args = new ArrayList<>(List.of("journal", "join", "--out", joined.toString()));
        List.of(files).forEach(file -> args.add(file.toString()));
        return ok(Run.of(args));
    }

    static Run addTo(Path file, String... options) {
        List<String> args = new ArrayList<>(List.of("journal", "add", "--journal", file.toString()));
        args.addAll(List.of(options));
        return Run.of(args);
    }
}
