package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;

class ProofCommandTest {

    private static final String SHEET = "proof --trip demo-data/trip.yaml --azimuth 0 --altitude 41 "
            + "--from 2027-02-08T21:00 --lasts 1h --size 60";

    @TempDir
    private Path folder;

    private static Run run(String command, String... more) {
        List<String> args = new ArrayList<>(List.of(command.split(" ")));
        args.addAll(List.of(more));
        return Run.of(args);
    }

    @Test
    void thePngIsReadByAnotherReaderAndSaysThatItIsComputed() throws IOException {
        Path grey = folder.resolve("grey.png");
        Path colour = folder.resolve("colour.png");
        assertEquals(0, run(SHEET, "--out", grey.toString()).exit());
        assertEquals(0, run(SHEET, "--film", "instant-colour-125", "--out", colour.toString()).exit());
        BufferedImage image = ImageIO.read(grey.toFile());
        assertEquals(60, image.getWidth());
        assertEquals(60, image.getHeight());
        assertEquals(1, image.getRaster().getNumBands());
        assertEquals(3, ImageIO.read(colour.toFile()).getRaster().getNumBands());
        assertTrue(new String(Files.readAllBytes(grey), StandardCharsets.ISO_8859_1)
                .contains("Computed picture, not a photograph"));
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        Path one = folder.resolve("one.png");
        Path two = folder.resolve("two.png");
        run(SHEET, "--out", one.toString());
        run(SHEET, "--out", two.toString());
        assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    }

    /**
     * Tones are of the sky at their point, not of pixels: in dusk, in colour, with stars and the Moon in the
     * frame they are the same for any size, and at the centre what expose says.
     */
    @Test
    void tonesAreOfTheSkyWhateverTheSize() {
        String sheet = " --trip demo-data/trip.yaml --film instant-colour-125 --f-number 8 --azimuth 330 "
                + "--altitude 25 --from 2027-02-11T19:20 --lasts 50m";
        JsonNode small = Run.json("proof --size 17" + sheet).get("tones");
        JsonNode large = Run.json("proof --size 160" + sheet).get("tones");
        assertEquals(5, small.size());
        for (int point = 0; point < small.size(); point++) {
            for (int layer = 0; layer < 3; layer++) {
                String at = "/" + point + "/toneStops/" + layer;
                assertEquals(large.at(at).doubleValue(), small.at(at).doubleValue(), 0.02, at);
            }
        }
        JsonNode layers = Run.json("expose" + sheet).at("/exposures/0/layers");
        for (int layer = 0; layer < 3; layer++) {
            assertEquals(layers.get(layer).get("toneStops").doubleValue(),
                    large.at("/0/toneStops/" + layer).doubleValue(), 0.02, "layer " + layer);
        }
    }

    @Test
    void theSvgIsXmlWithTitleDescriptionAndNames() throws Exception {
        Document svg = parsed(run(SHEET, "--format", "svg").out());
        assertTrue(text(svg, "title").startsWith("Computed picture, not a photograph: Charca Quieta, N"));
        assertTrue(text(svg, "desc").contains("Polaris"));
        List<String> labels = labels(svg);
        assertTrue(labels.containsAll(List.of("Polaris", "Kochab", "North pole", "0° N",
                "Computed picture, not a photograph", "in mm 1 : 1; azimuths below, altitudes on the left")),
                labels.toString());
        assertTrue(((Element) svg.getElementsByTagName("image").item(0)).getAttribute("xlink:href")
                .startsWith("data:image/png;base64,"));
    }

    @Test
    void aDrawingOfTrailsNeedsNoPictureAndNamesAreNoMarkup() throws Exception {
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, Files.readString(Path.of("demo-data/trip-south.yaml"))
                .replace("name: Stilvlakte", "name: '<script>alert(1)</script> & \"x\"'"));
        Document svg = parsed(run("trail --azimuth 180 --altitude 24.6 --from 2027-06-03T21:00 --lasts 1h "
                + "--format svg --trip", trip.toString()).out());
        assertTrue(text(svg, "title").contains("<script>alert(1)</script> & \"x\""));
        assertEquals(0, svg.getElementsByTagName("script").getLength());
        assertEquals(0, svg.getElementsByTagName("image").getLength());
        assertTrue(labels(svg).contains("South pole"));
    }

    @Test
    void theSunAndWhatHasNoPictureAreRefused() throws IOException {
        Run day = run("proof --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from 2027-02-08T12:00 "
                + "--lasts 1h");
        assertEquals(2, day.exit());
        assertTrue(day.err().contains("the Sun is up while the shutter is open"));
        Path summit = Files.writeString(folder.resolve("summit.yaml"), """
                title: Summit
                sites: [{name: Summit, latitude-deg: 28.3, longitude-deg: -16.6, height-m: 3500, zone: UTC,
                         sea-horizon: true}]
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, focal-length-mm: 60, frame-mm: {width: 80, height: 80}, f-numbers: [8],
                         changeover-min: 5}
                film: instant-mono-640
                sheets: 1
                wishes: []
                """);
        Run intoTheSun = run("trail --trip " + summit
                + " --azimuth 254 --altitude 5 --from 2027-02-08T18:53 --lasts 5m");
        assertEquals(2, intoTheSun.exit());
        assertTrue(intoTheSun.err().contains("the Sun shines into the frame"));
        Path png = folder.resolve("nights.png");
        assertEquals(2, run("check --trip demo-data/trip.yaml", "--out", png.toString()).exit());
        assertTrue(Files.notExists(png));
        assertTrue(run(SHEET, "--format", "png").err().contains("use --out FILE.png"));
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)));
    }

    private static String text(Document svg, String name) {
        return svg.getElementsByTagName(name).item(0).getTextContent();
    }

    private static List<String> labels(Document svg) {
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < svg.getElementsByTagName("text").getLength(); i++) {
            labels.add(svg.getElementsByTagName("text").item(i).getTextContent());
        }
        return labels;
    }
}
