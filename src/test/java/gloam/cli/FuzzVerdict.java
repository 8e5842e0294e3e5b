package gloam.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a run must be like, whatever it was asked. What is wrong is an {@link AssertionError}. */
record FuzzVerdict(Run run, Path place, FuzzCase drawn) {

    /** What comes out where a number has gone wrong or a thing of the program's inside is told. */
    static final Pattern NO_WORD =
            Pattern.compile("\\b(NaN|null|Optional\\b.|[A-Z]\\w+Exception|OutOfMemoryError)|Infinity"
            + "|[1-9]\\d*\\.\\d{7,}|\\b0\\.0*[1-9]\\d{6,}|\\tat [a-z]+\\.|@[0-9a-f]{6,8}\\b");
    private static final int LONGEST_LINE = 700;

    void check() throws IOException {
        require(List.of(0, 2, 3).contains(run.exit()) || run.exit() == 4
                && drawn.args().contains("--fail-if-empty"),
                "exit " + run.exit());
        require(!run.err().contains("\tat ") && !run.err().contains("Exception"),
                "a trace or a class's name");
        run.err().lines().forEach(this::checkLine);
        if (run.exit() == 2 || run.exit() == 3) {
            require(run.out().isEmpty(), "standard output beside an error");
            require(run.err().lines().anyMatch(line -> !line.startsWith("note: ")), "no word of why");
            unchanged();
            require(!run.err().contains("nobody's") || run.err().contains("--done"), "does not blame --done");
        } else {
            complete();
        }
    }

    /** Openings by the site's clocks are told with the date of each. */
    private void dated() {
        for (int i = 1; i < drawn.args().size(); i++) {
            if (drawn.args().get(i - 1).equals("--open")
                    && drawn.args().get(i).matches("[^/]*T\\d\\d:\\d\\d/.*")) {
                String date = drawn.args().get(i).substring(0, "2027-02-08".length());
                require(run.out().contains(date), "nothing of " + date);
            }
        }
    }

    private void checkLine(String line) {
        require(!line.isBlank() && line.length() - place.toString().length() <= LONGEST_LINE,
                "a blank or endless line");
        require(line.codePoints().noneMatch(point -> Character.isISOControl(point) || point == 0x202e),
                "control character");
        require(drawn.odd() || !NO_WORD.matcher(line).find(), "a number or a name that nobody gave: " + line);
        require(!line.contains("is out of range") || line.contains("--") || line.contains(place.toString()),
                "does not say where the value is from: " + line);
    }

    /** After an error every file is as it was and no other is there. */
    private void unchanged() throws IOException {
        for (Path file : files()) {
            String name = file.getFileName().toString();
            boolean emptyJournal = name.endsWith(".jsonl") && Files.size(file) == 0;
            require(drawn.files().containsKey(name) || emptyJournal, "left behind: " + name);
            require(emptyJournal || same(name, file), "changed: " + name);
        }
    }

    /** After a success what was written is whole, and what was read is as it was. */
    private void complete() throws IOException {
        String format = drawn.after("--format").orElse(drawn.startsWith("journal", "export") ? "csv"
                : "text");
        if (!drawn.odd()) {
            StrictFormat.check(format, run.out().getBytes(StandardCharsets.UTF_8));
        }
        if (!drawn.odd() && drawn.startsWith("trail") && format.equals("text")) {
            dated();
        }
        for (Path file : files()) {
            String name = file.getFileName().toString();
            require(!name.endsWith(".part"), "left behind: " + name);
            if (drawn.reads(name)) {
                require(same(name, file), "written over, though it was read: " + name);
            }
            if (!drawn.files().containsKey(name)) {
                written(name, Files.readAllBytes(file), format);
            } else if (!same(name, file)) {
                require(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))
                        .equals("rw-------"), "other permissions than before: " + name);
            }
        }
    }

    private void written(String name, byte[] content, String format) {
        String ending = name.substring(name.lastIndexOf('.') + 1);
        require(content.length > 0, "empty: " + name);
        if (drawn.odd() && !List.of("json", "svg", "ics", "png").contains(ending)) {
            return;
        }
        if (List.of("json", "svg", "html", "ics", "png", "txt", "csv").contains(ending)) {
            StrictFormat.check(ending, content);
        }
        if (ending.equals(format.equals("text") ? "txt" : format)) {
            require(run.out().equals(new String(content,
                    StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n")),
                    "standard output differs from " + name);
        }
    }

    private boolean same(String name, Path file) throws IOException {
        return Arrays.equals(drawn.files().get(name), Files.readAllBytes(file));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private void require(boolean met, String otherwise) {
        if (!met) {
            throw new AssertionError(otherwise + "\n    exit " + run.exit() + Optional.of(run.err())
                    .filter(err -> !err.isEmpty()).map(err -> "; standard error: "
                            + err.substring(0, Math.min(1500, err.length()))).orElse(""));
        }
    }
}
