package gloam.ephemeris;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** A table in the jar: a row a line, its fields parted by tabs, lines that begin with # left out. */
final class TextResource {

    private TextResource() {
    }

    /** What is made of the fields of each row, in order. */
    static <T> List<T> rows(String resource, Function<String[], T> row) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                TextResource.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.startsWith("#"))
                    .map(line -> row.apply(line.split("\t", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
