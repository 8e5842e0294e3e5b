package gloam.store;

import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.function.Executable;

/** Writes files for tests and takes the problems that reading them brings. */
final class Refusals {

    private Refusals() {
    }

    /** A file of that name and text in a folder. */
    static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The problems of a reading that must fail, the folder's name taken out. */
    static List<String> of(Path folder, Executable reading) {
        return assertThrows(BadInput.class, reading).problems().stream()
                .map(line -> line.replace(folder + "/", "")).toList();
    }
}
