package gloam.cli;

import gloam.report.OutputFormat;
import gloam.report.Report;
import gloam.units.BadInput;
import java.io.ByteArrayOutputStream;
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

    @Option(names = "--format", order = LAST, paramLabel = "FORMAT", completionCandidates = Candidates.Formats.class, defaultValue = "text",
            description = "Format of standard output: text or json; of a timetable also ics, svg or html; of other "
                    + "drawings svg (default: ${DEFAULT-VALUE}).")
    private OutputFormat format;

    @Option(names = "--out", order = LAST, paramLabel = "FILE",
            description = "Write the report to a file as well; its ending (txt, json, ics, svg, html or png) picks the "
                    + "format. May be given more than once.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--fail-if-empty", order = LAST,
            description = "Exit with code 4 when nothing is found.")
    private boolean failIfEmpty;

    boolean failIfEmpty() {
        return failIfEmpty;
    }

    /** Whether a report is wanted in a format, on standard output or in a file. */
    boolean wants(OutputFormat wanted) {
        return format == wanted || files.stream().anyMatch(file -> format(file) == wanted);
    }

    /** Refuses files whose format cannot be had or whose folder is not there, before anything is computed. */
    void check() {
        files.forEach(OutputOptions::format);
        files.forEach(file -> FromOption.run("--out", () -> OutputFile.checkPlace(file)));
    }

    /** Refuses formats that a report of this kind cannot have. */
    void check(Report report) {
        FromOption.of("--format", () -> checked(format, report));
        files.forEach(file -> FromOption.of("--out", () -> checked(format(file), report)));
    }

    /** Writes the files, then standard output; nothing where a format cannot be had. */
    void write(Report report, int columns, Appendable out) {
        check(report);
        files.forEach(file -> FromOption.run("--out", () -> OutputFile.write(file, content(report, format(file)))));
        try {
            format.render(report, columns, out);
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

    private static byte[] content(Report report, OutputFormat format) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try {
            format.write(report, content);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
        return content.toByteArray();
    }
}
