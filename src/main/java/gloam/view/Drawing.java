package gloam.view;

/** A drawing on paper of its own as SVG 1.1; its style sheet is the printer's to add. */
final class Drawing extends Markup {

    /**
     * Begins a drawing.
     *
     * @param width       its width in the units of its coordinates, which run from the upper left corner
     * @param height      its height in them
     * @param letter      height of its letters in them
     * @param title       what it shows
     * @param description what can be seen on it, or nothing
     */
    Drawing(double width, double height, double letter, String title, String description) {
        super();
        open("svg", "xmlns", "http://www.w3.org/2000/svg", "xmlns:xlink", "http://www.w3.org/1999/xlink",
                "version", "1.1",
                "role", "img", "class", "drawing", "viewBox", "0 0 " + number(width) + " " + number(height),
                "font-size", letter);
        words("title", title);
        if (!description.isEmpty()) {
            words("desc", description);
        }
        empty("rect", "class", "paper", "width", "100%", "height", "100%");
    }

    /** The whole drawing. */
    String finished() {
        return close("svg").toString().stripTrailing();
    }
}
