package gloam.view;

import gloam.units.PlainText;
import java.util.Locale;

/**
 * Elements of SVG and of pages, one a line. Attributes are names and values in turn: numbers to a hundredth,
 * texts escaped. Colours and strokes have their names in the style sheet {@code drawing.css}.
 */
class Markup {

    private final StringBuilder text = new StringBuilder();

    /** Adds what is marked up already, without its last line end. */
    Markup add(String markup) {
        text.append(markup.stripTrailing()).append('\n');
        return this;
    }

    /** Begins an element. */
    Markup open(String name, Object... attributes) {
        return add(start(name, attributes) + ">");
    }

    /** Ends an element. */
    Markup close(String name) {
        return add("</" + name + ">");
    }

    /** Adds an element without contents. */
    Markup empty(String name, Object... attributes) {
        return add(start(name, attributes) + "/>");
    }

    /** Adds an element with words in it. */
    Markup words(String name, String words, Object... attributes) {
        return add(start(name, attributes) + ">" + escaped(words) + "</" + name + ">");
    }

    /** Words at a place. */
    Markup label(double x, double y, String words, Object... attributes) {
        Object[] all = new Object[attributes.length + 4];
        System.arraycopy(new Object[] {"x", x, "y", y}, 0, all, 0, 4);
        System.arraycopy(attributes, 0, all, 4, attributes.length);
        return words("text", words, all);
    }

    /** The start of an element, still open for what closes it. */
    static String start(String name, Object... attributes) {
        StringBuilder start = new StringBuilder("<").append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            start.append(' ').append(attributes[i]).append("=\"")
                    .append(value instanceof Double number ? number(number) : escaped(String.valueOf(value)))
                    .append('"');
        }
        return start.toString();
    }

    /** A number as SVG writes it. */
    static String number(double value) {
        String plain = String.format(Locale.ROOT, "%.2f", value);
        return plain.equals("-0.00") ? "0.00" : plain;
    }

    /**
     * Words as XML text or attribute; what XML cannot hold or turns what follows becomes a replacement
     * character, and writing from right to left is set apart.
     */
    static String escaped(String words) {
        StringBuilder harmless = new StringBuilder();
        words.codePoints().forEach(point -> harmless.appendCodePoint(PlainText.harmless(point) && inXml(point)
                ? point : '\ufffd'));
        return PlainText.isolated(harmless.toString()).replace("&", "&amp;").replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /**
     * Words in an element of a page. Dates with their days, spans of time, options, a sheet and its number, a
     * number and its unit or spread stay in one piece; what is written from right to left stands in its own.
     */
    static String prose(String words) {
        return escaped(words).replaceAll("\\b\\d{4}-\\d\\d-\\d\\d\\b", "<time>$0</time>")
                .replaceAll("\\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) <time>.*?</time>",
                        "<span class=\"short\">$0</span>")
                .replaceAll("(?<=\\d) (?=(?:%|mm|stops?)(?!\\w))|(?<![-\\w])(mag|roll) (?=[\\d−])",
                        "$1\u00a0")
                .replace(" ± ", "\u00a0±\u00a0")
                .replaceAll("(?<![-\\w])([Ss]heets?) (?=\\d)|\\b(pack) (?=\\w\\b)", "$1$2\u00a0")
                .replaceAll("\\d\\d:\\d\\d – \\d\\d:\\d\\d|(?<!\\S)--[a-z-]+|\\bf-numbers?\\b",
                        "<span class=\"short\">$0</span>")
                .replace("\u2068", "<bdi>").replace("\u2069", "</bdi>");
    }

    /** XML 1.0, production 2, of what is harmless. */
    private static boolean inXml(int point) {
        return point != 0xfffe && point != 0xffff;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
