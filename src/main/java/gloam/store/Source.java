package gloam.store;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file that is being read, and through which other files it was reached.
 *
 * @param name     as messages show it
 * @param path     where files that it names are looked for: beside this
 * @param chain    the files from the first one to this, normalised
 * @param input    what it is read for
 * @param findings what the reading brings to light
 */
record Source(String name, Path path, List<Path> chain, Input input, Findings findings) {

    /** Most files one reading opens: more than any trip needs, less than a trap would. */
    private static final int MOST_FILES = 100;

    /** Copies the list. */
    public Source {
        chain = List.copyOf(chain);
    }

    /** A file named by the user. */
    static Source of(Path file, Findings findings) {
        return of(Input.of(file.toString()), findings);
    }

    /** What the user named; what is piped in stands in the current folder. */
    static Source of(Input input, Findings findings) {
        Path path = FileName.path(input.shown());
        Path here = input.piped() ? path.getFileName() : path;
        findings.opened(input.shown());
        return new Source(input.shown(), here, List.of(here.normalize()), input, findings);
    }

    /** All that stands in it. */
    String text() {
        return chain.size() == 1 ? input.text() : input.text(path);
    }

    /** The file itself, for what reads it in its own way; it counts as read. */
    Path file() {
        return input.file(path);
    }

    /** The whole file as one item. */
    Item root() {
        return rootAt("");
    }

    /** The whole file as one item that stands for a value elsewhere. */
    Item rootAt(String path) {
        return new Item(Tree.of(name, text(), findings), path, this);
    }

    /** The file that an item names. */
    static Source named(Item item) {
        String name = item.text();
        item.readAs("name of a file");
        return item.source().beside(name);
    }

    /**
     * A file named in this one, relative to its folder.
     *
     * @throws BadInput when the name leads out of that folder, in a circle or to too many files
     */
    Source beside(String fileName) {
        Path file = relative(fileName);
        Path beside = path.resolveSibling(file);
        if (leadsOut(beside)) {
            throw outside(fileName);
        }
        if (chain.contains(beside.normalize())) {
            throw new BadInput("the file " + Shown.quoted(fileName) + " names itself. Take the circle out.");
        }
        if (findings.filesOpened() >= MOST_FILES) {
            throw new BadInput("more than " + MOST_FILES + " files are named. Put sections into one file.");
        }
        findings.opened(beside.toString());
        List<Path> longer = new ArrayList<>(chain);
        longer.add(beside.normalize());
        return new Source(beside.toString(), beside, longer, input, findings);
    }

    private static Path relative(String fileName) {
        Path file = FileName.path(fileName).normalize();
        if (file.isAbsolute() || file.startsWith("..")) {
            throw outside(fileName);
        }
        return file;
    }

    /** Whether links lead a file out of the folder of the file that names it. */
    private boolean leadsOut(Path file) {
        try {
            Path folder = path.toAbsolutePath().getParent().toRealPath();
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
