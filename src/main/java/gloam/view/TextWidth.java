package gloam.view;

import java.util.ArrayList;
import java.util.List;

/** How wide text stands on a terminal, in columns. */
final class TextWidth {

    /** Letters below this are one column wide and stand for themselves. */
    private static final int FIRST_MARK = 0x300;
    private static final int JOINER = 0x200D;
    /** The variation selector that has a sign shown as a picture. */
    private static final int AS_PICTURE = 0xFE0F;
    private static final int FIRST_SKIN_TONE = 0x1F3FB;
    private static final int LAST_SKIN_TONE = 0x1F3FF;

    private TextWidth() {
    }

    /**
     * Columns a text takes: two for wide East Asian letters and pictures, none for marks that combine.
     * Pictures joined to one, and skin tones, count as Unicode Technical Standard 51 has them shown: one
     * picture.
     */
    static int of(String text) {
        int plain = 0;
        while (plain < text.length() && text.charAt(plain) < FIRST_MARK) {
            plain++;
        }
        return plain == text.length() ? plain : ofMarked(text);
    }

    private static int ofMarked(String text) {
        int width = 0;
        int last = 0;
        int before = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int codePoint = text.codePointAt(i);
            boolean joined = last == 2
                    && (before == JOINER || codePoint >= FIRST_SKIN_TONE && codePoint <= LAST_SKIN_TONE);
            int own = codePoint == AS_PICTURE && last == 1 ? 1 : joined ? 0 : of(codePoint);
            width += own;
            last = codePoint == AS_PICTURE && last == 1 ? 2 : own > 0 ? own : last;
            before = codePoint;
        }
        return width;
    }

    private static int of(int codePoint) {
        if (codePoint < FIRST_MARK) {
            return 1;
        }
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK
                || type == Character.FORMAT) {
            return 0;
        }
        return wide(codePoint) ? 2 : 1;
    }

    /** Blocks of East Asian width W and F (Unicode Standard Annex 11), whole blocks at a time. */
    private static boolean wide(int codePoint) {
        return codePoint >= 0x1100 && codePoint <= 0x115F
                || codePoint >= 0x2E80 && codePoint <= 0xA4CF && codePoint != 0x303F
                || codePoint >= 0xAC00 && codePoint <= 0xD7A3
                || codePoint >= 0xF900 && codePoint <= 0xFAFF
                || codePoint >= 0xFE30 && codePoint <= 0xFE6F
                || codePoint >= 0xFF00 && codePoint <= 0xFF60
                || codePoint >= 0xFFE0 && codePoint <= 0xFFE6
                || codePoint >= 0x1F300 && codePoint <= 0x1FAFF
                || codePoint >= 0x20000 && codePoint <= 0x3FFFD;
    }

    /** The text with blanks before it up to a width. */
    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - of(text))) + text;
    }

    /** The text with blanks after it up to a width. */
    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - of(text)));
    }

    /** The width of the widest piece that stays in one line however narrow that is. */
    static int ofWidestWord(String text) {
        int widest = 0;
        for (String word : text.split(" ")) {
            for (String piece : pieces(word)) {
                widest = Math.max(widest, of(piece));
            }
        }
        return widest;
    }

    /**
     * The text in lines no wider than that, broken at blanks and, within a word too wide for a line, beside
     * wide letters; what cannot be broken stands alone in its line.
     */
    static List<String> wrapped(String text, int width) {
        if (of(text) <= width) {
            return List.of(text);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int taken = 0;
        for (String word : text.split(" ")) {
            int gap = taken == 0 || word.isEmpty() ? 0 : 1;
            for (String piece : of(word) > width ? pieces(word) : List.of(word)) {
                int own = of(piece);
                if (taken > 0 && taken + gap + own > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    taken = 0;
                    gap = 0;
                }
                line.append(" ".repeat(gap)).append(piece);
                taken += gap + own;
                gap = 0;
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** A word in pieces: each wide letter, and what lies between, with the marks that belong to it. */
    private static List<String> pieces(String word) {
        List<String> pieces = new ArrayList<>();
        int start = 0;
        boolean wide = false;
        int before = 0;
        for (int i = 0; i < word.length(); i = word.offsetByCodePoints(i, 1)) {
            int codePoint = word.codePointAt(i);
            boolean joined = of(codePoint) == 0 || before == JOINER || codePoint >= FIRST_SKIN_TONE
                    && codePoint <= LAST_SKIN_TONE;
            if (!joined && i > start && (wide || wide(codePoint))) {
                pieces.add(word.substring(start, i));
                start = i;
            }
            wide = joined ? wide : wide(codePoint);
            before = codePoint;
        }
        pieces.add(word.substring(start));
        return pieces;
    }
}
