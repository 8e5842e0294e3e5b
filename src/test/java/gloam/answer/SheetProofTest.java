package gloam.answer;

import static gloam.answer.Framed.EPHEMERIS;
import static gloam.answer.Framed.SITE;
import static gloam.answer.Framed.question;
import static gloam.answer.Framed.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.proof.Raster;
import gloam.trail.Framing;
import gloam.trail.StarHere;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SheetProofTest {

    /**
     * The corner's tone is less than the centre's by the fall-off, 4 log2 of the cosine, under an even sky
     * without film failure.
     */
    @Test
    void aProofTellsTheToneAtCentreAndCorners() {
        FrameQuestion question = question(SITE, Direction.ofDegrees(0, 80), Duration.ofHours(1));
        SheetProof proof = SheetProof.of(EPHEMERIS, sheet(question, 400), OptionalDouble.empty(), List.of(),
                Raster.of(question.framing().camera().frame(), 64), FilmStock.Kind.POSITIVE);
        assertEquals(64, proof.picture().widthPx());
        assertEquals(48, proof.picture().heightPx());
        assertEquals(List.of(StarHere.Where.values()), proof.tones().stream().map(SheetProof.PointTone::where)
                .toList());
        assertEquals(new Framing.Point(-40, 30), proof.tones().get(1).point());
        double fallOffStops = 2 * Math.log(1 / (1 + 0.25)) / Math.log(2); // 50 mm off the axis at 100 mm
        // the sky itself varies over the frame by less, and the corner's pixel is half a pixel inside
        assertEquals(fallOffStops, proof.tones().get(1).toneStops().get(0) - proof.tones().get(0).toneStops()
                .get(0), 0.25);
        assertEquals(Duration.ofMinutes(5), proof.trails().question().every());
    }
}
