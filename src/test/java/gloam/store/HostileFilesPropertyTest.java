package gloam.store;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gloam.support.Samples;
import gloam.units.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a file holds, reading it ends in a result or in lines that the user can act on. */
class HostileFilesPropertyTest {

    /** {@code -Dhostile.samples=N} asks for more. */
    private static final int SAMPLES = Integer.getInteger("hostile.samples", 500);
    private static final List<Path> SOUND = List.of(Path.of("demo-data", "trip.yaml"),
            Path.of("demo-data", "trip-arctic.yaml"), Path.of("demo-data", "trip-south.yaml"),
            Path.of("demo-data", "skyline-loma.csv"),
            Path.of("src", "main", "resources", "gloam", "films", "instant-colour-125.json"),
            Path.of("src", "main", "resources", "gloam", "films", "negative-classic-100.json"));
    private static final List<String> PIECES = List.of("NaN", ".inf", "-1e308", "1e999", "9".repeat(400), "[", "]", "{",
            "}", ":", "- ", "\n", "\r", "\t", "&a ", "*a", "!!java.net.URL ", "\"", "'", "|", ">", "---\n", "%", "#",
            "null", "~", "true", "\u0000", "\uFEFF", "\uD83D\uDE00", "\u202E", "trip.yaml", "..", "? ", "<<: ", ",",
            "0x10", "012", "1_000", "2027-13-45", "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", "mars", "skyline-loma.csv");

    @TempDir
    static Path folder;

    static Stream<Named<Mangled>> mangledFiles() {
        return Samples.of(SAMPLES, HostileFilesPropertyTest::mangled)
                .map(sample -> Named.of(sample.getName().replaceFirst(": .*", ""), sample.getPayload()));
    }

    @ParameterizedTest
    @MethodSource("mangledFiles")
    void mangledFilesAreReadOrRefused(Mangled mangled) throws IOException {
        Path file = Files.write(folder.resolve(mangled.sound.getFileName()), mangled.bytes);
        assertDoesNotThrow(() -> {
            try {
                read(file);
            } catch (BadInput refused) {
                assertFalse(refused.problems().isEmpty());
                refused.problems().forEach(line -> assertFalse(line.isBlank() || line.contains("\n"), line));
            }
        });
    }

    private static void read(Path file) {
        String name = file.getFileName().toString();
        if (name.endsWith(".csv")) {
            SkylineFile.read(file);
        } else if (name.startsWith("trip")) {
            TripFile.read(file);
        } else {
            FilmFile.film(file.toString());
        }
    }

    private static Mangled mangled(RandomGenerator random) {
        Path sound = SOUND.get(random.nextInt(SOUND.size()));
        byte[] bytes = bytes(sound);
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            bytes = change(bytes, random);
        }
        return new Mangled(sound, bytes);
    }

    private record Mangled(Path sound, byte[] bytes) {
    }

    private static byte[] change(byte[] bytes, RandomGenerator random) {
        int at = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, random.nextInt(12));
        String before = new String(bytes, 0, at, StandardCharsets.ISO_8859_1);
        String after = new String(bytes, at + length, bytes.length - at - length, StandardCharsets.ISO_8859_1);
        byte[] piece = PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
        return switch (random.nextInt(5)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> (before + after).getBytes(StandardCharsets.ISO_8859_1);
            case 2 -> (before + (char) random.nextInt(256) + after).getBytes(StandardCharsets.ISO_8859_1);
            default -> (before + new String(piece, StandardCharsets.ISO_8859_1) + after)
                    .getBytes(StandardCharsets.ISO_8859_1);
        };
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
