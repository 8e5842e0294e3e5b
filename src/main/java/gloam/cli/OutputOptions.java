package gloam.cli;

import gloam.report.OutputFormat;
import gloam.report.Report;
import gloam.units.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Where a report goes and in which format. */
final class OutputOptions {

    /** Where they stand in the help. */
    private static final int LAST = 100;

    @Option(names = "--format", order = LAST, paramLabel = "FORMAT", defaultValue = "text",
            description = "Format of standard output: text or json (default: ${DEFAULT-VALUE}).")
    private OutputFormat format;

    @Option(names = "--out", order = LAST, paramLabel = "FILE",
            description = "Write the report to a file as well; its ending, .txt or .json, picks the format. "
                    + "May be given more than once.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--fail-if-empty", order = LAST,
            description = "Exit with code 4 when nothing is found.")
    private boolean failIfEmpty;

    boolean failIfEmpty() {
        return failIfEmpty;
    }

    /** Refuses files whose format cannot be had, before anything is computed. */
    void check() {
        files.forEach(OutputOptions::format);
    }

    /** Writes the files, then standard output. */
    void write(Report report, Appendable out) {
        files.forEach(file -> OutputFile.write(file, rendered(report, format(file))));
        try {
            out.append(rendered(report, format));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static OutputFormat format(Path file) {
        try {
            return OutputFormat.of(file);
        } catch (BadInput bad) {
            throw bad.from("--out");
        }
    }

    private static String rendered(Report report, OutputFormat format) {
        StringBuilder text = new StringBuilder();
        try {
            format.render(report, text);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return text.toString();
    }
}
