package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files made to break a reader: every command that reads one refuses it soon, in little memory and in a line.
 */
class MonstrousFilesTest {

    private static final int HUGE = 50_000_000;
    private static final String HUGE_NAME = "50 MB of ";
    /** The largest file that is read at all. */
    private static final int LARGE = (1 << 20) - 100;
    /**
     * In all, not at once: the scanner of YAML copies what it looks ahead over at every KiB, 2 GiB for a word
     * of 1 MiB, and each copy is garbage at the next.
     */
    private static final long MOST_ALLOCATED_BYTES = 3L << 30;
    /**
     * A file of the largest size is read in a second; the machine may be busy with something else for
     * minutes.
     */
    private static final Duration MOST = Duration.ofMinutes(10);
    private static final long MOST_CPU_S = 20;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static final String EXPOSE = "expose --sky-mag-arcsec2 21 --f-number 11 ";
    private static final String SKY = "sky --lat 41 --lon -2 --height 0 --zone UTC --at 2027-02-10T22:00Z ";
    private static final List<String> READERS = List.of("check --trip @.yaml", "check --trip @.json",
            EXPOSE + "--film @.yaml",
            EXPOSE + "--film @.json", EXPOSE + "--iso 100 --reciprocity table:@.csv",
            "check --trip skyline.yaml",
            "check --trip forecast.yaml", "check --trip taf.yaml", SKY + "--ephemeris @.405",
            SKY + "--earth-orientation @.all",
            "journal add --journal new.jsonl --sky-mag-arcsec2 21 --trip sound.yaml "
            + "--plan @.json --sheet 1");

    private static final Map<String, Supplier<byte[]>> MONSTERS = new TreeMap<>(Map.ofEntries(
            Map.entry("nothing", () -> new byte[0]),
            Map.entry("blanks", () -> repeated(" ", LARGE)),
            Map.entry("line ends", () -> repeated("\n", LARGE)),
            Map.entry("old line ends", () -> repeated("\r", LARGE)),
            Map.entry(HUGE_NAME + "one letter", () -> repeated("a", HUGE)),
            Map.entry(HUGE_NAME + "brackets", () -> repeated("[", HUGE)),
            Map.entry(HUGE_NAME + "lines", () -> repeated("a: 1\n", HUGE)),
            Map.entry("brackets", () -> repeated("[", LARGE)),
            Map.entry("braces", () -> repeated("{\"a\":", LARGE)),
            Map.entry("YAML braces", () -> repeated("{a: ", LARGE)),
            Map.entry("dashes", () -> repeated("- ", LARGE)),
            Map.entry("questions", () -> repeated("? ", LARGE)),
            Map.entry("indents", MonstrousFilesTest::staircase),
            Map.entry("a long word", () -> repeated("a", LARGE)),
            Map.entry("a long number", () -> bytes("[" + "9".repeat(LARGE - 10) + "]")),
            Map.entry("a long key", () -> bytes("a".repeat(LARGE - 10) + ": 1")),
            Map.entry("one key again and again", () -> repeated("a: 1\n", LARGE)),
            Map.entry("many keys", MonstrousFilesTest::manyKeys),
            Map.entry("many items", () -> bytes("sites: [" + "{}, ".repeat(LARGE / 4 - 10) + "{}]")),
            Map.entry("commas", () -> repeated(",", LARGE)),
            Map.entry("quotes", () -> repeated("\"", LARGE)),
            Map.entry("anchors", () -> repeated("&a ", LARGE)),
            Map.entry("aliases that multiply", MonstrousFilesTest::bomb),
            Map.entry("an alias of itself", () -> bytes("a: &a [*a, *a]\n<<: *a\n")),
            Map.entry("tags that make objects", () -> bytes("!!javax.script.ScriptEngineManager "
                    + "[!!java.net.URLClassLoader [[!!java.net.URL [\"http://localhost/\"]]]]\n")),
            Map.entry("types in JSON",
            () -> bytes("{\"@class\": \"java.net.URL\", \"@type\": \"java.net.URL\"}")),
            Map.entry("TAF groups", () -> bytes("TAF 0818/0924 " + "TEMPO 0820/0822 OVC001 ".repeat(40_000))),
            Map.entry("Latin-1", () -> "a: \u00e9\u00e8\n".getBytes(StandardCharsets.ISO_8859_1)),
            Map.entry("UTF-16", () -> "\uFEFFa: 1\n".getBytes(StandardCharsets.UTF_16LE)),
            Map.entry("UTF-32", () -> new byte[] {(byte) 0xff, (byte) 0xfe, 0, 0, 'a', 0, 0, 0}),
            Map.entry("two marks of byte order", () -> bytes("\uFEFF\uFEFFa: 1\n")),
            Map.entry("zeros", () -> new byte[LARGE]),
            Map.entry(HUGE_NAME + "zeros", () -> new byte[HUGE])));

    static final List<String> SOME = List.of("nothing", "brackets", "a long word", "many keys",
            "aliases that multiply", "tags that make objects", "types in JSON", "UTF-16", "zeros");

    @TempDir
    static Path folder;

    static Stream<String> others() {
        return MONSTERS.keySet().stream().filter(name -> !SOME.contains(name));
    }

    @ParameterizedTest
    @FieldSource("SOME")
    void everyReaderRefusesIt(String monster) throws IOException {
        Path file = Files.write(folder.resolve("monster"), MONSTERS.get(monster).get());
        for (String ending : List.of("yaml", "json", "csv", "405", "all", "taf")) {
            Files.deleteIfExists(folder.resolve("monster." + ending));
            Files.createLink(folder.resolve("monster." + ending), file);
        }
        sound("sound.yaml", "");
        sound("skyline.yaml", "skyline: monster.csv");
        sound("forecast.yaml", "forecast: monster.csv");
        sound("taf.yaml", "forecast: monster.taf");
        for (String reader : READERS) {
            String line = reader.replaceAll("@(?=\\.)", folder + "/monster")
                    .replaceAll("(new|sound|skyline|forecast|taf)(?=\\.(yaml|jsonl))", folder + "/$1");
            assertRefused(line);
        }
        Files.delete(file);
    }

    @Tag("search")
    @ParameterizedTest
    @MethodSource("others")
    void everyReaderRefusesTheOthers(String monster) throws IOException {
        everyReaderRefusesIt(monster);
    }

    /** A journal may have 64 MiB; each of its lines is read by itself, and one of these is an entry. */
    @Tag("search")
    @Test
    void aJournalOfFiftyMegabytesIsReadOrToldDamaged() throws IOException {
        for (String line : List.of("{\"gloam-journal\":1}", "{}", "[[[[[[[[[[", "x".repeat(10_000), "\"")) {
            Path journal = afterAnEntry(line + "\n", 500_000);
            long cpu = THREADS.getCurrentThreadCpuTime();
            Run run = Run.of("journal", "list", "--journal", journal.toString());
            assertEquals(0, run.exit(), run.err());
            assertTrue(run.err().contains("j.jsonl:3:"), "the place of a damaged line");
            long cpuS = (THREADS.getCurrentThreadCpuTime() - cpu) / 1_000_000_000;
            assertTrue(cpuS <= MOST_CPU_S, () -> cpuS + " s for 0.5 MB of " + line);
        }
        Path journal = afterAnEntry("x".repeat(100_000) + "\n", HUGE);
        Run run = Run.of("journal", "list", "--journal", journal.toString());
        assertEquals(0, run.exit(), run.err());
        Files.write(journal, repeated("{}\n", 70_000_000));
        assertTrue(Run.of("journal", "list", "--journal", journal.toString()).err()
                .startsWith("cannot read "));
    }

    private Path afterAnEntry(String lines, int bytes) throws IOException {
        Path journal = folder.resolve("j.jsonl");
        Files.writeString(journal, Files.readAllLines(Path.of("demo-data/journal.jsonl")).get(0) + "\n");
        return Files.write(journal, repeated(lines, bytes), StandardOpenOption.APPEND);
    }

    @Test
    void whatIsNoPlainFileIsRefused() throws IOException, InterruptedException {
        Path here = Files.createDirectory(folder.resolve("odd"));
        List<Path> odd = new ArrayList<>(List.of(Files.createDirectory(here.resolve("folder")),
                Files.createSymbolicLink(here.resolve("circle"), here.resolve("circle")),
                Files.createSymbolicLink(here.resolve("endless"), Path.of("/dev/zero"))));
        Path pipe = here.resolve("pipe");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        odd.add(pipe);
        for (Path file : odd) {
            for (String ending : List.of("yaml", "json", "csv", "405", "all", "taf", "jsonl")) {
                Files.deleteIfExists(folder.resolve("monster." + ending));
                Files.createSymbolicLink(folder.resolve("monster." + ending), file);
            }
            sound("sound.yaml", "");
            for (String reader : READERS.stream().filter(line -> line.contains("@")).toList()) {
                assertRefused(reader.replace("@.", folder + "/monster.")
                        .replaceAll("(new|sound)(?=\\.)", folder + "/$1"));
            }
            assertRefused("journal list --journal " + folder + "/monster.jsonl");
            assertRefused("journal add --sky-mag-arcsec2 21 --iso 100 --f-number 11 --open "
                    + "2027-02-08T21:00Z --close "
                    + "2027-02-08T22:00Z --journal " + folder + "/monster.jsonl");
        }
        for (String ending : List.of("yaml", "json", "csv", "405", "all", "taf", "jsonl")) {
            Files.delete(folder.resolve("monster." + ending));
        }
    }

    private static void assertRefused(String line) {
        assertTimeoutPreemptively(MOST, () -> {
            long bytes = THREADS.getCurrentThreadAllocatedBytes();
            long cpu = THREADS.getCurrentThreadCpuTime();
            Run run = Run.of(line.split(" "));
            long allocated = THREADS.getCurrentThreadAllocatedBytes() - bytes;
            long cpuS = (THREADS.getCurrentThreadCpuTime() - cpu) / 1_000_000_000;
            assertEquals(2, run.exit(), () -> line + ": " + run.out() + run.err());
            assertEquals("", run.out());
            assertFalse(run.err().contains("\tat "), run.err());
            run.err().lines().forEach(told -> assertTrue(told.length() < 1000 && !told.isBlank(), told));
            assertTrue(run.err().lines().count() <= 60, run.err());
            assertTrue(allocated <= MOST_ALLOCATED_BYTES, () -> line + " allocated " + (allocated >> 20)
                    + " MiB");
            assertTrue(cpuS <= MOST_CPU_S, () -> line + " took " + cpuS + " s");
        });
    }

    private static void sound(String name, String more) throws IOException {
        String trip = Files.readString(Path.of("demo-data/trip-south.yaml"))
                .replaceAll("(?m)^.*skyline.*$", "");
        String text = more.startsWith("skyline")
                ? trip.replaceFirst("(?m)^( +)height-m:", "$1" + more + "\n$1height-m:") : trip + more + "\n";
        Files.writeString(folder.resolve(name), text);
    }

    private static byte[] repeated(String piece, int length) {
        byte[] one = bytes(piece);
        ByteArrayOutputStream all = new ByteArrayOutputStream(length);
        while (all.size() + one.length <= length) {
            all.writeBytes(one);
        }
        return all.toByteArray();
    }

    private static byte[] staircase() {
        StringBuilder text = new StringBuilder();
        for (int depth = 0; text.length() < LARGE - 2000; depth++) {
            text.append(" ".repeat(depth)).append("a:\n");
        }
        return bytes(text.toString());
    }

    private static byte[] manyKeys() {
        StringBuilder text = new StringBuilder();
        for (int key = 0; text.length() < LARGE - 20; key++) {
            text.append('k').append(key).append(": 1\n");
        }
        return bytes(text.toString());
    }

    /** Each line doubles what the one before means ninefold: 9^20 items, were aliases followed. */
    private static byte[] bomb() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i <= 20; i++) {
            text.append("a").append(i).append(": &a").append(i).append(" [")
                    .append(("*a" + (i - 1) + ", ").repeat(8))
                    .append("*a").append(i - 1).append("]\n");
        }
        return bytes(text.toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
