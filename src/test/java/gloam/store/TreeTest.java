package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TreeTest {

    private static final String YAML = """
            # a comment
            title: Ten nights
            nights: {from: 2027-02-01, 'to': "x"}
            list:
              - 1.5
              - name: a
                on: NO
            empty:
            """;

    private static final String JSON = """
            {
              "title": "Ten nights",
              "nights": {"from": 3, "to": "x"},
              "list": [1.5,
                {"name": null, "on": false}]
            }
            """;

    @Test
    void everyKeyAndValueOfYamlHasItsPlace() {
        assertEquals(List.of("2:1 title", "2:8 Ten nights TEXT",
                "3:1 nights", "3:10 from", "3:16 2027-02-01 TEXT", "3:28 to", "3:34 x TEXT",
                "4:1 list", "5:5 1.5 NUMBER", "6:5 name", "6:11 a TEXT", "7:5 on", "7:9 NO TEXT",
                "8:1 empty", "8:7  NOTHING"), places(tree("a.yaml", YAML)));
    }

    @Test
    void everyKeyAndValueOfJsonHasItsPlace() {
        assertEquals(List.of("2:3 title", "2:12 Ten nights TEXT",
                "3:3 nights", "3:14 from", "3:22 3 NUMBER", "3:25 to", "3:31 x TEXT",
                "4:3 list", "4:12 1.5 NUMBER", "5:6 name", "5:14 null NOTHING", "5:20 on",
                "5:26 false TRUTH"), places(tree("a.json", JSON)));
    }

    @Test
    void sectionsAndListsHaveTheirPlaces() {
        Node.Section root = (Node.Section) tree("a.yaml", YAML);
        Node list = root.entry("list").orElseThrow().value();
        assertEquals(new Spot(5, 3), Spot.of(list));
        assertEquals(new Spot(3, 9), Spot.of(root.entry("nights").orElseThrow().value()));
        assertEquals(new Spot(6, 5), Spot.of(((Node.Row) list).items().get(1)));
    }

    @Test
    void jsonIsReadAsYamlToo() {
        assertEquals(List.of("1:2 a", "1:7 1 NUMBER"), places(tree("a.yaml", "{\"a\": 1}")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a: 1\\nb: 2\\na: 3         | f.yaml:3:1: the key "a" is given twice, first on line 1. Keep one.
            a: &x 1\\nb: *x           | f.yaml:2:4: the alias *x is not followed. Write the value out.
            a: &x {b: 1}\\n<<: *x     | f.yaml:2:5: the alias *x is not followed. Write the value out.
            a: !!int 3                | f.yaml:1:4: YAML tags are not read. Leave the tag out.
            a: !!javax.script.X [b]   | f.yaml:1:4: YAML tags are not read. Leave the tag out.
            a: 1\\n---\\nb: 2         | f.yaml:3:1: a second document begins here. Keep one a file.
            a: b: c                   | f.yaml:1:5: not YAML: mapping values are not allowed here
            a: [1, 2                  | f.yaml:1:9: not YAML: expected ',' or ']', but got <stream end>
            # nothing                 | f.yaml:1:1: the file is empty
            """)
    void trickyAndBrokenYamlIsRefused(String text, String problem) {
        assertEquals(problem, refusal("f.yaml", text.replace("\\n", "\n")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"a": 1, "a": 2} | f.json:1:10: the key "a" is given twice, first on line 1. Keep one.
            {"a": 1} 2       | f.json:1:10: a second document begins here. Keep one a file.
            """)
    void trickyJsonIsRefused(String text, String problem) {
        assertEquals(problem, refusal("f.json", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"a\": }", "{\"a\": 1", "{a: 1}", "{\"a\": NaN}", "[1,]", "{\"a\": 012}"})
    void brokenJsonIsRefusedWithItsPlace(String text) {
        assertTrue(refusal("f.json", text).matches("f\\.json:1:\\d+: not JSON: .+"), refusal("f.json", text));
    }

    @Test
    void deepNestingIsRefusedAndNotFollowed() {
        String deep = "[".repeat(100_000);
        assertEquals("f.json:1:26: nested deeper than 24 levels. Is it the right file?",
                refusal("f.json", deep));
        assertEquals("f.yaml:1:26: nested deeper than 24 levels. Is it the right file?",
                refusal("f.yaml", deep));
    }

    private static String refusal(String file, String text) {
        return assertThrows(BadInput.class, () -> tree(file, text)).getMessage();
    }

    private static Node tree(String file, String text) {
        Findings findings = new Findings();
        return findings.result(() -> Tree.of(file, text, findings));
    }

    private static List<String> places(Node node) {
        List<String> places = new ArrayList<>();
        collect(node, places);
        return places;
    }

    private static void collect(Node node, List<String> places) {
        if (node instanceof Node.Section section) {
            section.entries().forEach(entry -> {
                places.add(entry.line() + ":" + entry.column() + " " + entry.key());
                collect(entry.value(), places);
            });
        } else if (node instanceof Node.Row row) {
            row.items().forEach(item -> collect(item, places));
        } else if (node instanceof Node.Scalar scalar) {
            places.add(scalar.line() + ":" + scalar.column() + " " + scalar.text() + " " + scalar.kind());
        }
    }

    private record Spot(int line, int column) {

        static Spot of(Node node) {
            return new Spot(node.line(), node.column());
        }
    }
}
