package gloam.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One command line with the files it needs.
 *
 * @param args  the arguments; {@code @/} stands for the folder of the files
 * @param files contents by name
 */
record FuzzCase(List<String> args, Map<String, byte[]> files) {

    /** Stands for the folder in an argument. */
    static final String FOLDER = "@/";

    FuzzCase {
        args = List.copyOf(args);
        files = Map.copyOf(files);
    }

    /** Puts the files into a folder. */
    void write(Path folder) {
        files.forEach((name, content) -> {
            try {
                Files.write(folder.resolve(name), content);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** The arguments for a folder. */
    String[] args(Path folder) {
        return args.stream().map(arg -> arg.replace(FOLDER, folder + "/")).toArray(String[]::new);
    }

    @Override
    public String toString() {
        Map<String, String> sizes = new TreeMap<>();
        files.forEach((name, content) -> sizes.put(name, content.length + " bytes"));
        return "gloam " + String.join(" ", args) + "  " + sizes;
    }
}
