package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that is read is never written; one that is written keeps its rights. */
class WrittenFilesTest {

    private static final String SKY = "--sky-mag-arcsec2 21 --f-number 11 --focal-length 120";

    @TempDir
    private Path folder;

    @BeforeEach
    void fillTheFolder() throws Exception {
        Path demo = Path.of("demo-data");
        Files.copy(demo.resolve("skyline-loma.csv"), folder.resolve("skyline.svg"));
        Files.copy(demo.resolve("journal.jsonl"), folder.resolve("journal.jsonl"));
        Files.copy(Path.of("src/main/resources/gloam/films/negative-slow-25.json"),
                folder.resolve("film.json"));
        Files.writeString(folder.resolve("forecast.txt"), "TAF LEZG 081100Z 0812/0912 00000KT CAVOK\n");
        Files.writeString(folder.resolve("law.txt"), "metered_s,corrected_s\n1,1\n100,300\n");
        Files.writeString(folder.resolve("nights.json"),
                "{\"from\": \"2027-02-08\", \"to\": \"2027-02-08\"}");
        Files.writeString(folder.resolve("preview.json"),
                "{\"f-number\": 2.8, \"iso\": 3200, \"exposure-s\": 15}");
        Files.writeString(folder.resolve("trip.json"), """
                {"sites": [{"name": "S", "latitude-deg": 41, "longitude-deg": -2, "height-m": 300, "zone": "UTC", "skyline": "skyline.svg"}],
                 "nights": "nights.json", "preview": "preview.json", "forecast": "forecast.txt", "sheets": 1, "film": "film.json",
                 "camera": {"name": "C", "focal-length-mm": 120, "frame-mm": {"width": 80, "height": 80}, "f-numbers": [11]},
                 "wishes": [{"name": "W", "point": {"azimuth-deg": 0, "altitude-deg": 41}, "exposure-min": {"shortest": 20, "longest": 30}}]}
                """);
        Files.copy(folder.resolve("trip.json"), folder.resolve("trip.jsonl"));
        Run plan = Run.of("plan", "--trip", folder + "/trip.json", "--out", folder + "/plan.json");
        assertEquals(0, plan.exit(), plan.err());
        Files.createSymbolicLink(folder.resolve("link.json"), Path.of("trip.json"));
        Files.createSymbolicLink(folder.resolve("again.json"), Path.of("link.json"));
        Files.createSymbolicLink(folder.resolve("journal.json"), Path.of("journal.jsonl"));
        Files.createLink(folder.resolve("hard.json"), folder.resolve("trip.json"));
        Files.createDirectory(folder.resolve("inner"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check --trip @/trip.json --out @/trip.json",
            "check --trip @/trip.json --out @/inner/.././trip.json",
        "check --trip @/trip.json --out @/link.json", "check --trip @/again.json --out @/trip.json",
        "check --trip @/trip.json --out @/hard.json",
        "plan --trip @/trip.json --out @/inner/a.txt --out @/skyline.svg",
        "check --trip @/trip.json --out @/forecast.txt", "nights --trip @/trip.json --out @/nights.json",
        "check --trip @/trip.json --out @/preview.json", "plan --trip @/trip.json --out @/film.json",
        "expose --film @/film.json " + SKY + " --out @/film.json",
        "expose --iso 100 --reciprocity table:@/law.txt " + SKY + " --out @/law.txt",
        "journal list --journal @/journal.jsonl --out @/journal.json",
        "plan --trip @/trip.json --journal @/journal.jsonl --out @/journal.json",
        "journal add --journal @/j.jsonl --trip @/trip.json --plan @/plan.json --sheet 1 --out @/plan.json"})
    void aFileThatIsReadIsNeverWritten(String line) throws IOException {
        Map<Path, String> before = contents();
        Run run = Run.of(Arrays.stream(line.replace("@", folder.toString()).split(" ")).toList());
        assertEquals(2, run.exit(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().matches("(note: .*\n)?file \"[^\"]+\" cannot be written: it is read by this "
                + "command\\. Choose another place "
                + "\\(--(out|journal)\\)\nSee gloam [a-z ]+ --help\\.\n"), run.err());
        assertEquals(before, contents());
    }

    /** A journal that a trip names may be added to, a trip may not. */
    @Test
    void aTripIsNoJournal() throws IOException {
        Map<Path, String> before = contents();
        Run run = Run.of("journal add --journal @/trip.jsonl --trip @/trip.jsonl --plan @/plan.json --sheet 1"
                .replace("@", folder.toString()).split(" "));
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().endsWith(folder + "/trip.jsonl is no journal: none of its lines is an entry. "
                + "Name another file. (--journal)\nSee gloam journal add --help.\n"), run.err());
        assertEquals(before, contents());
    }

    @Test
    void whatIsPipedInIsNotWrittenEither() throws Exception {
        Map<Path, String> before = contents();
        Shell shell = Shell.in(folder, "gloam check --trip - --out trip.json < trip.json");
        assertEquals(2, shell.exit(), shell.out());
        assertTrue(shell.err().contains("it is read by this command"), shell.err());
        assertEquals(before, contents());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "rw-rw-rw-", "r--r-----", "rwxr-x--x"})
    void rightsOfAFileWrittenOverAreKept(String rights) throws IOException {
        Path old = Files.writeString(folder.resolve("old.txt"), "old");
        Files.setPosixFilePermissions(old, PosixFilePermissions.fromString(rights));
        assertEquals(0, Run.of("check", "--trip", folder + "/trip.json", "--out", old.toString()).exit());
        assertTrue(Files.readString(old).startsWith("trip.json"));
        assertEquals(rights, PosixFilePermissions.toString(Files.getPosixFilePermissions(old)));
    }

    /** POSIX, open(): the rights of a new file are those asked for less the mask. */
    @ParameterizedTest
    @ValueSource(strings = {"022 rw-r--r--", "077 rw-------", "002 rw-rw-r--"})
    void aNewFileHasTheRightsThatTheMaskLeaves(String maskAndRights) throws Exception {
        String[] parts = maskAndRights.split(" ");
        assertEquals(0, Shell.in(folder, "umask " + parts[0] + "; gloam check --trip trip.json --out new.txt")
                .exit());
        assertEquals(parts[1], PosixFilePermissions.toString(
                Files.getPosixFilePermissions(folder.resolve("new.txt"))));
    }

    /** 255 bytes is the longest name that Linux's file systems hold (limits.h, NAME_MAX). */
    @Test
    void aNameMayBeAsLongAsTheFileSystemsLongest() throws IOException {
        Path longest = folder.resolve("x".repeat(251) + ".txt");
        assertEquals(0, Run.of("check", "--trip", folder + "/trip.json", "--out", longest.toString()).exit());
        assertTrue(Files.readString(longest).startsWith("trip.json"));
        Files.delete(longest);
    }

    @Test
    void whatAKilledRunLeftBlocksNobody() throws IOException {
        Path left = Files.writeString(folder.resolve(".new.txt." + ProcessHandle.current().pid() + ".part"),
                "left");
        assertEquals(0, Run.of("check", "--trip", folder + "/trip.json", "--out", folder + "/new.txt")
                .exit());
        assertEquals("left", Files.readString(left));
    }

    private Map<Path, String> contents() throws IOException {
        Map<Path, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(file, Files.readString(file));
            }
        }
        return contents;
    }
}
