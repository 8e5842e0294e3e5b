package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {

    @TempDir
    Path folder;

    @Test
    void byteOrderMarkIsTakenOff() {
        assertEquals("a: ö😀\n", TextFile.read(Refusals.file(folder, "a.yaml", "\uFEFFa: ö😀\n")));
    }

    @Test
    void otherEncodingsAreRefusedWithThePlace() throws IOException {
        Path file = folder.resolve("a.yaml");
        Files.write(file, new byte[] {'a', ':', ' ', 'b', '\r', '\n', 'c', ':', ' ', (byte) 0xE9, '\n'});
        assertEquals(List.of("a.yaml:2:4: not UTF-8 text. Save the file in UTF-8."), refusal(file));
    }

    @Test
    void characterCutInHalfAtTheEndIsRefused() throws IOException {
        Path file = folder.resolve("a.yaml");
        Files.write(file, new byte[] {'a', (byte) 0xC3});
        assertEquals(List.of("a.yaml:1:2: not UTF-8 text. Save the file in UTF-8."), refusal(file));
    }

    @Test
    void controlCharactersAreRefusedWithThePlace() {
        Path file = Refusals.file(folder, "a.yaml", "a: b\nc: \u001B[31m\n");
        assertEquals(List.of("a.yaml:2:4: control character U+001B. Take it out."), refusal(file));
    }

    @Test
    void hugeFilesAreRefusedWithoutBeingRead() throws IOException {
        Path file = folder.resolve("a.yaml");
        Files.write(file, new byte[50_000_000]);
        assertEquals(List.of("cannot read a.yaml: it is larger than 1024 KiB. Is it the right file?"),
                refusal(file));
    }

    @Test
    void missingFilesAndFoldersAreNamed() {
        assertEquals(List.of("no file no.yaml. Check the name and the folder you are in."),
                refusal(folder.resolve("no.yaml")));
        Path inner = folder.resolve("inner");
        assertTrue(inner.toFile().mkdir());
        assertEquals(List.of("cannot read inner: it is a folder. Name a file in it."), refusal(inner));
    }

    private List<String> refusal(Path file) {
        return Refusals.of(folder, () -> TextFile.read(file));
    }
}
