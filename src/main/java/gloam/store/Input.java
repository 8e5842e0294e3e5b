package gloam.store;

import gloam.units.BadInput;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A file or pipe that an option names to read. All reading for options goes through here, so that Gloam knows
 * which files it must not write over.
 */
public final class Input {

    private static final String PIPED = "-";
    private static final String STANDARD_INPUT = "standard input";
    private static final Pattern OPEN_FILE = Pattern.compile("/dev/stdin|(/dev|/proc/self)/fd/\\d+");
    private static final Pattern STANDARD = Pattern.compile("-|/dev/stdin|(/dev|/proc/self)/fd/0");

    private final String name;
    private final List<Path> files;
    private Optional<String> read = Optional.empty();

    private final boolean inside;

    private Input(String name, List<Path> files, boolean inside) {
        this.name = name;
        this.files = files;
        this.inside = inside;
    }

    /**
     * The input of a name: {@code -}, {@code /dev/stdin} and {@code /dev/fd/N} are pipes, anything else is a
     * file. Nothing is opened yet.
     */
    public static Input of(String name) {
        return new Input(name, new ArrayList<>(), false);
    }

    /** A part of such a resource. */
    static Input inside(String resource, String text) {
        Input part = inside(resource);
        part.read = Optional.of(text);
        return part;
    }

    /** A resource of the program; files named in it are resources too. */
    static Input inside(String resource) {
        return new Input(resource, List.of(), true);
    }

    /** What a part of the name stands for, read for the same option. */
    Input naming(String part) {
        return new Input(part, files, false);
    }

    /** The name as given. */
    String name() {
        return name;
    }

    /** Whether it is standard input, which can be read only once. */
    public boolean standard() {
        return STANDARD.matcher(name).matches();
    }

    /** Whether it is piped in, so that files beside it are looked for in the current folder. */
    boolean piped() {
        return name.equals(PIPED) || OPEN_FILE.matcher(name).matches();
    }

    /** Its name in messages. */
    public String shown() {
        return standard() ? STANDARD_INPUT : name;
    }

    /** Its name without its folders, if a file was read by it. */
    public Optional<String> fileName() {
        return files.isEmpty() ? Optional.empty() : Optional.of(standard() ? STANDARD_INPUT
                : name.substring(name.lastIndexOf(File.separatorChar) + 1));
    }

    /**
     * The file, which counts as read from now on.
     *
     * @throws BadInput if no file can have that name
     */
    public Path file() {
        Path file = FileName.path(name.equals(PIPED) ? "/dev/stdin" : name);
        files.add(file);
        return file;
    }

    /** Its text; throws {@link BadInput} if it cannot be read. */
    String text() {
        if (inside) {
            return read.orElseGet(() -> resource(name));
        }
        if (!piped()) {
            return TextFile.read(file());
        }
        if (read.isEmpty()) {
            read = Optional.of(all());
        }
        return read.get();
    }

    /** All that is piped in; it stays open, so that it is known which file it comes from. */
    private String all() {
        Path file = file();
        try {
            return TextFile.text(shown(), standard() ? System.in : Files.newInputStream(file));
        } catch (IOException unreadable) {
            throw new BadInput("cannot read " + shown() + ": nothing is piped in. Name a file.");
        }
    }

    /** The text of a file that it names. */
    String text(Path beside) {
        return inside ? resource(beside.toString().replace('\\', '/')) : TextFile.read(file(beside));
    }

    /** A file that it names, which counts as read from now on. */
    Path file(Path beside) {
        if (!inside) {
            files.add(beside);
        }
        return beside;
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Input.class.getResourceAsStream(name), name)) {
            return TextFile.text(name, in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Whether a file, under any name, is among those read. */
    public boolean reads(Path file) {
        for (Path known : files) {
            try {
                if (Files.isSameFile(known, file)) {
                    return true;
                }
            } catch (IOException notBothThere) {
                continue;
            }
        }
        return false;
    }
}
