package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be read from a file can be piped in. */
class PipedInputTest {

    private static final String SHEET = "--sky-mag-arcsec2 21 --f-number 11";

    @TempDir
    private Path folder;

    @BeforeEach
    void copyTheTrip() throws IOException {
        for (String file : new String[] {"trip.yaml", "skyline-loma.csv"}) {
            Files.write(folder.resolve(file), Files.readAllBytes(Path.of("demo-data", file)));
        }
    }

    /** The sections that a trip names are looked for in the current folder. */
    @ParameterizedTest
    @ValueSource(strings = {"gloam check --trip - < trip.yaml", "cat trip.yaml | gloam check --trip -",
        "cat trip.yaml | gloam check --trip /dev/stdin", "cat trip.yaml | gloam check --trip /dev/fd/0",
        "gloam check --trip /dev/stdin < trip.yaml", "gloam check --trip <(cat trip.yaml)",
        "mkdir -p elsewhere; cat elsewhere/../trip.yaml | gloam check --trip /proc/self/fd/0"})
    void aTripIsReadFromAPipe(String line) throws Exception {
        Shell piped = Shell.in(folder, line);
        assertEquals(new Shell(0, Run.of("check", "--trip", folder + "/trip.yaml").out(), ""), piped);
    }

    @Test
    void aTripWithoutATitleIsNamedAfterTheInput() throws Exception {
        assertEquals("standard input", Shell.in(folder, "grep -v ^title trip.yaml | gloam check --trip -")
                .out().lines().findFirst()
                .orElseThrow());
    }

    @Test
    void aFilmAndAPlanAreReadFromAPipe() throws Exception {
        Path film = Path.of("src/main/resources/gloam/films/negative-slow-25.json").toAbsolutePath();
        assertEquals(Shell.in(folder, "gloam expose --film " + film + " " + SHEET + " --focal-length 120"),
                Shell.in(folder, "gloam expose --film - " + SHEET + " --focal-length 120 < " + film));
        Shell added = Shell.in(folder,
                "gloam plan --trip trip.yaml --format json | gloam journal add --journal j.jsonl "
                + "--trip trip.yaml --plan - --sheet 2");
        assertEquals(0, added.exit(), added.err());
        assertTrue(added.out().startsWith("Added as entry 1"), added.out());
    }

    @Test
    void faultsNameTheInputWithLineAndColumn() throws Exception {
        Shell wrong = Shell.in(folder, "sed s/sheets:/sheet:/ trip.yaml | gloam plan --trip -");
        assertEquals(2, wrong.exit());
        assertTrue(wrong.err().matches("(?s)standard input:\\d+:1 sheet: .*"), wrong.err());
    }

    @Test
    void oneReaderAloneHasStandardInput() throws Exception {
        Shell two = Shell.in(folder, "gloam expose --trip - --film /dev/stdin " + SHEET + " < trip.yaml");
        assertEquals(new Shell(2, "",
                "standard input can be read only once; name a file in all options but one\n"
                + "See gloam expose --help.\n"), two);
    }

    @Test
    void thePipeIsNoLongerThanAFileMayBe() throws Exception {
        Shell endless = Shell.in(folder, "yes | gloam check --trip -");
        assertEquals(2, endless.exit());
        assertEquals("cannot read standard input: it is larger than 1024 KiB. Is it the right file?",
                endless.err().lines().findFirst()
                .orElseThrow());
        Shell nothing = Shell.in(folder, "gloam check --trip - <&-");
        assertEquals(2, nothing.exit(), nothing.err());
        assertEquals(2, nothing.err().lines().count(), nothing.err());
    }
}
