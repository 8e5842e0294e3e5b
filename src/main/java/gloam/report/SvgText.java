package gloam.report;

import java.util.Locale;

/** Pieces of SVG: elements one a line, numbers to a hundredth of a mm, text escaped. */
final class SvgText {

    private final StringBuilder text = new StringBuilder();

    /** Adds a line as it stands. */
    SvgText raw(String line) {
        text.append(line).append('\n');
        return this;
    }

    /** Adds an element without contents; attributes as they stand. */
    SvgText empty(String name, String attributes) {
        return raw("<" + name + " " + attributes + "/>");
    }

    /** Adds an element with words in it, which are escaped. */
    SvgText words(String name, String attributes, String words) {
        String start = attributes.isEmpty() ? name : name + " " + attributes;
        return raw("<" + start + ">" + escaped(words) + "</" + name + ">");
    }

    /** Words at a place. */
    SvgText label(double x, double y, String attributes, String words) {
        return words("text", "x=\"" + number(x) + "\" y=\"" + number(y) + "\" " + attributes, words);
    }

    /** A number as SVG writes it. */
    static String number(double value) {
        String plain = String.format(Locale.ROOT, "%.2f", value);
        return plain.equals("-0.00") ? "0.00" : plain;
    }

    /** Words as XML text or attribute; what XML cannot hold becomes a replacement character. */
    static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        words.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(allowed(point) ? point : '\ufffd');
            }
        });
        return escaped.toString();
    }

    /** XML 1.0, production 2. */
    private static boolean allowed(int point) {
        return point == '\t' || point == '\n' || point == '\r' || point >= 0x20 && point <= 0xd7ff
                || point >= 0xe000 && point <= 0xfffd || point >= 0x10000;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
