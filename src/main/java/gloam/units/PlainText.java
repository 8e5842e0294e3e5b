package gloam.units;

/**
 * A user's text as it may go to a terminal or a page: nothing in it steers, hides or turns round what stands
 * beside it.
 */
public final class PlainText {

    private static final int REPLACEMENT = '\uFFFD';
    /**
     * From the blank to here, and from the no-break space to the punctuation, letters only show themselves.
     */
    private static final char DELETE = 0x7F;
    private static final char NO_BREAK_SPACE = 0xA0;
    private static final char FIRST_OF_PUNCTUATION = 0x2000;

    /** The first letter that is written from right to left. */
    private static final char FIRST_FROM_RIGHT = 0x590;
    private static final char FIRST_STRONG_ISOLATE = '\u2068';
    private static final char POP_ISOLATE = '\u2069';

    private PlainText() {
    }

    /**
     * The text on one line, with a replacement character for each control character, line end, half of a
     * character and mark that turns the direction of what follows (Unicode Standard Annex 9, 2.1 to 2.5).
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

    /**
     * A line with each stretch of writing from right to left set apart (Unicode Standard Annex 9, first
     * strong isolate), so that what stands before and after it keeps its order. What is laid out by columns
     * is set apart cell by cell.
     */
    public static String isolated(String line) {
        int start = firstFromRight(line, 0);
        if (start == line.length()) {
            return line;
        }
        StringBuilder isolated = new StringBuilder(line.length() + 2);
        int told = 0;
        while (start < line.length()) {
            int end = endFromRight(line, start);
            isolated.append(line, told, start).append(FIRST_STRONG_ISOLATE).append(line, start, end)
                    .append(POP_ISOLATE);
            told = end;
            start = firstFromRight(line, end);
        }
        return isolated.append(line, told, line.length()).toString();
    }

    private static int firstFromRight(String line, int from) {
        int at = from;
        while (at < line.length()
                && (line.charAt(at) < FIRST_FROM_RIGHT || !fromRight(line.codePointAt(at)))) {
            at = line.offsetByCodePoints(at, 1);
        }
        return at;
    }

    /**
     * The end of a stretch: behind its last letter from right to left, and that letter's marks, before one
     * from left.
     */
    private static int endFromRight(String line, int start) {
        int end = start;
        boolean marks = true;
        for (int at = start; at < line.length();) {
            int codePoint = line.codePointAt(at);
            int next = at + Character.charCount(codePoint);
            int direction = Character.getDirectionality(codePoint);
            if (direction == Character.DIRECTIONALITY_LEFT_TO_RIGHT) {
                return end;
            }
            marks = fromRight(codePoint) || marks && direction == Character.DIRECTIONALITY_NONSPACING_MARK;
            end = marks ? next : end;
            at = next;
        }
        return end;
    }

    private static boolean fromRight(int codePoint) {
        return switch (Character.getDirectionality(codePoint)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
                 Character.DIRECTIONALITY_ARABIC_NUMBER -> true;
            default -> false;
        };
    }

    /** Whether nothing can need replacing, which a look at each letter shows for nearly all text. */
    private static boolean plain(char... text) {
        for (char letter : text) {
            if (!(letter >= ' ' && letter < DELETE || letter >= NO_BREAK_SPACE
                    && letter < FIRST_OF_PUNCTUATION)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a character only shows itself. */
    public static boolean harmless(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> false;
            default -> !turns(codePoint);
        };
    }

    /** Embeddings, overrides and isolates. */
    private static boolean turns(int codePoint) {
        return codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
    }
}
