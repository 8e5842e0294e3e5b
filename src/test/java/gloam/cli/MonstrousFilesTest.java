package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
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

    static final List<String> SOME = List.of("nothing", "brackets", "a long word", "many keys",
            "aliases that multiply", "tags that make objects", "types in JSON", "UTF-16", "zeros");

    @TempDir
    static Path folder;

    static Stream<String> others() {
        return Monsters.ALL.keySet().stream().filter(name -> !SOME.contains(name));
    }

    @ParameterizedTest
    @FieldSource("SOME")
    void everyReaderRefusesIt(String monster) throws IOException {
        Path file = Files.write(folder.resolve("monster"), Monsters.ALL.get(monster).get());
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
        Path journal = afterAnEntry("x".repeat(100_000) + "\n", Monsters.HUGE);
        Run run = Run.of("journal", "list", "--journal", journal.toString());
        assertEquals(0, run.exit(), run.err());
        Files.write(journal, Monsters.repeated("{}\n", 70_000_000));
        assertTrue(Run.of("journal", "list", "--journal", journal.toString()).err()
                .startsWith("cannot read "));
    }

    private Path afterAnEntry(String lines, int bytes) throws IOException {
        Path journal = folder.resolve("j.jsonl");
        Files.writeString(journal, Files.readAllLines(Path.of("demo-data/journal.jsonl")).get(0) + "\n");
        return Files.write(journal, Monsters.repeated(lines, bytes), StandardOpenOption.APPEND);
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
}
