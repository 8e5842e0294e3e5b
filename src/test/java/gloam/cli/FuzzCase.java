package gloam.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One command line with the files it needs.
 *
 * @param args  the arguments; {@code @/} stands for the folder of the files
 * @param files contents by name
 * @param odd   whether words and numbers may stand in it that no answer would have of itself
 */
record FuzzCase(List<String> args, Map<String, byte[]> files, boolean odd) {

    /** Stands for the folder in an argument. */
    static final String FOLDER = "@/";

    private static final int SHOWN_BYTES = 4000;

    FuzzCase {
        args = List.copyOf(args);
        files = Map.copyOf(files);
    }

    /** A damaged case. */
    FuzzCase(List<String> args, Map<String, byte[]> files) {
        this(args, files, true);
    }

    /** Puts the files into a folder, for nobody else to read. */
    void write(Path folder) {
        files.forEach((name, content) -> {
            try {
                Files.write(folder.resolve(name), content);
                Files.setPosixFilePermissions(folder.resolve(name),
                        PosixFilePermissions.fromString("rw-------"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** The arguments for a folder. */
    String[] args(Path folder) {
        return args.stream().map(arg -> arg.replace(FOLDER, folder + "/")).toArray(String[]::new);
    }

    /** Whether it is that command. */
    boolean startsWith(String... words) {
        return args.size() >= words.length && args.subList(0, words.length).equals(List.of(words));
    }

    /** What an option is given, the last time. */
    Optional<String> after(String option) {
        int at = args.lastIndexOf(option);
        return at < 0 || at + 1 == args.size() ? Optional.empty() : Optional.of(args.get(at + 1));
    }

    /**
     * Whether a file is there to be read alone: an option other than one of output names it, or a file that
     * is read.
     */
    boolean reads(String name) {
        if (!files.containsKey(name) || startsWith("journal", "add") && name.endsWith(".jsonl")) {
            return false;
        }
        for (int i = 1; i < args.size(); i++) {
            if (args.get(i).endsWith(FOLDER + name) && args.get(i - 1).startsWith("--")
                    && !List.of("--out", "--into").contains(args.get(i - 1))) {
                return true;
            }
        }
        return files.keySet().stream().anyMatch(other -> !other.equals(name)
                && other.matches("(trip|demo)\\..*")
                && reads(other) && new String(files.get(other), StandardCharsets.UTF_8).contains(name));
    }

    /** The command line that does it again, with the files where they are made for it. */
    @Override
    public String toString() {
        String line = "gloam " + args.stream().map(arg -> arg.matches("[\\w@/.,:+=-]+") ? arg : "'" + arg
                + "'")
                .collect(Collectors.joining(" "));
        Map<String, String> contents = new TreeMap<>();
        files.forEach((name, content) -> contents.put(name, !odd && args.toString().contains(name)
                && content.length < SHOWN_BYTES ? new String(content, StandardCharsets.UTF_8) : content.length
                + " bytes"));
        return line + "  " + contents;
    }
}
