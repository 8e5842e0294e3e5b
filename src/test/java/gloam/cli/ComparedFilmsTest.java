package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Films side by side under one light. */
class ComparedFilmsTest {

    private static final String NIGHT = "expose --place 41.05,-2.15,1080 --zone Europe/Madrid "
            + "--from 2027-02-16T20:30 --azimuth 180 --altitude 30 --f-number 5.6,8 --tone -1";
    private static final List<String> FILMS = List.of("instant-mono-640", "instant-colour-125",
            "negative-slow-25");
    private static final String ALL = NIGHT + " --film " + String.join(" --film ", FILMS);

    @Test
    void eachFilmComesToWhatItComesToAlone() {
        JsonNode compared = Run.json(ALL).get("films");
        assertEquals(FILMS.size(), compared.size());
        for (int i = 0; i < FILMS.size(); i++) {
            JsonNode alone = Run.json(NIGHT + " --film " + FILMS.get(i));
            assertEquals(alone.get("situation"), compared.get(i).get("situation"));
            assertEquals(alone.get("exposures"), compared.get(i).get("exposures"));
            assertEquals(alone.get("trade"), compared.get(i).get("trade"));
        }
    }

    @Test
    void filmsStandSideBySideAtEveryFNumber() {
        List<String> rows = Run.of(ALL.split(" ")).out().lines()
                .filter(line -> line.matches(" {2}(instant|negative)\\S+ +(5\\.6|8) .*")).limit(6)
                .map(line -> line.strip().replaceFirst("(\\S+) +(\\S+).*", "$2 $1")).toList();
        assertEquals(List.of("5.6", "8").stream()
                .flatMap(stop -> FILMS.stream().map(film -> stop + " " + film)).toList(), rows);
        String page = Run.of((ALL + " --format html").split(" ")).out();
        FILMS.forEach(film -> assertTrue(page.matches("(?s).*<t[dh][^>]*>" + film + "</t[dh]>.*"), film));
    }

    @Test
    void oneFilmAheadAtEveryFNumberIsNamed() {
        JsonNode compared = Run.json(ALL);
        String remarks = compared.get("remarks").toString();
        JsonNode fast = compared.at("/films/0/exposures");
        JsonNode slow = compared.at("/films/1/exposures");
        for (int i = 0; i < fast.size(); i++) {
            assertTrue(fast.get(i).get("correctedS").asDouble() < slow.get(i).get("correctedS").asDouble());
        }
        assertTrue(remarks.contains("The shortest exposure at every f-number: instant-mono-640."), remarks);
        assertEquals(-1, Run.of((ALL + " --lasts 20m").replace(" --tone -1", "").split(" ")).out()
                .indexOf("shortest exposure"));
    }

    @Test
    void whatCannotBeComparedIsRefused() {
        refuses("film \"instant-mono-640\" is named twice", NIGHT
                + " --film instant-mono-640 --film instant-mono-640");
        refuses("change one film, and 3 are named", ALL + " --iso 100");
        refuses("change one film, and 3 are named", ALL + " --reciprocity none");
        refuses("only once", "trail --film instant-mono-640 --film negative-slow-25");
    }

    @Test
    void noFilmThatIsReadIsWrittenOver(@TempDir Path folder) throws IOException {
        Path film = folder.resolve("mine.json");
        Files.copy(Path.of("src/main/resources/gloam/films/negative-slow-25.json"), film);
        String before = Files.readString(film);
        Run run = Run.of((NIGHT + " --film instant-mono-640 --film " + film + " --out " + film).split(" "));
        assertEquals(2, run.exit());
        assertEquals(before, Files.readString(film));
    }

    private static void refuses(String reason, String line) {
        Run run = Run.of(line.split(" "));
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(reason), run.err());
    }
}
