package gloam.view;

import java.util.Locale;

/** A drawing on paper of its own as SVG 1.1; its style sheet is the printer's to add. */
final class Drawing extends Markup {

    private static final double MADE = 0.85;

    private final double height;
    private final double letter;

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
        this.height = height;
        this.letter = letter;
        String name = unit.name().toLowerCase(Locale.ROOT);
        open("svg", "xmlns", "http://www.w3.org/2000/svg", "xmlns:xlink", "http://www.w3.org/1999/xlink",
                "version", "1.1",
                "role", "img", "class", "drawing", "width", number(width) + name,
                "height", number(height) + name,
                "viewBox", "0 0 " + number(width) + " " + number(height),
                "font-size", letter);
        words("title", title);
        if (!description.isEmpty()) {
            words("desc", description);
        }
        empty("rect", "class", "paper", "width", "100%", "height", "100%");
    }

    /**
     * The whole drawing, with a line at its foot that says what it comes from.
     *
     * @param left where that line begins
     */
    String finished(double left, String made) {
        label(left, height - letter, made, "class", "slanted fine", "font-size", MADE * letter);
        return close("svg").toString().stripTrailing();
    }
}
