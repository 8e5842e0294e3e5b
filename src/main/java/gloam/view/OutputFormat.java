package gloam.view;

import gloam.units.BadInput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The formats in which a report can be had. */
public enum OutputFormat {
    TEXT("txt"), JSON("json"), CSV("csv"), SVG("svg"), PNG("png"), ICS("ics"), HTML("html");

    /** Columns of text for pipes and files, and the most on a terminal. */
    public static final int WIDTH = 100;

    private static final String TEXTS = "text, json, svg, ics or html";
    private static final String ENDINGS = "end the name in .txt, .json, .svg, .png, .ics or .html";

    private final String ending;

    OutputFormat(String ending) {
        this.ending = ending;
    }

    /** Made anew each time, so that a format nobody asks for is not loaded. */
    private FileRenderer renderer() {
        return switch (this) {
            case TEXT -> new TextRenderer();
            case JSON -> new JsonRenderer();
            case CSV -> new CsvRenderer();
            case SVG -> new SvgRenderer();
            case PNG -> new PngRenderer();
            case ICS -> new IcsRenderer();
            case HTML -> new HtmlRenderer();
        };
    }

    /** The name as options write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it is text, which can go to standard output too. */
    public boolean text() {
        return renderer() instanceof Renderer;
    }

    /**
     * Makes sure that a report can be had in this format.
     *
     * @throws BadInput when it cannot
     */
    public void check(Report report) {
        if (!renderer().suits(report)) {
            List<String> others = Arrays.stream(values()).filter(format -> format.renderer().suits(report))
                    .map(OutputFormat::label).toList();
            throw new BadInput("this report cannot be written as " + label() + "; choose " + String.join(", ", others));
        }
    }

    /** Writes a report in this format, if it is text, for a terminal of so many columns. */
    public void render(Report report, int columns, Appendable out) throws IOException {
        FileRenderer renderer = renderer();
        if (renderer instanceof TextRenderer text) {
            text.render(report, columns, out);
        } else {
            ((Renderer) renderer).render(report, out);
        }
    }

    /** Writes a report in this format as the bytes of a file. */
    public void write(Report report, OutputStream out) throws IOException {
        renderer().write(report, out);
    }

    /**
     * The format of that name.
     *
     * @throws BadInput when there is none that is text
     */
    public static OutputFormat named(String name) {
        for (OutputFormat format : values()) {
            if (format.label().equals(name)) {
                if (format.text()) {
                    return format;
                }
                throw new BadInput(name.toUpperCase(Locale.ROOT) + " cannot be printed to the terminal; use --out FILE." + name);
            }
        }
        throw new BadInput("format \"" + name + "\" is unknown; ask for " + TEXTS);
    }

    /**
     * The format that a file's ending asks for.
     *
     * @throws BadInput when no format has that ending
     */
    public static OutputFormat of(Path file) {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        for (OutputFormat format : values()) {
            if (format.ending.equals(ending) && name.length() > ending.length()) {
                return format;
            }
        }
        throw new BadInput("file \"" + file + "\": the ending names no format; " + ENDINGS);
    }
}
