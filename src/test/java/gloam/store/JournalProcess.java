package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.journal.Entry;
import gloam.journal.Journal;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Real processes that write a journal, and what they say. */
final class JournalProcess {

    private JournalProcess() {
    }

    /**
     * Packs the writer's classes and archives them as the virtual machine likes them: its starts take half
     * the time.
     */
    static void pack(Path jars) throws Exception {
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(jars.resolve("writer.jar")))) {
            add(jar, Path.of("target/classes"));
            add(jar, Path.of("target/test-classes"));
        }
        List<String> command = new ArrayList<>(packed(jars, jars.resolve("first.jsonl"), 0, 1, 2));
        command.set(1, "-XX:ArchiveClassesAtExit=" + jars.resolve("writer.jsa"));
        assertEquals(0, new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor());
    }

    private static void add(JarOutputStream jar, Path classes) throws IOException {
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(name -> name.toString().endsWith(".class")).toList()) {
                jar.putNextEntry(new JarEntry(classes.relativize(file).toString()));
                Files.copy(file, jar);
            }
        }
    }

    /** The command of a packed {@link JournalWriter}. */
    static List<String> packed(Path jars, Path file, int writer, int first, int last) {
        String libraries = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(part -> part.endsWith(".jar")).collect(Collectors.joining(File.pathSeparator));
        return java("-XX:SharedArchiveFile=" + jars.resolve("writer.jsa"), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData", "-cp", jars.resolve("writer.jar") + File.pathSeparator + libraries,
                JournalWriter.class.getName(), file.toString(), String.valueOf(writer), String.valueOf(first),
                String.valueOf(last));
    }

    /** A command of the Java that runs the tests. */
    static List<String> java(String... args) {
        List<String> all = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString()));
        all.addAll(List.of(args));
        return all;
    }

    static Process start(List<String> command) throws IOException {
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** All that it says, to its end. */
    static List<String> lines(Process process) throws IOException {
        try (BufferedReader out = reader(process)) {
            return out.lines().toList();
        }
    }

    static BufferedReader reader(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static List<String> notes(Journal journal) {
        return journal.sheets().stream().map(Entry::note).toList();
    }
}
