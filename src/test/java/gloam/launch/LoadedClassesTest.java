package gloam.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a run loads: data binding costs every start that does not need it. */
class LoadedClassesTest {

    private static final String BINDING = "tools.jackson.databind.";

    @ParameterizedTest
    @ValueSource(strings = {
        "--version",
        "--help",
        "check --trip demo-data/trip.yaml",
        "plan --trip demo-data/trip-south.yaml",
        "nights --trip demo-data/trip-south.yaml",
        "sky --trip demo-data/trip.yaml --at 2027-02-08T22:30",
        "expose --trip demo-data/trip.yaml --sky-mag-arcsec2 21.4"
    })
    void textOfWhatReadsNoJsonLoadsNoDataBinding(String line) throws Exception {
        assertEquals(List.of(), bindingClasses(line));
    }

    @Test
    void jsonIsWrittenAndReadByDataBinding() throws Exception {
        assertTrue(bindingClasses("sky --trip demo-data/trip.yaml --at 2027-02-08T22:30 --format json")
                .contains(BINDING + "json.JsonMapper"));
        assertTrue(bindingClasses("journal list --journal demo-data/journal.jsonl")
                .contains(BINDING + "json.JsonMapper"));
    }

    private static List<String> bindingClasses(String line) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:stdout:none", "-cp", System.getProperty("java.class.path"), "gloam.Main"));
        command.addAll(List.of(line.split(" ")));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), out);
        List<String> loaded = out.lines().filter(said -> said.contains(" source: "))
                .map(said -> said.split(" ")[0]).toList();
        assertTrue(loaded.contains("gloam.Main"), out);
        return loaded.stream().filter(name -> name.startsWith(BINDING)).toList();
    }
}
