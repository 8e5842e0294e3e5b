package gloam.view;

import gloam.units.PlainText;

/**
 * Content lines of iCalendar: texts escaped, lines folded at 75 octets and ended by CRLF (RFC 5545, 3.1 and
 * 3.3.11).
 */
final class IcsText {

    private static final int MOST_OCTETS = 75;

    private final StringBuilder text = new StringBuilder();

    /** A property whose value stands as it is. */
    IcsText line(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** A property whose value is a text. */
    IcsText words(String name, String words) {
        return line(name, escaped(words));
    }

    private static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        words.replace("\r\n", "\n").codePoints().forEach(point -> {
            switch (point) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(point);
                case '\n', '\r' -> escaped.append("\\n");
                default -> escaped.appendCodePoint(PlainText.harmless(point) ? point : ' ');
            }
        });
        return escaped.toString();
    }

    private void fold(String line) {
        int octets = 0;
        for (int point : line.codePoints().toArray()) {
            int more = point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
            if (octets + more > MOST_OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.appendCodePoint(point);
            octets += more;
        }
        text.append("\r\n");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
