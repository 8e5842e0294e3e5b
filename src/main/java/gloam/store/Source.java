package gloam.store;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file that is being read, and through which other files it was reached.
 *
 * @param name     as messages show it
 * @param chain    the files from the first one to this, normalised
 * @param findings what the reading brings to light
 */
record Source(String name, List<Path> chain, Findings findings) {

    /** Most files one reading opens: more than any trip needs, less than a trap would. */
    private static final int MOST_FILES = 100;

    /** Copies the list. */
    public Source {
        chain = List.copyOf(chain);
    }

    /** A file named by the user. */
    static Source of(Path file, Findings findings) {
        findings.opened(file.toString());
        return new Source(file.toString(), List.of(file.normalize()), findings);
    }

    /** The file itself. */
    Path path() {
        return Path.of(name);
    }

    /** The whole file as one item. */
    Item root() {
        return rootAt("");
    }

    /** The whole file as one item that stands for a value elsewhere. */
    Item rootAt(String path) {
        return new Item(Tree.of(name, TextFile.read(path()), findings), path, this);
    }

    /**
     * A file named in this one, relative to its folder.
     *
     * @throws BadInput when the name leads out of that folder, in a circle or to too many files
     */
    Source beside(String fileName) {
        Path file = relative(fileName);
        Path path = Path.of(name).resolveSibling(file);
        if (leadsOut(path)) {
            throw outside(fileName);
        }
        if (chain.contains(path.normalize())) {
            throw new BadInput("the file " + Shown.quoted(fileName) + " names itself. Take the circle out.");
        }
        if (findings.filesOpened() >= MOST_FILES) {
            throw new BadInput("more than " + MOST_FILES + " files are named. Put sections into one file.");
        }
        findings.opened(path.toString());
        List<Path> longer = new ArrayList<>(chain);
        longer.add(path.normalize());
        return new Source(path.toString(), longer, findings);
    }

    private static Path relative(String fileName) {
        try {
            Path file = Path.of(fileName).normalize();
            if (!file.isAbsolute() && !file.startsWith("..")) {
                return file;
            }
        } catch (InvalidPathException strange) {
            throw new BadInput(Shown.quoted(fileName) + " is no file name");
        }
        throw outside(fileName);
    }

    /** Whether links lead a file out of the folder of the file that names it. */
    private boolean leadsOut(Path file) {
        try {
            Path folder = path().toAbsolutePath().getParent().toRealPath();
            return Files.exists(file) && !file.toRealPath().startsWith(folder);
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static BadInput outside(String fileName) {
        return new BadInput("the file " + Shown.quoted(fileName)
                + " lies outside the folder of the file that names it. Put it beside that file.");
    }
}
