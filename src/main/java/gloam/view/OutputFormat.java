package gloam.view;

import gloam.units.BadInput;
import gloam.units.Label;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The formats of reports, each with the ending of its files. */
public enum OutputFormat {
    TEXT("txt", true), JSON("json", true), CSV("csv", true), SVG("svg", true), PNG("png", false),
            ICS("ics", true),
    HTML("html", true);

    /** Columns of text in pipes and files, and the widest prose anywhere. */
    public static final int WIDTH = 100;

    private static final Origin NOWHERE = new Origin("gloam", List.of());

    private final String ending;
    private final boolean text;

    OutputFormat(String ending, boolean text) {
        this.ending = ending;
        this.text = text;
    }

    /** Made anew each time, so that a format nobody asks for is not loaded. */
    private FileRenderer renderer(int columns, Origin origin) {
        return switch (this) {
            case TEXT -> new TextPrinter(columns);
            case JSON -> new JsonRenderer();
            case CSV -> new CsvPrinter();
            case SVG -> new SvgRenderer(origin);
            case PNG -> new PngRenderer(origin);
            case ICS -> new IcsRenderer();
            case HTML -> new HtmlPrinter(origin);
        };
    }

    /** The name used in options. */
    public String label() {
        return Label.of(this);
    }

    /** Whether it is text and so can be printed to standard output. */
    public boolean text() {
        return text;
    }

    /** The names of all text formats, joined for a sentence. */
    public static String texts() {
        return choice(Arrays.stream(values()).filter(OutputFormat::text).map(OutputFormat::label).toList());
    }

    /** The endings of all formats, each after the given text, joined for a sentence. */
    public static String endings(String before) {
        return choice(Arrays.stream(values()).map(format -> before + format.ending).toList());
    }

    private static String choice(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /**
     * Checks that a report can be written in this format.
     *
     * @throws BadInput if it cannot; names the formats that can
     */
    public void check(Report report) {
        if (!suits(report)) {
            throw new BadInput("this report cannot be written as " + label() + "; choose "
                    + choice(Arrays.stream(values())
                    .filter(format -> format.suits(report)).map(OutputFormat::label).toList()));
        }
    }

    private boolean suits(Report report) {
        return renderer(WIDTH, NOWHERE).suits(report);
    }

    /** Prints a report in this text format, laid out for a number of columns. */
    public void render(Report report, Origin origin, int columns, Appendable out) throws IOException {
        ((Renderer) renderer(columns, origin)).render(report, out);
    }

    /** Writes a report in this format to a file. */
    public void write(Report report, Origin origin, OutputStream out) throws IOException {
        renderer(WIDTH, origin).write(report, out);
    }

    /**
     * The text format of that name.
     *
     * @throws BadInput if no text format has it
     */
    public static OutputFormat named(String name) {
        for (OutputFormat format : values()) {
            if (format.label().equals(name)) {
                if (format.text()) {
                    return format;
                }
                throw new BadInput(name.toUpperCase(Locale.ROOT)
                        + " cannot be printed to the terminal; use --out FILE." + name);
            }
        }
        throw new BadInput("format \"" + name + "\" is unknown; choose " + texts());
    }

    /**
     * The format that the ending of a file's name stands for.
     *
     * @throws BadInput if no format has that ending
     */
    public static OutputFormat of(Path file) {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        for (OutputFormat format : values()) {
            if (format.ending.equals(ending) && name.length() > ending.length()) {
                return format;
            }
        }
        throw new BadInput("file \"" + file + "\": the ending names no format; end the name in "
                + endings("."));
    }
}
