package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Trips with several cameras. */
class SeveralCamerasTest {

    private static final String BOX =
            "{name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11, 16], changeover-min: 6}";
    private static final String PLATE = "{name: Plate camera, focal-length-mm: 150, frame-mm: 4x5in, "
            + "f-numbers: [8, 11, 16], transmittance: 0.45, changeover-min: 30}";

    @TempDir
    Path folder;

    /** A night with time for one sheet of each wish after the other in no camera. */
    private String trip(String cameras, String wheel) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Two cameras
                sites:
                  - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-05}
                %s
                film: instant-mono-640
                sheets: 4
                wishes:
                  - name: Wheel
                    pole: {}
                    time-of-night: {from: "20:00", to: "23:30"}
                    exposure-min: {shortest: 150, longest: 180}
                %s
                  - name: South
                    point: {azimuth-deg: 180, altitude-deg: 40}
                    time-of-night: {from: "20:00", to: "23:30"}
                    exposure-min: {shortest: 150, longest: 180}
                """.formatted(cameras, wheel.isEmpty() ? "" : "    " + wheel)).toString();
    }

    private String two(String wheel) throws IOException {
        return trip("cameras: [" + BOX + ", " + PLATE + "]", wheel);
    }

    private static List<JsonNode> windows(String trip) throws IOException {
        return Timetables.windows(Timetables.json(trip));
    }

    private static String cameras(List<JsonNode> windows) {
        return windows.stream().map(window -> window.get("wish").asString() + ": "
                + window.get("camera").asString()).sorted().collect(Collectors.joining(", "));
    }

    @Test
    void twoExposeAtOnce() throws IOException {
        assertEquals(1, windows(trip("camera: " + BOX, "")).size());
        List<JsonNode> windows = windows(two(""));
        assertEquals(2, windows.size());
        assertEquals(2, windows.stream().map(window -> window.get("camera").asString()).distinct().count());
        Instant opened = Timetables.at(windows.get(1), "openAt");
        assertTrue(opened.isBefore(Timetables.at(windows.get(0), "closeAt")));
        assertEquals(opened.minusSeconds(30 * 60), Timetables.at(windows.get(1), "prepareAt"));
    }

    @Test
    void aWishIsTakenWithTheCameraThatItNames() throws IOException {
        assertEquals("South: Box, Wheel: Plate camera", cameras(windows(two("camera: Plate camera"))));
        assertEquals("South: Plate camera, Wheel: Box", cameras(windows(two("camera: [Box]"))));
        assertEquals("South: Box, Wheel: Plate camera", cameras(windows(two("f-numbers: [8]"))));
    }

    @Test
    void oneCameraExposesOneSheetAtATime() throws IOException {
        String text = Files.readString(Path.of(two("camera: Box"))).replace("name: South",
                "name: South\n    camera: Box");
        Files.writeString(folder.resolve("trip.yaml"), text);
        assertEquals(1, windows(folder.resolve("trip.yaml").toString()).size());
    }

    @Test
    void aFilmInACameraIsThatOfItsSheets() throws IOException {
        List<JsonNode> windows = windows(trip("cameras: [" + BOX.replace("}", ", film: negative-classic-100}")
                + ", " + PLATE + "]", "camera: Box"));
        assertEquals("Wheel: negative-classic-100, South: instant-mono-640", windows.stream()
                .sorted((one, other) -> other.get("wish").asString().compareTo(one.get("wish").asString()))
                .map(window -> window.get("wish").asString() + ": " + window.get("film").asString())
                .collect(Collectors.joining(", ")));
    }

    @Test
    void allThatIsTakenAlongNamesTheCamera() throws IOException {
        String trip = two("camera: Plate camera");
        String text = Run.of("plan", "--trip", trip).out();
        assertTrue(text.contains("sheets planned; cameras Box, Plate camera"), text);
        assertTrue(text.contains("Plate camera, instant-mono-640:"), text);
        Path page = folder.resolve("p.html");
        Path calendar = folder.resolve("p.ics");
        assertEquals(0, Run.of("plan", "--trip", trip, "--out", page.toString(), "--out",
                calendar.toString()).exit());
        assertTrue(Files.readString(page).contains("\"camera\":\"Plate camera\"")
                || Files.readString(page).contains("\"camera\" : \"Plate camera\""));
        String events = Files.readString(calendar).replace("\r\n ", "");
        assertTrue(events.contains("\\, Plate camera\r\n"), events);
        String check = Run.of("check", "--trip", trip).out().replaceAll("\\s+", " ");
        assertTrue(check.contains("camera Box, 120 mm") && check.contains("camera Plate camera, 150 mm")
                && check.contains("with Plate camera"), check);
    }

    /** A refusal names the camera that it speaks of, and the command that it prints shows the same figure. */
    @Test
    void aRefusalSpeaksOfOneCamera() throws IOException {
        String trip = two("tone-at-most-stops: -9");
        JsonNode night = new ObjectMapper().readTree(Timetables.json(trip)).get("nights").get(0);
        String reason = night.get("refused").get(0).get("reason").asString();
        Matcher told = Pattern.compile("with Box: the nearest tone is (\\S+) at .*\\(gloam (expose .*?)\\)")
                .matcher(reason);
        assertTrue(told.find(), reason);
        List<String> args = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(told.group(2)).results()
                .map(arg -> arg.group(1) == null ? arg.group(2) : arg.group(1))
                .map(arg -> arg.equals("FILE") ? trip : arg).collect(Collectors.toList());
        assertTrue(args.contains("Box"), reason);
        args.addAll(List.of("--format", "json"));
        JsonNode shown = new ObjectMapper().readTree(Run.of(args.toArray(String[]::new)).out());
        assertEquals(Double.parseDouble(told.group(1).replace('\u2212', '-')),
                shown.get("exposures").get(0).get("skyToneStops").asDouble(), 0.06, reason);
    }

    private static double tone(String trip, String... camera) throws IOException {
        String[] args = List.of("expose", "--trip", trip, "--format", "json", "--azimuth", "180",
                "--altitude",
                "40", "--from", "2027-01-05T22:00", "--lasts", "1h", "--f-number", "11")
                .toArray(String[]::new);
        String[] all = Stream.concat(Arrays.stream(args),
                Arrays.stream(camera)).toArray(String[]::new);
        Run run = Run.of(all);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out()).get("exposures").get(0).get("skyToneStops").asDouble();
    }

    /** Half the light is a stop less before the film loses any to the length of the exposure. */
    @Test
    void otherCommandsTakeTheCameraAskedForOrTheFirst() throws IOException {
        String trip = two("");
        assertEquals(tone(trip), tone(trip, "--camera", "Box"), 1e-9);
        assertTrue(tone(trip, "--camera", "Plate camera") < tone(trip) - 0.7);
        assertTrue(Run.of("trail", "--trip", trip, "--camera", "Plat", "--azimuth", "0", "--altitude", "40",
                "--from", "2027-01-05T22:00", "--lasts", "1h").err().contains(
                "no camera is named \"Plat\"; the trip has Box, Plate camera (--camera)"));
        assertTrue(Run.of("expose", "--camera", "Box", "--sky-mag-arcsec2", "21", "--film",
                "instant-mono-640").err().contains("--camera names a camera of a trip; add --trip FILE"));
    }

    /** The light on a sheet of the journal is that through the lens of the plan's camera. */
    @Test
    void theJournalTakesThePlansCamera() throws IOException {
        String trip = two("camera: Plate camera");
        Path plan = folder.resolve("plan.json");
        assertEquals(0, Run.of("plan", "--trip", trip, "--out", plan.toString()).exit());
        String sheet = windows(trip).stream().filter(window -> window.get("wish").asString().equals("Wheel"))
                .findFirst().orElseThrow().get("sheet").asString();
        double planned = filmLx(trip, "own", "--plan", plan.toString(), "--sheet", sheet);
        double byBox = filmLx(trip, "box", "--plan", plan.toString(), "--sheet", sheet, "--camera", "Box");
        assertEquals(0.9 / 0.45, byBox / planned, 1e-3);
    }

    private double filmLx(String trip, String name, String... args) throws IOException {
        String journal = folder.resolve(name + ".jsonl").toString();
        String[] add = Stream.concat(List.of("journal", "add", "--journal", journal,
                "--trip", trip).stream(), Arrays.stream(args)).toArray(String[]::new);
        Run added = Run.of(add);
        assertEquals(0, added.exit(), added.err());
        return Run.json("journal list --journal " + journal).get("sheets").get(0).get("filmLx").asDouble();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "cameras: [BOX, BOX]|cameras[1].name: the name \"Box\" is used twice. Give each its own.",
        "cameras: [{focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11]}]|cameras[0].name: is missing.",
        "cameras: []|cameras: number of cameras 0 is out of range; give 1 … 4",
        "cameras: [BOX]|wishes[0].camera: no camera is named \"Plate camera\". Did you mean Box?",
        "camera: BOX|wishes[0].camera: no camera is named \"Plate camera\".",
        "film: x|needs one of the keys camera, cameras."})
    void whatCannotBeIsRefusedWithItsPlace(String cameras, String problem) throws IOException {
        String err = Run.of("check", "--trip", trip(cameras.replace("BOX", BOX), "camera: Plate camera"))
                .err();
        assertTrue(err.contains(problem.replace(" Did you mean Box?", "")), err);
    }

    @Test
    void bothKeysAndFNumbersOfNoCameraAreRefused() throws IOException {
        assertTrue(Run.of("check", "--trip", trip("camera: " + BOX + "\ncameras: [" + PLATE + "]", "")).err()
                .contains("cameras: stands beside camera; keep one of the two"));
        assertTrue(Run.of("check", "--trip", two("f-numbers: [22]")).err()
                .contains("no lens has f/22. They have 8, 11, 16."));
        String openings = two("");
        String text = Files.readString(Path.of(openings)).replace("    pole: {}\n", "").replace(
                "    exposure-min: {shortest: 150, longest: 180}\n\n",
                "    openings: [{pole: {}, f-numbers: [8]}, {pole: {}, exposure-min: 5, f-number: 90}]\n\n");
        Files.writeString(folder.resolve("trip.yaml"), text);
        assertTrue(Run.of("check", "--trip", openings).err().contains("no lens has f/90"),
                Run.of("check", "--trip", openings).err());
    }

    @Test
    void aTripWithOneCameraNamesItOnce() throws IOException {
        String text = Run.of("plan", "--trip", trip("cameras: [" + BOX + "]", "")).out();
        assertTrue(text.contains("; camera Box\n"), text);
        assertFalse(text.contains("Box, instant"), text);
    }
}
