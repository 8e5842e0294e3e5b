package gloam.store;

import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Turns the text of a YAML or JSON file into {@link Node}s, every key and value with its line and column.
 *
 * <p>Aliases, tags, repeated keys and a second document are noted as problems, and so is deep nesting: no
 * file can make the tree much larger than itself, and none can have anything made but nodes.
 */
final class Tree {

    private static final int MOST_DEPTH = 24;
    /** What the parsers themselves stop at, whatever asks them. */
    static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(2 * MOST_DEPTH).maxNumberLength(1000).maxStringLength(TextFile.MOST_BYTES)
            .maxNameLength(TextFile.MOST_BYTES).maxDocumentLength(TextFile.MOST_BYTES).build();
    private static final TokenStreamFactory JSON = JsonFactory.builder().streamReadConstraints(LIMITS)
            .build();
    private static final TokenStreamFactory YAML = YAMLFactory.builder().streamReadConstraints(LIMITS)
            .loadSettings(LoadSettings.builder().setSchema(new CoreSchema()).setAllowDuplicateKeys(true)
            .build()).build();

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

        Where at(TokenStreamLocation place) {
            return place == null ? at(1, 1) : at(place.getLineNr(), place.getColumnNr());
        }

        Where at(int line, int column) {
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
        try (JsonParser parser = (json(text.file) ? JSON : YAML)
                .createParser(ObjectReadContext.empty(), text.content)) {
            return new Tree(text, findings, parser).document();
        } catch (JacksonException broken) {
            throw new BadInput(syntaxProblem(text, broken));
        }
    }

    private static boolean json(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return name.endsWith(".json") || name.endsWith(".jsonl");
    }

    private Node document() {
        if (parser.nextToken() == null) {
            throw new BadInput(text.file + ":" + text.firstLine + ":1: the file is empty");
        }
        Node root = node(0);
        if (parser.nextToken() != null) {
            note("a second document begins here. Keep one a file.");
        }
        return root;
    }

    private Node node(int depth) {
        Where at = here();
        if (tricky(depth)) {
            parser.skipChildren();
            return new Node.Gap(at.line(), at.column());
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> new Node.Section(entries(depth), at.line(), at.column());
            case START_ARRAY -> new Node.Row(items(depth), at.line(), at.column());
            default -> new Node.Scalar(parser.getString(), kind(), at.line(), at.column());
        };
    }

    private List<Node.Entry> entries(int depth) {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Where at = here();
            String key = parser.currentName();
            Integer before = lines.putIfAbsent(key, at.line());
            if (before != null) {
                note("the key " + Shown.quoted(key) + " is given twice, first on line " + before
                        + ". Keep one.");
            }
            parser.nextToken();
            Node value = node(depth + 1);
            if (before == null) {
                entries.add(new Node.Entry(key, at.line(), at.column(), value));
            }
        }
        return entries;
    }

    private List<Node> items(int depth) {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return items;
    }

    /** Whether a node is one that is not read, which is then noted. */
    private boolean tricky(int depth) {
        if (depth > MOST_DEPTH) {
            throw Fault.at(here(), "nested deeper than " + MOST_DEPTH + " levels. Is it the right file?");
        }
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            note("the alias *" + Shown.plain(parser.getString()) + " is not followed. Write the value out.");
        } else if (parser.getTypeId() != null) {
            note("YAML tags are not read. Leave the tag out.");
        } else {
            return false;
        }
        return true;
    }

    private Node.Kind kind() {
        return switch (parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.Kind.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Node.Kind.TRUTH;
            case VALUE_NULL -> Node.Kind.NOTHING;
            default -> parser.getString().isEmpty() ? Node.Kind.NOTHING : Node.Kind.TEXT;
        };
    }

    private void note(String problem) {
        findings.add(new Problem(here(), problem));
    }

    private Where here() {
        return text.at(parser.currentTokenLocation());
    }

    private static String syntaxProblem(Text text, JacksonException broken) {
        if (broken.getCause() instanceof MarkedYamlEngineException marked && marked.getProblemMark()
                .isPresent()) {
            Mark mark = marked.getProblemMark().get();
            return syntaxProblem(text.at(mark.getLine() + 1, mark.getColumn() + 1), marked.getProblem());
        }
        return syntaxProblem(text.at(broken.getLocation()), broken.getOriginalMessage());
    }

    private static String syntaxProblem(Where where, String message) {
        String language = json(where.file()) ? "JSON" : "YAML";
        String firstLine = message.lines().findFirst().orElse("cannot be read");
        return where + ": not " + language + ": "
                + Shown.plain(firstLine.replaceFirst(" \\(start marker.*", ""));
    }
}
