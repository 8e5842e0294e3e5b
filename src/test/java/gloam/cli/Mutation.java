package gloam.cli;

import gloam.support.FinalsColumns;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/** Ways to damage a file. */
final class Mutation {

    /** What stands well, or very badly, where another value stood. */
    static final List<String> VALUES = List.of("NaN", ".nan", "Infinity", ".inf", "-1e308", "1e999", "1e-320",
            "-0",
            "9".repeat(400), "0x10", "012", "1_000", "1,5", "\u0661\u0662", "null", "~", "true", "no", "",
            " ", "-1", "0",
            "1", "1.5", "90", "360", "1e7", "2147483648", "-9223372036854775809", "2027-13-45", "2027-02-30",
            "+999999999-12-31", "2027-02-08", "2027-03-28T02:30", "24:00", "mars", "sun", "pole", "Vega",
            "infinity",
            "Europe/Madrid", "+18:00", "../../../etc/passwd", "/etc/passwd", "/dev/zero", ".", "trip.yaml",
            "skyline.csv",
            "film.yaml", "\"\\u0000\"", "\"\\e[31m\\u009b2J\"", "\"\\u202e\"", "\"a\\nb\"", "\"\\uD800\"",
            "<script>alert(1)</script>", "'=cmd|x!A1'", "\uD83D\uDE00\u0301\u4E2D\u05D0", "%s%n%d",
            "${sys:user.home}", "x".repeat(3000));
    private static final List<String> PIECES = List.of("[", "]", "{", "}", ":", ": ", "- ", "\n", "\r",
            "\r\n", "\t", "&a ",
            "*a", "&a [*a]", "!!java.net.URL ", "!!python/object:os ", "!<x> ", "\"", "'", "|", ">", "---\n",
            "...\n", "%YAML 9",
            "#", "\u0000", "\u001b[2J", "\uFEFF", "\u202E", "\u2028", "\u0085", "\uD83D\uDE00", "? ", "<<: ",
            ",", ",,", "\\", "\\u",
            "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", "{a: ".repeat(40), "[".repeat(3000), "- ".repeat(3000), "a:\n ",
            "=", "@", "`");
    private static final String PARTING = " \t\r\n,:{}[]\"";

    private Mutation() {
    }

    /** Up to four changes to a file. */
    static byte[] of(byte[] sound, RandomGenerator random) {
        byte[] bytes = sound;
        int changes = random.nextInt(5);
        for (int i = 0; i < changes; i++) {
            bytes = change(bytes, random);
        }
        return switch (random.nextInt(24)) {
            case 0 -> text(bytes).replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1);
            case 1 -> text(bytes).replace("\n", "\r").getBytes(StandardCharsets.ISO_8859_1);
            case 2 -> ("\u00EF\u00BB\u00BF" + text(bytes)).getBytes(StandardCharsets.ISO_8859_1);
            case 3 -> new String(bytes, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_16);
            default -> bytes;
        };
    }

    private static byte[] change(byte[] bytes, RandomGenerator random) {
        return switch (random.nextInt(8)) {
            case 0 -> Arrays.copyOf(bytes, at(bytes, random));
            case 1, 2, 3 -> token(text(bytes), random).getBytes(StandardCharsets.ISO_8859_1);
            case 4 -> swappedLines(text(bytes), random).getBytes(StandardCharsets.ISO_8859_1);
            case 5 -> spliced(bytes, random, String.valueOf((char) random.nextInt(256)));
            default -> spliced(bytes, random, utf8(PIECES.get(random.nextInt(PIECES.size()))));
        };
    }

    private static byte[] spliced(byte[] bytes, RandomGenerator random, String piece) {
        int at = at(bytes, random);
        int length = Math.min(bytes.length - at, random.nextInt(12));
        String text = text(bytes);
        return (text.substring(0, at) + piece + text.substring(at + length))
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    /** One word of the file replaced by another of it or by a strange one. */
    private static String token(String text, RandomGenerator random) {
        Span token = word(text, random);
        Span another = word(text, random);
        String other = random.nextInt(3) == 0 ? text.substring(another.start, another.end)
                : utf8(VALUES.get(random.nextInt(VALUES.size())));
        return text.substring(0, token.start) + other + text.substring(token.end);
    }

    /** A word near a random place. */
    private static Span word(String text, RandomGenerator random) {
        int start = text.isEmpty() ? 0 : random.nextInt(text.length());
        while (start < text.length() && PARTING.indexOf(text.charAt(start)) >= 0) {
            start++;
        }
        int end = start;
        while (start > 0 && PARTING.indexOf(text.charAt(start - 1)) < 0) {
            start--;
        }
        while (end < text.length() && PARTING.indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return new Span(start, end);
    }

    private record Span(int start, int end) {
    }

    private static String swappedLines(String text, RandomGenerator random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        int from = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(from);
            case 1 -> lines.add(random.nextInt(lines.size()), lines.get(from));
            default -> lines.add(random.nextInt(lines.size()), lines.remove(from));
        }
        return String.join("\n", lines) + "\n";
    }

    private static int at(byte[] bytes, RandomGenerator random) {
        return bytes.length == 0 ? 0 : random.nextInt(bytes.length);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static String utf8(String piece) {
        return text(piece.getBytes(StandardCharsets.UTF_8));
    }

    static byte[] finals() {
        return FinalsColumns.february2027().getBytes(StandardCharsets.US_ASCII);
    }
}
