package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** A drawing on paper of its own as SVG 1.1; its style sheet is the printer's to add. */
final class Drawing extends Markup {

    private static final double MADE = 0.85;
    /** Pixels of the smallest letters that can be read on a telephone. */
    private static final double READABLE_PX = 9;
    /** Width of a letter by its height, in fonts that are rather wide; by eye, no source. */
    static final double LETTER_WIDE = 0.58;
    /** How much smaller words are set at most that are too long. */
    private static final double LEAST_SHARE = 0.6;
    private static final Pattern LEAST = Pattern.compile("--least:\\d+px");
    /** Styles of words that do not begin where they are put. */
    private static final Pattern ENDING = Pattern.compile("\\b(middle|end)\\b");

    private final Unit unit;
    private final double width;
    private final double height;
    private final double letter;
    private final String title;
    private final String description;
    private double finest;

    /** What a drawing's coordinates count: millimetres of paper, or the pixels of style sheets. */
    enum Unit { MM, PX }

    /**
     * Begins a drawing.
     *
     * @param unit        the unit of its coordinates, in which it is as large as it is
     * @param width       its width; coordinates run from the upper left corner
     * @param height      its height
     * @param letter      height of its letters in them
     * @param title       what it shows
     * @param description what can be seen on it, or nothing
     */
    Drawing(Unit unit, double width, double height, double letter, String title, String description) {
        super();
        this.unit = unit;
        this.width = width;
        this.height = height;
        this.letter = letter;
        this.title = title;
        this.description = description;
        this.finest = letter;
    }

    /** Words at a place, the smaller the further they would run over the right edge. */
    @Override
    Markup label(double x, double y, String words, Object... attributes) {
        List<Object> all = new ArrayList<>(List.of(attributes));
        int at = all.indexOf("font-size");
        double size = at < 0 ? letter : ((Number) all.get(at + 1)).doubleValue();
        int style = all.indexOf("class");
        boolean starts = style < 0 || !ENDING.matcher(all.get(style + 1).toString()).find();
        double fits = starts ? (width - x) / (LETTER_WIDE * Math.max(1, TextWidth.of(words))) : size;
        if (fits < size) {
            size = Math.max(LEAST_SHARE * size, fits);
            if (at >= 0) {
                all.set(at + 1, size);
            } else {
                all.addAll(List.of("font-size", size));
            }
        }
        finest = Math.min(finest, size);
        return super.label(x, y, words, all.toArray());
    }

    /**
     * Begins a part out of which nothing is drawn, also by programs that let inner drawings run over.
     *
     * @param id    its name, once in a page
     * @param x     its left edge in the drawing
     * @param left  the same in the coordinates inside it
     * @param style names of its style, or nothing
     */
    void openPane(String id, double x, double y, double width, double height, double left, double top,
            String style) {
        open("clipPath", "id", id);
        empty("rect", "x", x, "y", y, "width", width, "height", height);
        close("clipPath");
        open("g", "clip-path", "url(#" + id + ")", "class", style);
        open("svg", "x", x, "y", y, "width", width, "height", height, "viewBox", number(left) + " "
                + number(top) + " " + number(width) + " " + number(height), "overflow", "hidden");
    }

    void closePane() {
        close("svg");
        close("g");
    }

    /** The variable {@code --least} of a finished drawing, for what stands beside it; of none nothing. */
    static String least(String finished) {
        return LEAST.matcher(finished).results().map(MatchResult::group).findFirst().orElse("");
    }

    /**
     * The whole drawing, with a line at its foot that says what it comes from. Pages take its variable {@code
     * --least}, the width from which on its smallest letters can be read.
     *
     * @param left where that line begins
     */
    String finished(double left, String made) {
        String name = unit.name().toLowerCase(Locale.ROOT);
        Markup whole = new Markup().open("svg", "xmlns", "http://www.w3.org/2000/svg", "xmlns:xlink",
                "http://www.w3.org/1999/xlink", "version", "1.1", "role", "img", "class", "drawing", "style",
                "--least:" + (int) Math.ceil(READABLE_PX * width / finest) + "px", "width",
                number(width) + name,
                "height", number(height) + name, "viewBox", "0 0 " + number(width) + " " + number(height),
                "font-size", letter);
        whole.words("title", title);
        if (!description.isEmpty()) {
            whole.words("desc", description);
        }
        whole.empty("rect", "class", "paper", "width", "100%", "height", "100%").add(toString());
        whole.label(left, height - letter, made, "class", "slanted made", "font-size", MADE * letter);
        return whole.close("svg").toString().stripTrailing();
    }
}
