package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What {@code --format json} writes against the schema that {@code gloam schema} prints. */
class SchemaTest {

    private static final Path CASES = Path.of("src/test/resources/golden");
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Run.of("schema").out(), InputFormat.JSON);
    private static final List<String> FORMS = List.of("json", "svg", "html", "png", "ics", "csv");

    static Stream<List<String>> reports() throws IOException {
        List<List<String>> reports = new ArrayList<>();
        try (Stream<Path> cases = Files.list(CASES)) {
            for (Path folder : cases.sorted().toList()) {
                List<String> args = Files.readAllLines(folder.resolve("args"));
                if (Files.readString(folder.resolve("exit")).strip().equals("0") && isReport(args)) {
                    reports.add(asJson(args));
                }
            }
        }
        assertTrue(reports.size() >= 40, () -> "only " + reports.size() + " reports were found");
        return reports.stream();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void everyReportIsValid(List<String> args) {
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        assertEquals(List.of(), errors(run.out()));
    }

    @Test
    void whatIsMissingAddedOrOfAnotherKindIsNot() {
        String nights = Run.of("nights", "--trip", "demo-data/trip.yaml", "--format", "json").out();
        assertEquals(List.of(), errors(nights));
        assertFalse(errors(nights.replaceFirst("\"score\"", "\"scores\"")).isEmpty());
        assertFalse(errors(nights.replaceFirst("\"generatedAt\"", "\"more\" : 1, \"generatedAt\""))
                .isEmpty());
        assertFalse(errors(nights.replaceFirst("\"night\" :", "\"more\" : 1, \"night\" :")).isEmpty());
        assertFalse(errors(nights.replaceFirst("\"gloam/2\"", "\"gloam/1\"")).isEmpty());
    }

    private static boolean isReport(List<String> args) {
        return args.size() > 1 && List.of("sky", "nights", "expose", "trail", "proof", "plan", "check",
                "journal")
                .contains(args.get(0)) && !args.contains("--help") && !args.contains("export");
    }

    private static List<String> asJson(List<String> args) {
        List<String> json = new ArrayList<>(args);
        int format = json.indexOf("--format");
        if (format >= 0 && FORMS.contains(json.get(format + 1))) {
            json.set(format + 1, "json");
        } else {
            json.addAll(List.of("--format", "json"));
        }
        return json;
    }

    private static List<String> errors(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream().map(Object::toString).limit(5).toList();
    }
}
