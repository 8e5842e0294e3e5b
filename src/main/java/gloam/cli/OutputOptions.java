package gloam.cli;

import gloam.view.Origin;
import gloam.view.OutputFormat;
import gloam.view.Report;
import gloam.store.Input;
import gloam.units.BadInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Where a report goes and in which format. */
final class OutputOptions extends OptionGroup {

    private final Option<OutputFormat> format = option("--format", "FORMAT", OutputFormat.class,
            "Format of standard output: " + OutputFormat.texts() + "; each report can be text, json and html "
            + "(default: ${DEFAULT-VALUE}).")
            .completedBy(new Candidates.Formats()).byDefault("text").last();

    private final Option<List<Path>> files = repeated("--out", "FILE", Path.class,
            "Write the report to a file as well; its ending (" + OutputFormat.endings("") + ") picks the "
            + "format. May be given more than once.").last();

    private final Option<Boolean> failIfEmpty = flag("--fail-if-empty",
            "Exit with code 4 when nothing is found.")
            .last();

    boolean failIfEmpty() {
        return failIfEmpty.given();
    }

    /** Whether a report is wanted in a format, on standard output or in a file. */
    boolean wants(OutputFormat wanted) {
        return format.get() == wanted || files.get().stream().anyMatch(file -> format(file) == wanted);
    }

    /** Refuses files whose format cannot be had or whose folder is not there, before anything is computed. */
    void check() {
        for (Path file : files.get()) {
            format(file);
        }
        for (Path file : files.get()) {
            FromOption.run("--out", () -> OutputFile.checkPlace(file));
        }
    }

    /** Refuses files that are read by whatever name. */
    void refuseOver(List<Input> inputs) {
        for (Path file : files.get()) {
            FromOption.run("--out", () -> OutputFile.refuseOver(file, inputs));
        }
    }

    /** Refuses formats that a report of this kind cannot have. */
    void check(Report report) {
        FromOption.of("--format", () -> checked(format.get(), report));
        for (Path file : files.get()) {
            FromOption.of("--out", () -> checked(format(file), report));
        }
    }

    /** Writes the files, then standard output; nothing where a format cannot be had. */
    void write(Report report, Origin origin, int columns, Appendable out) {
        check(report);
        for (Path file : files.get()) {
            FromOption.run("--out", () -> OutputFile.write(file, content(report, origin, format(file))));
        }
        try {
            format.get().render(report, origin, columns, out);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static OutputFormat checked(OutputFormat format, Report report) {
        format.check(report);
        return format;
    }

    private static OutputFormat format(Path file) {
        try {
            return OutputFormat.of(file);
        } catch (BadInput bad) {
            throw bad.from("--out");
        }
    }

    private static byte[] content(Report report, Origin origin, OutputFormat format) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try {
            format.write(report, origin, content);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return content.toByteArray();
    }
}
