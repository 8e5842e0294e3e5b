package gloam.units;

/**
 * A user's text as it may go to a terminal or a page: nothing in it steers, hides or turns round what stands beside it.
 */
public final class PlainText {

    private static final int REPLACEMENT = '\uFFFD';
    /** From the blank to here, and from the no-break space to the punctuation, letters only show themselves. */
    private static final char DELETE = 0x7F;
    private static final char NO_BREAK_SPACE = 0xA0;
    private static final char FIRST_OF_PUNCTUATION = 0x2000;

    private PlainText() {
    }

    /**
     * The text on one line, with a replacement character for each control character, line end, half of a character and
     * mark that turns the direction of what follows (Unicode Standard Annex 9, 2.1 to 2.5).
     */
    public static String of(String text) {
        if (plain(text.toCharArray())) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int codePoint = text.codePointAt(i);
            plain.appendCodePoint(harmless(codePoint) ? codePoint : REPLACEMENT);
        }
        return plain.toString();
    }

    /** Whether nothing can need replacing, which a look at each letter tells of nearly all text. */
    private static boolean plain(char... text) {
        for (char letter : text) {
            if (!(letter >= ' ' && letter < DELETE || letter >= NO_BREAK_SPACE && letter < FIRST_OF_PUNCTUATION)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a character only shows itself. */
    public static boolean harmless(int codePoint) {
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
