package gloam.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** What is in files made to break a reader, by name. */
final class Monsters {

    static final int HUGE = 50_000_000;
    private static final String HUGE_NAME = "50 MB of ";
    /** The largest file that is read at all. */
    private static final int LARGE = (1 << 20) - 100;

    static final Map<String, Supplier<byte[]>> ALL = new TreeMap<>(Map.ofEntries(
            Map.entry("nothing", () -> new byte[0]),
            Map.entry("blanks", () -> repeated(" ", LARGE)),
            Map.entry("line ends", () -> repeated("\n", LARGE)),
            Map.entry("old line ends", () -> repeated("\r", LARGE)),
            Map.entry(HUGE_NAME + "one letter", () -> repeated("a", HUGE)),
            Map.entry(HUGE_NAME + "brackets", () -> repeated("[", HUGE)),
            Map.entry(HUGE_NAME + "lines", () -> repeated("a: 1\n", HUGE)),
            Map.entry("brackets", () -> repeated("[", LARGE)),
            Map.entry("braces", () -> repeated("{\"a\":", LARGE)),
            Map.entry("YAML braces", () -> repeated("{a: ", LARGE)),
            Map.entry("dashes", () -> repeated("- ", LARGE)),
            Map.entry("questions", () -> repeated("? ", LARGE)),
            Map.entry("indents", Monsters::staircase),
            Map.entry("a long word", () -> repeated("a", LARGE)),
            Map.entry("a long number", () -> bytes("[" + "9".repeat(LARGE - 10) + "]")),
            Map.entry("a long key", () -> bytes("a".repeat(LARGE - 10) + ": 1")),
            Map.entry("one key again and again", () -> repeated("a: 1\n", LARGE)),
            Map.entry("many keys", Monsters::manyKeys),
            Map.entry("many items", () -> bytes("sites: [" + "{}, ".repeat(LARGE / 4 - 10) + "{}]")),
            Map.entry("commas", () -> repeated(",", LARGE)),
            Map.entry("quotes", () -> repeated("\"", LARGE)),
            Map.entry("anchors", () -> repeated("&a ", LARGE)),
            Map.entry("aliases that multiply", Monsters::bomb),
            Map.entry("an alias of itself", () -> bytes("a: &a [*a, *a]\n<<: *a\n")),
            Map.entry("tags that make objects", () -> bytes("!!javax.script.ScriptEngineManager "
                    + "[!!java.net.URLClassLoader [[!!java.net.URL [\"http://localhost/\"]]]]\n")),
            Map.entry("types in JSON",
            () -> bytes("{\"@class\": \"java.net.URL\", \"@type\": \"java.net.URL\"}")),
            Map.entry("TAF groups", () -> bytes("TAF 0818/0924 " + "TEMPO 0820/0822 OVC001 ".repeat(40_000))),
            Map.entry("Latin-1", () -> "a: \u00e9\u00e8\n".getBytes(StandardCharsets.ISO_8859_1)),
            Map.entry("UTF-16", () -> "\uFEFFa: 1\n".getBytes(StandardCharsets.UTF_16LE)),
            Map.entry("UTF-32", () -> new byte[] {(byte) 0xff, (byte) 0xfe, 0, 0, 'a', 0, 0, 0}),
            Map.entry("two marks of byte order", () -> bytes("\uFEFF\uFEFFa: 1\n")),
            Map.entry("zeros", () -> new byte[LARGE]),
            Map.entry(HUGE_NAME + "zeros", () -> new byte[HUGE])));

    private Monsters() {
    }

    static byte[] repeated(String piece, int length) {
        byte[] one = bytes(piece);
        ByteArrayOutputStream all = new ByteArrayOutputStream(length);
        while (all.size() + one.length <= length) {
            all.writeBytes(one);
        }
        return all.toByteArray();
    }

    private static byte[] staircase() {
        StringBuilder text = new StringBuilder();
        for (int depth = 0; text.length() < LARGE - 2000; depth++) {
            text.append(" ".repeat(depth)).append("a:\n");
        }
        return bytes(text.toString());
    }

    private static byte[] manyKeys() {
        StringBuilder text = new StringBuilder();
        for (int key = 0; text.length() < LARGE - 20; key++) {
            text.append('k').append(key).append(": 1\n");
        }
        return bytes(text.toString());
    }

    /** Each line doubles what the one before means ninefold: 9^20 items, were aliases followed. */
    private static byte[] bomb() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i <= 20; i++) {
            text.append("a").append(i).append(": &a").append(i).append(" [")
                    .append(("*a" + (i - 1) + ", ").repeat(8))
                    .append("*a").append(i - 1).append("]\n");
        }
        return bytes(text.toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
