package gloam.report;

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
    /** Indent of what a line too wide for the terminal goes on with, beyond its own. */
    private static final int HANGING = 4;

    private TextWidth() {
    }

    /**
     * Columns a text takes: two for wide East Asian letters and pictures, none for marks that combine. Pictures joined to
     * one, and skin tones, count as Unicode Technical Standard 51 has them shown: one picture.
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
            boolean joined = last == 2 && (before == JOINER || codePoint >= FIRST_SKIN_TONE && codePoint <= LAST_SKIN_TONE);
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
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
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

    /** A line of a table or a list as lines no wider than a terminal, broken at blanks where there are any. */
    static List<String> folded(String line, int width) {
        if (of(line) <= width) {
            return List.of(line);
        }
        List<String> lines = new ArrayList<>();
        String rest = line;
        String hanging = " ".repeat(Math.min(width / 2, line.length() - line.stripLeading().length() + HANGING));
        while (of(rest) > width) {
            int fits = 0;
            int next = rest.offsetByCodePoints(0, 1);
            while (of(rest.substring(0, next)) <= width) {
                fits = next;
                next = rest.offsetByCodePoints(next, 1);
            }
            int blank = rest.lastIndexOf(' ', fits);
            int cut = rest.substring(0, Math.max(0, blank)).isBlank() ? fits : blank;
            lines.add(rest.substring(0, cut).stripTrailing());
            rest = hanging + rest.substring(cut).strip();
        }
        lines.add(rest);
        return lines;
    }

    /** The text in lines no wider than that, broken at blanks; a longer word stands alone in its line. */
    static List<String> wrapped(String text, int width) {
        if (of(text) <= width) {
            return List.of(text);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int taken = 0;
        for (String word : text.split(" ")) {
            if (word.isEmpty()) {
                continue;
            }
            int wordWidth = of(word);
            if (taken > 0 && taken + 1 + wordWidth > width) {
                lines.add(line.toString());
                line.setLength(0);
                taken = 0;
            }
            line.append(taken == 0 ? "" : " ").append(word);
            taken += (taken == 0 ? 0 : 1) + wordWidth;
        }
        lines.add(line.toString());
        return lines;
    }
}
