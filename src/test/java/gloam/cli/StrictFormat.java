package gloam.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import net.fortuna.ical4j.data.CalendarBuilder;
import org.jsoup.parser.Parser;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads what was written as strictly as its format allows; what is wrong is an {@link AssertionError}. */
final class StrictFormat {

    /**
     * Duplicate keys, NaN and Infinity, comments, commas too many and whatever follows the value are refused.
     */
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();
    /** RFC 4180: a field is quoted, its quotes doubled, or has no quote, comma or end of line. */
    private static final Pattern CSV_FIELD = Pattern.compile("(?:\"(?:[^\"]|\"\")*\"|[^\",\r\n]*)(,|\r?\n)");
    /** RFC 5545, 3.1: a name, parameters, a value; no control character but the tab. */
    private static final Pattern ICS_LINE = Pattern.compile(
            "[A-Z][A-Z0-9-]*(;[A-Z0-9-]+=(\"[^\"]*\"|[^\";:,]*))*:[^\\x00-\\x08\\x0A-\\x1F\\x7F]*");
    /** Unicode Standard Annex 9: what runs the other way is set apart, or it turns what stands about it. */
    private static final Pattern FROM_RIGHT = Pattern.compile("[\\p{IsHebrew}\\p{IsArabic}]");
    private static final String ISOLATED = "\u2068[^\u2068\u2069]*\u2069";
    private static final int MOST_OCTETS = 75;
    private static final int MOST_HTML_ERRORS = 3;
    /** Times of a year and more are told as such, not as numbers. */
    private static final double MOST_S = 366 * 86_400.0;

    private StrictFormat() {
    }

    /** Reads the content of a file or stream of a format, named by its usual ending. */
    static void check(String format, byte[] content) {
        try {
            switch (format) {
                case "json" -> json(utf8(content));
                case "csv" -> csv(utf8(content));
                case "svg" -> xml(utf8(content));
                case "html" -> html(utf8(content));
                case "ics" -> ics(utf8(content));
                case "png" -> require(ImageIO.read(new ByteArrayInputStream(content)) != null, "no picture");
                default -> text(utf8(content));
            }
        } catch (AssertionError told) {
            throw new AssertionError(format + ": " + told.getMessage());
        } catch (Exception unreadable) {
            throw new AssertionError(format + " cannot be read: " + unreadable);
        }
    }

    static JsonNode json(String content) throws IOException {
        JsonNode tree = JSON.readTree(content);
        require(tree.isObject(), "no object");
        numbers("", tree);
        return tree;
    }

    private static void numbers(String name, JsonNode node) {
        if (node.isNumber()) {
            require(Double.isFinite(node.doubleValue()), name + " is not finite");
            require(!name.matches(".*[a-z]S") || Math.abs(node.doubleValue()) <= MOST_S,
                    name + " " + node + " is more than a year");
        }
        if (node.isString()) {
            require(!List.of("NaN", "Infinity", "-Infinity", "null").contains(node.stringValue()),
                    name + " is " + node);
        }
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            numbers(field.getKey(), field.getValue());
        }
        if (node.isArray()) {
            node.forEach(element -> numbers(name, element));
        }
    }

    private static void csv(String content) {
        Matcher field = CSV_FIELD.matcher(content);
        int columns = 0;
        int inRow = 0;
        while (field.lookingAt()) {
            inRow++;
            if (!field.group(1).equals(",")) {
                columns = columns == 0 ? inRow : columns;
                require(inRow == columns, "a row of " + inRow + " fields below a head of " + columns);
                inRow = 0;
            }
            field.region(field.end(), content.length());
        }
        require(field.regionStart() == content.length() && inRow == 0, "stops at: "
                + content.substring(field.regionStart(), Math.min(content.length(), field.regionStart()
                + 80)));
        words(content);
    }

    private static void xml(String content) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(new DefaultHandler());
        String root = builder.parse(new InputSource(new StringReader(content))).getDocumentElement()
                .getTagName();
        require(root.equals("svg"), "the root is " + root);
        words(content);
    }

    private static void html(String content) {
        Parser parser = Parser.htmlParser().setTrackErrors(MOST_HTML_ERRORS);
        parser.parseInput(content, "");
        require(parser.getErrors().isEmpty(), parser.getErrors().toString());
        require(content.stripTrailing().endsWith("</html>"), "not closed");
        words(content.replaceAll("(?s)base64,[A-Za-z0-9+/=\\s]+|<script.*?</script>", ""));
    }

    private static void ics(String content) throws Exception {
        require(content.endsWith("\r\n") && !content.replace("\r\n", "").matches("(?s).*[\r\n].*"),
                "a line ends otherwise");
        for (String line : content.split("\r\n")) {
            require(line.getBytes(StandardCharsets.UTF_8).length <= MOST_OCTETS, "longer than 75 octets: "
                    + line);
        }
        Deque<String> open = new ArrayDeque<>();
        for (String line : content.replaceAll("\r\n[ \t]", "").split("\r\n")) {
            require(ICS_LINE.matcher(line).matches(), "no content line: " + line);
            if (line.startsWith("BEGIN:")) {
                open.push(line.substring("BEGIN:".length()));
            } else if (line.startsWith("END:")) {
                require(!open.isEmpty() && open.pop().equals(line.substring("END:".length())), line
                        + " closes another");
            }
        }
        require(open.isEmpty(), "left open: " + open);
        require(!new CalendarBuilder().build(new StringReader(content)).validate().hasErrors(), "not valid");
        words(content);
    }

    private static void text(String content) {
        require(content.isEmpty() || content.endsWith("\n"), "the last line has no end");
        content.lines().forEach(line -> {
            require(line.codePoints().noneMatch(Character::isISOControl), "control character: " + line);
            require(line.equals(line.stripTrailing()), "a blank at the end, as if something were left out: \""
                    + line + "\"");
            require(!line.matches(".*\\b\\d{4,} d\\b.*"), "more than a year: " + line);
            require(!FROM_RIGHT.matcher(line.replaceAll(ISOLATED, "")).find(),
                    "writing from the right not set apart: " + line);
        });
        words(content);
    }

    private static void words(String content) {
        Matcher word = FuzzVerdict.NO_WORD.matcher(content);
        require(!word.find(), () -> "says " + word.group() + ": "
                + content.substring(Math.max(0, word.start() - 60), Math.min(content.length(), word.end()
                + 20)));
    }

    private static String utf8(byte[] content) throws IOException {
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
    }

    private static void require(boolean met, String otherwise) {
        require(met, () -> otherwise);
    }

    private static void require(boolean met, java.util.function.Supplier<String> otherwise) {
        if (!met) {
            throw new AssertionError(otherwise.get());
        }
    }
}
