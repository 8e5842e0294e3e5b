package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every figure in a refusal is what the command shows that is printed beside it. */
class RefusalCommandTest {

    private static final Pattern COMMAND = Pattern.compile("\\(gloam (expose|trail) ([^)]*)\\)");
    private static final Pattern WORD = Pattern.compile("\\\\\"([^\"]*)\\\\\"|(\\S+)");
    /** Plans add light up by the minute, and reasons round to a tenth. */
    private static final double STOPS = 0.08;

    @TempDir
    Path folder;

    private Path trip() throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Eight sheets
                sites:
                  - {name: Heath gate, latitude-deg: 54.3, longitude-deg: -2.1, height-m: 400, zone: Europe/London}
                nights: {from: 2027-01-10, to: 2027-01-10}
                camera: {name: box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8, 11, 16]}
                film: instant-mono-640
                sheets: 8
                wishes:
                  - name: Grey north
                    point: {azimuth-deg: 20, altitude-deg: 12}
                    sky: dark
                    tone-stops: 0
                    exposure-min: {shortest: 5, longest: 45}
                  - name: Light dusk
                    point: {azimuth-deg: 320, altitude-deg: 10}
                    sky: dusk
                    sun-depth-deg: {least: 9, most: 11}
                    tone-at-most-stops: -2
                    f-numbers: [16]
                    exposure-min: {shortest: 30, longest: 60}
                """);
    }

    @Test
    void aToneInARefusalIsThatOfItsCommand() throws IOException {
        Path trip = trip();
        String plan = Run.of("plan", "--trip", trip.toString(), "--format", "json").out();
        String nights = plan.substring(0, plan.indexOf("\"unserved\""));
        Matcher reason = Pattern.compile("\"reason\" : \"the nearest tone is (\\S+) at f/\\d+ "
                + "[^(]*(\\(gloam .*?\\))")
                .matcher(nights);
        List<String> tones = new ArrayList<>();
        while (reason.find()) {
            String shown = run(reason.group(2), trip);
            Matcher tone = Pattern.compile("\"skyToneStops\" : (-?[\\d.]+)").matcher(shown);
            assertTrue(tone.find(), shown);
            assertEquals(Double.parseDouble(tone.group(1)),
                    Double.parseDouble(reason.group(1).replace('−', '-')), STOPS, reason.group());
            tones.add(reason.group(1));
        }
        assertEquals(2, tones.size(), plan);
    }

    private static String run(String printed, Path trip) {
        Matcher command = COMMAND.matcher(printed);
        assertTrue(command.find(), printed);
        List<String> args = new ArrayList<>(List.of(command.group(1)));
        WORD.matcher(command.group(2)).results().map(RefusalCommandTest::word)
                .forEach(word -> args.add(word.equals("FILE") ? trip.toString() : word));
        args.addAll(List.of("--format", "json"));
        return Run.of(args).out();
    }

    private static String word(MatchResult found) {
        return found.group(1) != null ? found.group(1) : found.group(2);
    }
}
