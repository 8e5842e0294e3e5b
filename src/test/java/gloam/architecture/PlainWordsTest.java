package gloam.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.LiteralTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Gloam speaks plain present-day English: a few archaic words stand in nothing that a user reads. */
class PlainWordsTest {

    private static final Pattern ARCHAIC =
            Pattern.compile("(?i)\\b(tells?|told|reckon(s|ed|ing)?|so long|as near as may be|"
            + "is not said|are not said|left out it is|throws? back|mends?|likewise|therein|thereof)\\b");
    /** The one thing that is to be told: people, where one is. */
    private static final Pattern TO_PEOPLE = Pattern.compile("(?i)tell someone");
    private static final List<String> PACKAGES = List.of("cli", "store", "units", "gear", "film", "field",
            "ephemeris", "journal", "light", "exposure", "trail", "proof", "frame", "view");

    @Test
    void stringsOfTheProgram() throws IOException {
        List<String> archaic = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null,
                    files.getJavaFileObjectsFromPaths(sources()));
            int[] seen = {0};
            for (var unit : task.parse()) {
                unit.accept(new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitLiteral(LiteralTree literal, Void none) {
                        if (literal.getValue() instanceof String text) {
                            seen[0]++;
                            archaic.addAll(archaic(unit.getSourceFile().getName(), text));
                        }
                        return null;
                    }
                }, null);
            }
            assertTrue(seen[0] > 2000, "only " + seen[0] + " strings were found");
        }
        assertEquals(List.of(), archaic);
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>(List.of(Path.of("src/main/java/gloam/Main.java")));
        for (String name : PACKAGES) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/gloam", name))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
            }
        }
        return sources;
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "src/docs/planning-a-trip.md", "src/docs/preview-frame-to-sheet.md",
        "src/docs/reading-the-timetable.md", "src/docs/learning-from-the-journal.md",
        "src/docs/measuring-the-sky.md",
        "src/docs/what-the-numbers-mean.md",
        "src/docs/trip-keys.md", "src/main/resources/gloam/store/trip-keys.yaml", "demo-data/trip.yaml"})
    void documents(String file) throws IOException {
        assertEquals(List.of(), archaic(file, Files.readString(Path.of(file))));
    }

    @Test
    void approvedOutputs() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources/golden"))) {
            for (Path file : files.filter(file -> file.toString().matches(".*(out|err)")).toList()) {
                assertEquals(List.of(), archaic(file.toString(), Files.readString(file)));
            }
        }
    }

    private static List<String> archaic(String where, String text) {
        return ARCHAIC.matcher(TO_PEOPLE.matcher(text).replaceAll("")).results()
                .map(found -> where + ": " + found.group() + " in " + text.lines()
                        .filter(line -> line.contains(found.group())).findFirst().orElse(text)).toList();
    }
}
