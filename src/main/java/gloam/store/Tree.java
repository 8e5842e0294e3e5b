package gloam.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import gloam.units.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Turns the text of a YAML or JSON file into {@link Node}s, every key and value with its line and column.
 *
 * <p>Aliases, tags, repeated keys and a second document are refused, and so is deep nesting: no file can make the
 * tree much larger than itself.
 */
final class Tree {

    private static final int MOST_DEPTH = 24;
    private static final JsonFactory JSON = new JsonFactory();
    private static final JsonFactory YAML = new YAMLFactory();

    private final String file;
    private final JsonParser parser;

    private Tree(String file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /** The tree of a text: JSON where the file's name ends in {@code .json} or {@code .jsonl}, YAML elsewhere. */
    static Node of(String file, String text) {
        try (JsonParser parser = (json(file) ? JSON : YAML).createParser(text)) {
            return new Tree(file, parser).document();
        } catch (JsonProcessingException broken) {
            throw new BadInput(syntaxProblem(file, broken));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static boolean json(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return name.endsWith(".json") || name.endsWith(".jsonl");
    }

    private Node document() throws IOException {
        if (parser.nextToken() == null) {
            throw new BadInput(file + ":1:1: the file is empty");
        }
        Node root = node(0);
        if (parser.nextToken() != null) {
            throw problem("a second document begins here. Keep one a file.");
        }
        return root;
    }

    private Node node(int depth) throws IOException {
        refuseTricks(depth);
        JsonLocation at = parser.currentTokenLocation();
        return switch (parser.currentToken()) {
            case START_OBJECT -> new Node.Section(entries(depth), at.getLineNr(), at.getColumnNr());
            case START_ARRAY -> new Node.Row(items(depth), at.getLineNr(), at.getColumnNr());
            default -> new Node.Scalar(parser.getText(), kind(), at.getLineNr(), at.getColumnNr());
        };
    }

    private List<Node.Entry> entries(int depth) throws IOException {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            JsonLocation at = parser.currentTokenLocation();
            String key = parser.currentName();
            Integer before = lines.put(key, at.getLineNr());
            if (before != null) {
                throw problem("the key " + Shown.quoted(key) + " is given twice, first on line " + before
                        + ". Keep one.");
            }
            parser.nextToken();
            entries.add(new Node.Entry(key, at.getLineNr(), at.getColumnNr(), node(depth + 1)));
        }
        return entries;
    }

    private List<Node> items(int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return items;
    }

    private void refuseTricks(int depth) throws IOException {
        if (depth > MOST_DEPTH) {
            throw problem("nested deeper than " + MOST_DEPTH + " levels. Is it the right file?");
        }
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            throw problem("the alias *" + Shown.plain(parser.getText()) + " is not followed. Write the value out.");
        }
        if (parser.getTypeId() != null) {
            throw problem("YAML tags are not read. Leave the tag out.");
        }
    }

    private Node.Kind kind() throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.Kind.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Node.Kind.TRUTH;
            case VALUE_NULL -> Node.Kind.NOTHING;
            default -> parser.getText().isEmpty() ? Node.Kind.NOTHING : Node.Kind.TEXT;
        };
    }

    private BadInput problem(String text) {
        JsonLocation at = parser.currentTokenLocation();
        return new BadInput(new Problem(new Where(file, at.getLineNr(), at.getColumnNr(), ""), text).toString());
    }

    private static String syntaxProblem(String file, JsonProcessingException broken) {
        if (broken.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            return syntaxProblem(file, marked.getProblemMark().getLine() + 1, marked.getProblemMark().getColumn() + 1,
                    marked.getProblem());
        }
        JsonLocation at = broken.getLocation();
        return syntaxProblem(file, at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr(),
                broken.getOriginalMessage());
    }

    private static String syntaxProblem(String file, int line, int column, String message) {
        String language = json(file) ? "JSON" : "YAML";
        String firstLine = message.lines().findFirst().orElse("cannot be read");
        return new Where(file, line, column, "") + ": not " + language + ": " + Shown.plain(firstLine);
    }
}
