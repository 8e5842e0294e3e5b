package gloam.store;

import java.math.BigDecimal;
import java.util.List;

/**
 * Shows a piece of a user's file in a message: short, on one line, without characters that would steer a
 * terminal.
 */
final class Shown {

    private static final int MOST = 60;
    private static final int MOST_PLAIN = 160;

    private Shown() {
    }

    /** The text in quotes. */
    static String quoted(String text) {
        return '"' + brief(text) + '"';
    }

    /** The text, no longer than anything that can be read as a number. */
    static String brief(String text) {
        return cut(text, MOST);
    }

    /** The text as it is. */
    static String plain(String text) {
        return cut(text, MOST_PLAIN);
    }

    /** A number without a needless fraction. */
    static String number(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() : Double.toString(value);
    }

    /** Words to choose from, in words. */
    static String oneOf(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private static String cut(String text, int most) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().limit(most).forEach(c -> shown.appendCodePoint(harmless(c) ? c : '?'));
        return text.codePointCount(0, text.length()) > most ? shown + "…" : shown.toString();
    }

    private static boolean harmless(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                 Character.SURROGATE, Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
