package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the fuzz damages is sound: a file that is refused as it stands tries nothing beyond its first fault.
 */
class FuzzFilesTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void isAcceptedUndamaged(FuzzFiles.Kind kind) {
        FuzzCase sound = FuzzFiles.sound(kind);
        sound.write(folder);
        Run run = Run.of(sound.args(folder));
        assertEquals(0, run.exit(), run.err());
    }
}
