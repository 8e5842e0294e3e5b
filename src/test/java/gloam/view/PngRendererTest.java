package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import java.util.List;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures as the JDK's own reader of PNG sees them. */
class PngRendererTest {

    private static Picture picture(FilmStock film) {
        Camera camera = new Camera("camera",
                new Lens(50, List.of(FNumber.exact(4)), 0.9, Double.POSITIVE_INFINITY,
                40, 0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(80, 60), Duration.ZERO);
        Interval open = Interval.lasting(Instant.parse("2027-02-08T20:00:00Z"), Duration.ofHours(1));
        Sheet sheet = Sheet.of(Places.MID_NORTH, film, Framing.level(Direction.ofDegrees(180, 40), camera),
                FNumber.exact(4), List.of(open));
        return SheetProof.of(new AnalyticEphemeris(), sheet, OptionalDouble.of(0.1), StarCatalogue.builtIn()
                .stars(),
                Raster.of(sheet.frame(), 48)).picture();
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
}
