package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.SheetProof;
import gloam.ephemeris.Direction;
import gloam.ephemeris.StarCatalogue;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.proof.Picture;
import gloam.proof.Raster;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Pictures as the JDK's own reader of PNG sees them. */
class PngRendererTest {

    private static Picture picture(FilmStock film) {
        return proof(film).picture();
    }

    private static SheetProof proof(FilmStock film) {
        Camera camera = new Camera("camera",
                new Lens(50, List.of(FNumber.exact(4)), 0.9, Double.POSITIVE_INFINITY,
                40, 0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 60), Duration.ZERO);
        Interval open = Interval.lasting(Instant.parse("2027-02-08T20:00:00Z"), Duration.ofHours(1));
        Sheet sheet = new Sheet(Places.MID_NORTH, film, List.of(new Setting(
                Framing.level(Direction.ofDegrees(180, 40), camera), FNumber.exact(4), List.of(open))));
        return SheetProof.of(new AnalyticEphemeris(), sheet, OptionalDouble.of(0.1), StarCatalogue.builtIn()
                .stars(),
                Raster.of(sheet.frame(), 48), FilmStock.Kind.POSITIVE);
    }

    private static BufferedImage read(Picture picture) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        PngRenderer.write(picture, png);
        return ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
    }

    @Test
    void everyGreyIsItsOwn() throws IOException {
        Picture picture = picture(Films.print(640, Reciprocity.none()));
        BufferedImage image = read(picture);
        assertEquals(48, image.getWidth());
        assertEquals(36, image.getHeight());
        assertEquals(1, image.getRaster().getNumBands());
        for (int row = 0; row < 36; row++) {
            for (int column = 0; column < 48; column++) {
                assertEquals(picture.level(column, row, 0), image.getRaster().getSample(column, row, 0));
            }
        }
    }

    @Test
    void everyColourIsItsOwn() throws IOException {
        Picture picture = picture(Films.colour(640, Reciprocity.none(), Reciprocity.power(1.1, 1),
                Reciprocity.power(1.2, 1)));
        BufferedImage image = read(picture);
        assertEquals(3, image.getRaster().getNumBands());
        for (int row = 0; row < 36; row++) {
            for (int column = 0; column < 48; column++) {
                int rgb = picture.level(column, row, 0) << 16 | picture.level(column, row, 1) << 8
                        | picture.level(column, row, 2);
                assertEquals(rgb, image.getRGB(column, row) & 0xffffff);
            }
        }
    }

    /** ISO/IEC 15948, 11.3.5.3 (pHYs) and 11.3.4.5 (iTXt), as the JDK's own reader names them. */
    @Test
    void aProofIsAsLargeAsTheSheetAndSaysHowItWasTaken() throws IOException {
        SheetProof proof = proof(Films.print(640, Reciprocity.none()));
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        new PngRenderer(new Origin("gloam 1", List.of()))
                .write(ProofReport.of(proof, Instant.parse("2027-01-15T10:00:00Z")), png);
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        reader.setInput(ImageIO.createImageInputStream(new ByteArrayInputStream(png.toByteArray())));
        Node root = reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
        NamedNodeMap size = child(root, "pHYs").getAttributes();
        assertEquals("600", size.getNamedItem("pixelsPerUnitXAxis").getNodeValue()); // 48 px on 80 mm
        assertEquals("600", size.getNamedItem("pixelsPerUnitYAxis").getNodeValue());
        assertEquals("meter", size.getNamedItem("unitSpecifier").getNodeValue());
        Map<String, String> said = new HashMap<>();
        for (Node entry = child(root, "iTXt").getFirstChild(); entry != null;
                entry = entry.getNextSibling()) {
            said.put(entry.getAttributes().getNamedItem("keyword").getNodeValue(),
                    entry.getAttributes().getNamedItem("text").getNodeValue());
        }
        assertTrue(said.get("Description").contains(Places.MID_NORTH.name() + ", S, altitude 40°"),
                said::toString);
        assertTrue(said.get("Description").contains("f/4, 1 h, 50 mm on 80 × 60 mm"), said::toString);
        assertTrue(said.get("Creation Time").startsWith("2027-01-15T"), said::toString);
    }

    private static Node child(Node parent, String name) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeName().equals(name)) {
                return child;
            }
        }
        throw new AssertionError("no " + name);
    }
}
