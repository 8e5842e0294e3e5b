package gloam.report;

import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The formats in which a report can be had. */
public enum OutputFormat {
    TEXT("txt", new TextRenderer()),
    JSON("json", new JsonRenderer());

    private static final List<String> NOT_YET = List.of("ics", "svg", "html", "png");

    private final String ending;
    private final Renderer renderer;

    OutputFormat(String ending, Renderer renderer) {
        this.ending = ending;
        this.renderer = renderer;
    }

    /** The name as options write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Writes a report in this format. */
    public void render(Report report, Appendable out) throws IOException {
        renderer.render(report, out);
    }

    /**
     * The format of that name.
     *
     * @throws BadInput when there is none
     */
    public static OutputFormat named(String name) {
        for (OutputFormat format : values()) {
            if (format.label().equals(name)) {
                return format;
            }
        }
        throw NOT_YET.contains(name)
                ? new BadInput("format " + name + " is not built yet; ask for text or json")
                : new BadInput("format \"" + name + "\" is unknown; ask for text or json");
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
        throw NOT_YET.contains(ending)
                ? new BadInput("file \"" + file + "\": format " + ending + " is not built yet; "
                        + "end the name in .txt or .json")
                : new BadInput("file \"" + file + "\": the ending names no format; end the name in .txt or .json");
    }
}
