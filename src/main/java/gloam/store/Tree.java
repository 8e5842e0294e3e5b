package gloam.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
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
 * <p>Aliases, tags, repeated keys and a second document are noted as problems, and so is deep nesting: no file can make
 * the tree much larger than itself, and none can have anything made but nodes.
 */
final class Tree {

    private static final int MOST_DEPTH = 24;
    /** What the parsers themselves stop at, whatever asks them. */
    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(2 * MOST_DEPTH).maxNumberLength(1000).maxStringLength(TextFile.MOST_BYTES)
            .maxNameLength(TextFile.MOST_BYTES).maxDocumentLength(TextFile.MOST_BYTES).build();
    private static final JsonFactory JSON = JsonFactory.builder().streamReadConstraints(LIMITS).build();
    private static final JsonFactory YAML = YAMLFactory.builder().streamReadConstraints(LIMITS).build();

    private final Text text;
    private final Findings findings;
    private final JsonParser parser;

    private Tree(Text text, Findings findings, JsonParser parser) {
        this.text = text;
        this.findings = findings;
        this.parser = parser;
    }

    /**
     * A text and where it is from.
     *
     * @param file      the file's name as it was given
     * @param firstLine the line of the file on which it begins
     * @param content   the text
     */
    record Text(String file, int firstLine, String content) {

        private Where at(JsonLocation place) {
            return at(place.getLineNr(), place.getColumnNr());
        }

        private Where at(int line, int column) {
            return new Where(file, line + firstLine - 1, column, "");
        }
    }

    /**
     * The tree of a whole file: JSON where its name ends in {@code .json} or {@code .jsonl}, YAML elsewhere.
     *
     * @throws BadInput when it breaks the language's rules; what is only not read here goes to the findings
     */
    static Node of(String file, String content, Findings findings) {
        return of(new Text(file, 1, content), findings);
    }

    /** The tree of a text, as that of a whole file. */
    static Node of(Text text, Findings findings) {
        try (JsonParser parser = (json(text.file) ? JSON : YAML).createParser(text.content)) {
            return new Tree(text, findings, parser).document();
        } catch (JsonProcessingException broken) {
            throw new BadInput(syntaxProblem(text, broken));
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
            throw new BadInput(text.file + ":" + text.firstLine + ":1: the file is empty");
        }
        Node root = node(0);
        if (parser.nextToken() != null) {
            note("a second document begins here. Keep one a file.");
        }
        return root;
    }

    private Node node(int depth) throws IOException {
        Where at = here();
        if (tricky(depth)) {
            parser.skipChildren();
            return new Node.Gap(at.line(), at.column());
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> new Node.Section(entries(depth), at.line(), at.column());
            case START_ARRAY -> new Node.Row(items(depth), at.line(), at.column());
            default -> new Node.Scalar(parser.getText(), kind(), at.line(), at.column());
        };
    }

    private List<Node.Entry> entries(int depth) throws IOException {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Where at = here();
            String key = parser.currentName();
            Integer before = lines.putIfAbsent(key, at.line());
            if (before != null) {
                note("the key " + Shown.quoted(key) + " is given twice, first on line " + before + ". Keep one.");
            }
            parser.nextToken();
            Node value = node(depth + 1);
            if (before == null) {
                entries.add(new Node.Entry(key, at.line(), at.column(), value));
            }
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

    /** Whether a node is one that is not read, which is then noted. */
    private boolean tricky(int depth) throws IOException {
        if (depth > MOST_DEPTH) {
            throw Fault.at(here(), "nested deeper than " + MOST_DEPTH + " levels. Is it the right file?");
        }
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            note("the alias *" + Shown.plain(parser.getText()) + " is not followed. Write the value out.");
        } else if (parser.getTypeId() != null) {
            note("YAML tags are not read. Leave the tag out.");
        } else {
            return false;
        }
        return true;
    }

    private Node.Kind kind() throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.Kind.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Node.Kind.TRUTH;
            case VALUE_NULL -> Node.Kind.NOTHING;
            default -> parser.getText().isEmpty() ? Node.Kind.NOTHING : Node.Kind.TEXT;
        };
    }

    private void note(String problem) {
        findings.add(new Problem(here(), problem));
    }

    private Where here() {
        return text.at(parser.currentTokenLocation());
    }

    private static String syntaxProblem(Text text, JsonProcessingException broken) {
        if (broken.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            return syntaxProblem(text.at(marked.getProblemMark().getLine() + 1, marked.getProblemMark().getColumn() + 1),
                    marked.getProblem());
        }
        JsonLocation at = broken.getLocation();
        return syntaxProblem(at == null ? text.at(1, 1) : text.at(at), broken.getOriginalMessage());
    }

    private static String syntaxProblem(Where where, String message) {
        String language = json(where.file()) ? "JSON" : "YAML";
        String firstLine = message.lines().findFirst().orElse("cannot be read");
        return where + ": not " + language + ": " + Shown.plain(firstLine.replaceFirst(" \\(start marker.*", ""));
    }
}
