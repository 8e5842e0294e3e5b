package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.json.JsonMapper;

/** The approved JSON outputs as a strict reader meets them. */
class GoldenJsonTest {

    private static final JsonMapper STRICT =
            JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    static Stream<Path> jsonOutputs() throws IOException {
        try (Stream<Path> cases = Files.list(Path.of("src/test/resources/golden"))) {
            List<Path> outputs = cases.filter(golden -> golden.getFileName().toString().endsWith("-json"))
                    .map(golden -> golden.resolve("out")).sorted().toList();
            assertTrue(outputs.size() >= 13, outputs.toString());
            return outputs.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("jsonOutputs")
    void isOneObjectOfTheContractWithNumbersCutByTheirUnits(Path output) throws IOException {
        String text = Files.readString(output);
        assertEquals(Report.SCHEMA, STRICT.readTree(text).get("schema").stringValue());
        try (JsonParser json = STRICT.createParser(text)) {
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                if (token == JsonToken.VALUE_NUMBER_FLOAT) {
                    String name = json.currentName() == null ? json.streamReadContext().getParent()
                            .currentName() : json.currentName();
                    assertEquals(json.getString(), Accuracy.of(name).text(json.getDoubleValue()), name);
                }
            }
        }
    }
}
