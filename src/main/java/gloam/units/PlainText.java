package gloam.units;

/**
 * A user's text as it may go to a terminal or a page: nothing in it steers, hides or turns round what stands beside it.
 */
public final class PlainText {

    private static final int REPLACEMENT = '\uFFFD';
    private static final int DELETE = 0x7F;

    private PlainText() {
    }

    /**
     * The text on one line, with a replacement character for each control character, line end, half of a character and
     * mark that turns the direction of what follows (Unicode Standard Annex 9, 2.1 to 2.5).
     */
    public static String of(String text) {
        if (harmless(text)) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int codePoint = text.codePointAt(i);
            plain.appendCodePoint(harmless(codePoint) ? codePoint : REPLACEMENT);
        }
        return plain.toString();
    }

    private static boolean harmless(String text) {
        int i = 0;
        while (i < text.length() && harmless(text.codePointAt(i))) {
            i += Character.charCount(text.codePointAt(i));
        }
        return i == text.length();
    }

    /** Whether a character only shows itself. */
    public static boolean harmless(int codePoint) {
        if (codePoint >= ' ' && codePoint < DELETE) {
            return true;
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> false;
            default -> !turns(codePoint);
        };
    }

    /** Embeddings, overrides and isolates. */
    private static boolean turns(int codePoint) {
        return codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
    }
}
