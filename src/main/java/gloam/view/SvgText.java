package gloam.view;

import gloam.units.PlainText;
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

    /**
     * Words as XML text or attribute; what XML cannot hold or turns what follows becomes a replacement character, and
     * writing from right to left is set apart.
     */
    static String escaped(String words) {
        StringBuilder harmless = new StringBuilder();
        words.codePoints().forEach(point -> harmless.appendCodePoint(PlainText.harmless(point) && inXml(point) ? point : '\ufffd'));
        return PlainText.isolated(harmless.toString()).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replace("\"", "&quot;");
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
