package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {

    @TempDir
    private Path folder;

    @Test
    void replacesAFileAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("plan.txt");
        Files.writeString(file, "an older and much longer plan");
        OutputFile.write(file, "new ± plan\n".getBytes(StandardCharsets.UTF_8));
        assertEquals("new ± plan\n", Files.readString(file));
        assertEquals(1, files());
    }

    @Test
    void writesThroughALinkToItsTarget() throws IOException {
        Path target = Files.writeString(folder.resolve("target.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), target);
        OutputFile.write(link, "new".getBytes(StandardCharsets.UTF_8));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(target));
    }

    @Test
    void aFolderThatIsNotThereIsTheUsersProblem() throws IOException {
        BadInput bad = assertThrows(BadInput.class,
                () -> OutputFile.write(folder.resolve("none").resolve("plan.txt"), new byte[] {1}));
        assertTrue(bad.getMessage().contains("its folder does not exist"), bad.getMessage());
        assertEquals(0, files());
    }

    @Test
    void aFolderIsNoFile() {
        assertThrows(BadInput.class, () -> OutputFile.write(folder, "x".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void filesAndStandardOutputCarryTheSameReport() throws IOException {
        Path text = folder.resolve("check.txt");
        Path json = folder.resolve("check.JSON");
        Run run = Run.of("check", "--trip", "demo-data/trip.yaml", "--out", text.toString(), "--out",
                json.toString());
        assertEquals(0, run.exit());
        assertEquals(run.out(), Files.readString(text));
        assertEquals(Run.of("check", "--trip", "demo-data/trip.yaml", "--format", "json").out(),
                Files.readString(json));
    }

    @Test
    void nothingIsWrittenWhenAnotherFilesFormatIsRefused() {
        Path json = folder.resolve("check.json");
        Run run = Run.of("check", "--trip", "demo-data/trip.yaml", "--out", json.toString(), "--out",
                "check.pdf");
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        assertFalse(Files.exists(json));
    }

    private long files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
