package gloam.report;

import java.util.ArrayList;
import java.util.List;

/** How wide text stands on a terminal, in columns. */
final class TextWidth {

    private TextWidth() {
    }

    /** Columns a text takes: two for wide East Asian letters and pictures, none for marks that combine. */
    static int of(String text) {
        return text.codePoints().map(TextWidth::of).sum();
    }

    private static int of(int codePoint) {
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

    /** The text in lines no wider than that, broken at blanks; a longer word stands alone in its line. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && of(line.toString()) + 1 + of(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
