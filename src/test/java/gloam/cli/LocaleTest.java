package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Text is UTF-8 in every locale, the jar started without its launcher. Needs Linux, as {@link FaultsTest}
 * does.
 */
class LocaleTest {

    private static final String ADD =
            "gloam journal add --journal j.jsonl --sky-mag-arcsec2 21 --iso 100 --f-number 11 "
            + "--open 2027-02-08T21:00Z/1h ";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"C", "POSIX", "C.UTF-8", "xx_YY.UTF-8"})
    void whatIsTypedIsKept(String locale) throws Exception {
        Shell added = Shell.in(folder, "export LC_ALL=" + locale + " 2>/dev/null; " + ADD
                + "--note 'mañana 夜 \uFFFD?' --batch \"\"");
        assertEquals(0, added.exit(), added.err());
        assertTrue(added.out().contains("mañana 夜 \uFFFD?"), added.out());
        assertTrue(Files.readString(folder.resolve("j.jsonl")).contains("\"mañana 夜 \uFFFD?\""));
        assertEquals("unknown command \"mañana\"",
                Shell.in(folder, "export LC_ALL=" + locale + " 2>/dev/null; gloam mañana").err()
                .lines().findFirst().orElseThrow());
    }

    /** The letter ñ in ISO 8859-1. */
    @ParameterizedTest
    @ValueSource(strings = {"C", "C.UTF-8"})
    void otherEncodingsAreRefusedAndNothingIsKept(String locale) throws Exception {
        Shell refused = Shell.in(folder, "export LC_ALL=" + locale + " 2>/dev/null; " + ADD
                + "--note $'ma\\xf1ana'");
        assertEquals(new Shell(2, "",
                "\"ma\uFFFDana\" is not UTF-8 text. Type it on a terminal that uses UTF-8.\n"), refused);
        assertFalse(Files.exists(folder.resolve("j.jsonl")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check --trip ñ.yaml", "check --trip trip.yaml",
            "check --trip plain.yaml --out ñ.txt",
        "journal list --journal ñ.jsonl", "expose --film ñ.yaml --sky-mag-arcsec2 21",
        "init ñ.yaml --place 41,-2,300 --zone UTC",
        "sky --place 41,-2,300 --zone UTC --night 2027-02-08 --ephemeris ñ.bin", "help --man --into ñ"})
    void aNameThatJavaCannotWriteIsRefusedWithTheRemedy(String command) throws Exception {
        String plain = Files.readString(Path.of("demo-data/trip.yaml"));
        Files.copy(Path.of("demo-data/skyline-loma.csv"), folder.resolve("skyline-loma.csv"));
        Files.writeString(folder.resolve("plain.yaml"), plain);
        Files.writeString(folder.resolve("trip.yaml"), plain.replace("skyline-loma.csv", "ñ.csv"));
        Shell refused = Shell.in(folder, "LC_ALL=C gloam " + command);
        assertEquals(2, refused.exit(), refused.err());
        assertTrue(refused.err().matches("(.*: )?Java cannot open a file named \"ñ\\.?\\w*\" in this "
                + "locale\\. Start gloam by its "
                + "launcher, or set LC_ALL=C\\.UTF-8\\.?( \\(-?-?[A-Za-z]+\\)|)\nSee gloam [a-z ]+ "
                + "--help\\.\n"), refused.err());
        assertEquals("", refused.out());
    }

    @Test
    void answersOnATerminalAreUtf8() {
        InputStream in = System.in;
        PrintStream out = System.out;
        ByteArrayOutputStream shown = new ByteArrayOutputStream();
        try {
            System.setIn(new ByteArrayInputStream(
                    "mañana 夜\r\n\nma\u00F1ana\nsí".getBytes(StandardCharsets.UTF_8)));
            System.setOut(new PrintStream(shown));
            assertEquals("mañana 夜", UserConsole.line("Größe: ").orElseThrow());
            assertEquals("", UserConsole.line("").orElseThrow());
            assertEquals("mañana", UserConsole.line("").orElseThrow());
            assertEquals("sí", UserConsole.line("").orElseThrow());
            assertEquals(Optional.empty(), UserConsole.line(""));
            System.setIn(new ByteArrayInputStream("ma\u00F1ana\nso\n".getBytes(StandardCharsets.ISO_8859_1)));
            assertEquals("so", UserConsole.line("Note: ").orElseThrow());
        } finally {
            System.setIn(in);
            System.setOut(out);
        }
        assertEquals("Größe: Note: That is not UTF-8 text.\nNote: ", shown.toString(StandardCharsets.UTF_8)
                .replace(System.lineSeparator(), "\n"));
    }
}
